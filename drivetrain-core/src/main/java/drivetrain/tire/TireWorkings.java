package drivetrain.tire;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;

/** Explains diameters and rolling circumferences. */
final class TireWorkings {

    private static final Source SIZE =
            Source.derived("definition of the metric size: aspect ratio = section height / section width");
    private static final Source TURN = Source.derived("definition: one turn covers 2 pi times the rolling radius");
    private static final String FROM_SIZE = "from the size";

    private TireWorkings() {}

    static Working of(OverallDiameter overall) {
        Working.Builder working =
                Working.of("overall diameter of " + overall.designation().size());
        Figure result = Figure.of(overall.diameter(), Display.DIMENSION);
        switch (overall.basis()) {
            case GIVEN ->
                working.input("overall diameter", "D", result, "given")
                        .source(Source.given("the description of the tire"));
            case SIZE_TABLE -> working.input("overall diameter", "D", result, "table of sizes");
            case SIZE_FORMULA -> bySize(working, (MetricDesignation) overall.designation(), result);
            case NOMINAL_LESS_HALF_INCH -> byNominal(working, (FlotationDesignation) overall.designation(), result);
        }
        overall.assumptions().stream().map(Assumption::source).forEach(working::source);
        return working.build();
    }

    private static void bySize(Working.Builder working, MetricDesignation size, Figure result) {
        working.input("nominal section width in mm", "W", Figure.plain(size.sectionWidth(), 0), FROM_SIZE)
                .input("aspect ratio", "a", Figure.percent(size.aspect().orElseThrow() / 100.0, 0), FROM_SIZE)
                .input("rim diameter", "d", Figure.of(size.rimDiameter(), Display.DIMENSION), FROM_SIZE)
                .step("overall diameter", "D = d + 2 · W · a", result)
                .source(SIZE);
    }

    private static void byNominal(Working.Builder working, FlotationDesignation size, Figure result) {
        working.input("nominal diameter in inches", "N", Figure.plain(size.nominalDiameter(), 2), FROM_SIZE)
                .step("overall diameter", "D = N - 0.5 in", result);
    }

    static Working of(RollingCircumference rolling) {
        Working.Builder working = Working.of("rolling circumference and radius");
        Figure circumference = Figure.of(rolling.circumference(), Display.DIMENSION);
        switch (rolling.basis()) {
            case MEASURED_ROLLOUT ->
                working.input("measured roll-out", "U", circumference, "given")
                        .source(Source.given("the roll-out in the description of the tire"));
            case MAKER_REVOLUTIONS ->
                working.input(
                                "the maker's revolutions",
                                "N",
                                Figure.of(rolling.revolutions(), Display.REVOLUTIONS),
                                "given")
                        .step("rolling circumference", "U = 1 / N", circumference)
                        .source(Source.given("the maker's revolutions in the description of the tire"));
            case RADIAL_RULE, BIAS_RULE ->
                rolling.diameter().ifPresent(overall -> {
                    RollingRule rule = RollingRule.of(overall.designation().construction());
                    working.from(overall.working())
                            .step(
                                    "rolling circumference",
                                    "U = " + DecimalText.significant(rule.factor(), 4) + " · D",
                                    circumference)
                            .source(rule.assumption().source());
                });
        }
        return working.step("rolling radius", "r = U / 2π", Figure.of(rolling.radius(), Display.DIMENSION))
                .step("revolutions", "N = 1 / U", Figure.of(rolling.revolutions(), Display.REVOLUTIONS))
                .source(TURN)
                .build();
    }
}
