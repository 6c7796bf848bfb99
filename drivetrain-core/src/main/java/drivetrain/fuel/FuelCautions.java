package drivetrain.fuel;

import drivetrain.finding.Caution;
import java.util.List;

/** The hazards of fuel and what to do about them. */
public final class FuelCautions {

    private static final List<Caution> ALL = List.of(
            new Caution(
                    "fire",
                    "Fuel vapor burns and explodes. Work with the battery off, in moving air, away from flames and sparks, with an extinguisher at hand; "
                            + "ground the vehicle and the can, and let nobody smoke."),
            new Caution(
                    "fuel under pressure",
                    "The lines hold pressure after the engine stops. Relieve it before opening them. Use hose, tube and fittings listed for this fuel and "
                            + "this pressure, away from heat and moving parts, and fit a cut-off that stops the pump in a crash."),
            new Caution(
                    "fuel law",
                    "Tank, lines, venting and vapor control fall under safety and emissions law (such as UN Regulation 34, FMVSS 301, SAE J30 hose). Local "
                            + "codes and a licensed mechanic or inspector decide, not these figures."));

    private FuelCautions() {}

    /**
     * Returns the cautions that every answer about fuel carries.
     *
     * @return the cautions
     */
    public static List<Caution> all() {
        return ALL;
    }
}
