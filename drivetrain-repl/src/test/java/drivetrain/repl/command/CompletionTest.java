package drivetrain.repl.command;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.combination.Catalog;
import drivetrain.combination.Part;
import drivetrain.combination.PartKind;
import drivetrain.repl.command.ask.CruiseCommand;
import drivetrain.repl.command.ask.ExplainCommand;
import drivetrain.repl.command.ask.OrdersCommand;
import drivetrain.repl.command.ask.PartsCommand;
import drivetrain.repl.command.ask.PlotCommand;
import drivetrain.repl.command.ask.ShiftsCommand;
import drivetrain.repl.command.ask.SpeedsCommand;
import drivetrain.repl.command.ask.SuspectCommand;
import drivetrain.repl.command.ask.TubesCommand;
import drivetrain.repl.command.choose.AxleCommand;
import drivetrain.repl.command.choose.FuelChoices;
import drivetrain.repl.command.choose.PartCommand;
import drivetrain.repl.command.choose.TireCommand;
import drivetrain.repl.command.keep.OpenCommand;
import drivetrain.repl.command.keep.OutputCommand;
import drivetrain.repl.command.keep.SaveCommand;
import drivetrain.repl.command.keep.UnitsCommand;
import drivetrain.repl.session.Demo;
import drivetrain.repl.session.Session;
import drivetrain.repl.session.Shelf;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CompletionTest {

    private static final Completion COMPLETION = new Completion(vocabulary());
    private static final Completion FUEL = new Completion(new Vocabulary(FuelChoices.all()));
    private static final Session DEMO = Session.on(Demo.shelf());

    private static Vocabulary vocabulary() {
        List<Command> commands = new ArrayList<>(PartCommand.all());
        commands.addAll(List.of(
                new AxleCommand(),
                new TireCommand(),
                new CruiseCommand(),
                new SpeedsCommand(),
                new ShiftsCommand(),
                new OrdersCommand(),
                new SuspectCommand(),
                new TubesCommand(),
                new PlotCommand(),
                new PartsCommand(),
                new ExplainCommand(List.of(new CruiseCommand())),
                new OpenCommand(),
                new SaveCommand(),
                new UnitsCommand(),
                new OutputCommand()));
        return new Vocabulary(commands);
    }

    private static List<String> after(String... words) {
        List<String> before = List.of(words).subList(0, words.length - 1);
        return COMPLETION.offers(DEMO, before, words[words.length - 1]).stream()
                .map(Offer::value)
                .toList();
    }

    @Test
    void offersTheWordsFirst() {
        assertThat(after("t")).containsExactly("transmission", "transfer", "tire", "tubes");
        assertThat(after("")).contains("engine", "units").doesNotContain("tyre");
    }

    @Test
    void offersOnlyRatiosAfterAxle() {
        assertThat(after("axle", ""))
                .contains("front", "rear", "rp-4.10", "41/10")
                .doesNotContain("v8-6.2", "at-265-75r16");
        assertThat(after("axle", "front", "RP-4.1")).containsExactly("rp-4.10", "rp-4.11");
        assertThat(after("axle", "rp-4.10", "")).isEmpty();
        assertThat(after("final", "drive", "41/")).contains("41/10").allMatch(value -> value.startsWith("41/"));
    }

    @Test
    void offersOnlyTiresAfterTire() {
        assertThat(after("tire", "at-265")).isNotEmpty().allMatch(value -> value.startsWith("at-265"));
        assertThat(after("tyre", "rear", "")).contains("at-265-75r16").doesNotContain("front", "rp-4.10");
        assertThat(after("tire", "285/75R16", "")).containsExactly("rollout", "revs", "diameter");
    }

    @Test
    void offersPartsOfTheSlot() {
        assertThat(after("engine", "v8-6")).containsExactly("v8-6.2", "v8-6.2-blown");
        assertThat(after("transfer", "")).contains("none", "pt-2.72");
        assertThat(after("engine", "")).doesNotContain("none");
        assertThat(after("engine", "v8-6.2", "")).isEmpty();
    }

    @Test
    void offersWhatFitsAQuestion() {
        assertThat(after("cruise", "")).isEmpty();
        assertThat(after("cruise", "65", "")).containsExactly("mph", "km/h");
        assertThat(after("cruise", "65", "mph", "")).containsExactly("in", "low");
        assertThat(after("cruise", "65", "mph", "in", "t")).containsExactly("top");
        assertThat(after("cruise", "65", "mph", "in", "2", "")).containsExactly("low", "high");
        assertThat(after("cruise", "65", "mph", "low", "")).isEmpty();
        assertThat(after("speeds", "3000", "")).containsExactly("rpm");
        assertThat(after("shifts", "3000", "")).containsExactly("rpm");
        assertThat(after("orders", "")).isEmpty();
        assertThat(after("orders", "40", "")).containsExactly("mph", "km/h");
        assertThat(after("orders", "40", "mph", "")).containsExactly("in", "low", "with");
        assertThat(after("orders", "40", "mph", "in", "2", "")).containsExactly("low", "high", "with");
        assertThat(after("orders", "40", "mph", "low", "")).containsExactly("with");
        assertThat(after("orders", "40", "mph", "with", "")).isEmpty();
        assertThat(after("orders", "40", "mph", "with", "8", "")).containsExactly("cylinders");
        assertThat(after("suspect", "")).isEmpty();
        assertThat(after("suspect", "22", "")).containsExactly("Hz", "at");
        assertThat(after("suspect", "22", "Hz", "")).containsExactly("at");
        assertThat(after("suspect", "22", "Hz", "at", "")).isEmpty();
        assertThat(after("suspect", "22", "Hz", "at", "40", "mph", "w")).containsExactly("with", "within");
        assertThat(after("suspect", "22", "Hz", "at", "40", "mph", "within", "5", ""))
                .containsExactly("%");
        assertThat(after("suspect", "22", "Hz", "at", "40", "mph", "within", "5", "%", ""))
                .containsExactly("with");
        assertThat(after("tubes", "")).isEmpty();
        assertThat(after("tubes", "1300", "m")).containsExactly("mm", "m");
        assertThat(after("tubes", "1300", "mm", "")).containsExactly("at");
        assertThat(after("tubes", "1300", "mm", "at", "")).isEmpty();
        assertThat(after("tubes", "1300", "mm", "at", "5500", "")).containsExactly("rpm");
        assertThat(after("plot", "")).containsExactly("speeds", "force", "power", "travel", "modes", "supply");
        assertThat(after("plot", "travel", "")).containsExactly("front", "rear");
        assertThat(after("plot", "modes", "")).containsExactly("front", "rear");
        assertThat(after("plot", "speeds", "")).containsExactly("low", "high");
        assertThat(after("explain", "")).containsExactly("cruise");
        assertThat(after("explain", "cruise", "65", "")).containsExactly("mph", "km/h");
        assertThat(after("explain", "xyzzy", "")).isEmpty();
        assertThat(after("parts", "tr")).containsExactly("transmission", "transfer case");
    }

    private static List<String> fuel(String... words) {
        List<String> before = List.of(words).subList(0, words.length - 1);
        return FUEL.offers(DEMO, before, words[words.length - 1]).stream()
                .map(Offer::value)
                .toList();
    }

    @Test
    void offersWhatFitsInsideThePartsOfAFuelSupply() {
        assertThat(fuel("feed", "4.5", "")).contains("m", "ft", "elbows");
        assertThat(fuel("feed", "4.5", "m", "")).containsExactly("of");
        assertThat(fuel("feed", "4.5", "m", "of", "st")).containsExactly("steel-3-8", "steel-5-16");
        assertThat(fuel("feed", "4.5", "m", "of", "8", "mm", "")).containsExactly("tube", "hose");
        assertThat(fuel("feed", "4.5", "m", "of", "8", "mm", "tube,", "")).containsExactly("filter", "pump");
        assertThat(fuel("feed", "4.5", "m", "of", "8", "mm", "tube,", "filter", ""))
                .containsExactly("fine-10", "coarse-100");
        assertThat(fuel("feed", "filter", "8", "kPa", "")).containsExactly("at");
        assertThat(fuel("feed", "filter", "8", "kPa", "at", "200", "")).contains("L/h");
        assertThat(fuel("return", "5", "m", "of", "8", "mm", "tube,", "")).containsExactly("filter");
        assertThat(fuel("system", "return", "58", "")).containsExactly("psi", "kPa", "bar");
        assertThat(fuel("system", "return", "58", "psi,", "l")).containsExactly("lift", "low");
        assertThat(fuel("system", "wire", "5", "m", "")).containsExactly("of");
        assertThat(fuel("system", "wire", "5", "m", "of", "")).containsExactly("AWG");
        assertThat(fuel("system", "fuel", "")).containsExactly("at");
        assertThat(fuel("system", "fuel", "at", "40", "")).containsExactly("degC", "degF");
        assertThat(fuel("tank", "90", "")).containsExactly("L", "US gal", "imp gal");
        assertThat(fuel("tank", "90", "L,", "")).containsExactly("usable", "canister", "fill", "day");
        assertThat(fuel("tank", "90", "L,", "day", "20", "degC", "")).containsExactly("to");
        assertThat(fuel("fuel", "E10,", "v")).containsExactly("viscosity");
        assertThat(fuel("fuel", "E10,", "745", "")).containsExactly("kg/m3");
        assertThat(fuel("pump", "2", "x", "tank-3")).containsExactly("tank-340");
        assertThat(fuel("pump", "13.5", "V,", "280", "L/h", "")).containsExactly("at");
        assertThat(fuel("pump", "13.5", "V,", "280", "L/h", "at", "30", "")).containsExactly("psi", "kPa", "bar");
        assertThat(fuel("injectors", "8", "x", "")).containsExactly("inj-30", "inj-42", "inj-60");
        assertThat(fuel("injectors", "8", "x", "42", "lb/h", "at", "43.5", "psi,", ""))
                .containsExactly("tested");
        assertThat(fuel("return", "n")).containsExactly("none");
        assertThat(after("engine", "v8-6.2", "")).isEmpty();
    }

    @Test
    void offersTheGearsOfTheChosenTransmission() {
        Session session = DEMO.open(
                "open demo",
                new drivetrain.repl.session.Setup(
                        Demo.order("ranch-crawler"), DEMO.setup().shelf()));
        assertThat(COMPLETION.offers(session, List.of("cruise", "5", "mph", "in"), ""))
                .extracting(Offer::value)
                .containsExactly("1", "2", "3", "4", "5", "top");
    }

    @Test
    void offersSettingsAndFiles() {
        assertThat(after("units", "m")).containsExactly("metric");
        assertThat(after("output", "")).containsExactly("table", "plain", "csv", "json", "markdown");
        assertThat(after("open", "d")).contains("demo");
        assertThat(after("open", "demo", "r")).containsExactly("ranch-crawler");
        assertThat(after("save", "no-such-file")).isEmpty();
    }

    @Test
    void offersNothingAfterAnUnknownWord() {
        assertThat(after("xyzzy", "")).isEmpty();
    }

    @Test
    void offersAllOfManyParts() {
        Catalog.Builder many = Catalog.titled("many");
        for (int i = 0; i < 5000; i++) {
            many.add(PartKind.TIRE, Part.of("t-" + i, "all-terrain radial", PartKind.TIRE.parse("285/75R16"), "many"));
        }
        Session session = Session.on(Shelf.of("many", many.build()));
        assertThat(COMPLETION.offers(session, List.of("tire"), "t-4")).hasSize(1111);
    }
}
