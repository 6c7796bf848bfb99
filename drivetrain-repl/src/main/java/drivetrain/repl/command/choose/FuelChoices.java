package drivetrain.repl.command.choose;

import drivetrain.combination.Slot;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Topic;
import java.util.List;

/** The words that describe a fuel supply. */
public final class FuelChoices {

    private FuelChoices() {}

    /**
     * Makes the commands.
     *
     * @return one for each place of a fuel supply
     */
    public static List<Command> all() {
        return List.of(
                PartCommand.of(
                        Slot.FUEL,
                        true,
                        Manual.of(
                                        Topic.FUEL,
                                        "fuel [FUEL|none]",
                                        "choose what is burned, by name or by kind and measurements")
                                .example("fuel E10", "fuel E85, ethanol 70 %, 780 kg/m3")),
                PartCommand.of(
                        Slot.FUEL_PUMP,
                        true,
                        Manual.of(
                                        Topic.FUEL,
                                        "pump [PUMP|none]",
                                        "choose the fuel pump, by name or by its measured flow")
                                .alias("fuel pump", "pumps")
                                .example(
                                        "pump 13.5 V, 280 L/h at 30 psi 7 A, 210 L/h at 70 psi 11 A",
                                        "pump 2 x tank-255 in parallel")),
                PartCommand.of(
                        Slot.FEED_LINE,
                        true,
                        Manual.of(
                                        Topic.FUEL,
                                        "feed [PIECES|none]",
                                        "choose the feed line: its pieces from the tank on, with commas between")
                                .alias("feed line", "fuel line")
                                .example(
                                        "feed 4.5 m of 8 mm tube, filter 8 kPa at 200 L/h, 0.6 m of 8 mm hose, 3 elbows",
                                        "feed 0.8 m of 12.7 mm hose, pump, 4.5 m of 8 mm tube")),
                PartCommand.of(
                        Slot.RETURN_LINE,
                        true,
                        Manual.of(Topic.FUEL, "return [PIECES|none]", "choose the line back to the tank")
                                .alias("return line")
                                .example("return 5 m of 6 mm tube")),
                PartCommand.of(
                        Slot.INJECTORS,
                        true,
                        Manual.of(
                                        Topic.FUEL,
                                        "injectors [INJECTORS|none]",
                                        "choose the injectors: how many, and name or flow at pressure")
                                .alias("injector")
                                .example("injectors 8 x 42 lb/h at 43.5 psi")),
                PartCommand.of(
                        Slot.FUEL_SYSTEM,
                        true,
                        Manual.of(
                                        Topic.FUEL,
                                        "system [CONDITIONS|none]",
                                        "say how the fuel supply is set up: regulator, voltage, wires, temperature")
                                .alias("fuel system")
                                .example(
                                        "system return 58 psi, 13.8 V, low 12.4 V, wire 5 m of AWG 12, lift 0.5 m, fuel at 40 degC, elevation 600 m",
                                        "system returnless 58 psi, 13.5 V, boost 8 psi, margin 20 %, duty 80 %")),
                PartCommand.of(
                        Slot.TANK,
                        true,
                        Manual.of(Topic.FUEL, "tank [TANK|none]", "choose the fuel tank, or see how far it goes")
                                .alias("fuel tank")
                                .example("tank 90 L, usable 84 L, canister 80 g, fill 40 %, day 20 degC to 34 degC")));
    }
}
