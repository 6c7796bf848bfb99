package drivetrain.driveshaft;

import drivetrain.driveshaft.ShaftHouse.Rule;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Which tube a shaft of one piece needs for a speed; the tube is taken from joint center to joint center.
 *
 * @param speed the greatest speed of the shaft
 * @param length from joint center to joint center
 * @param rows every stock tube, the ones that will do first, by diameter and then by mass
 * @param house the limits of the shop
 */
public record TubeSizing(AngularSpeed speed, Length length, List<Row> rows, ShaftHouse house) {

    private static final double LARGEST = 0.5;
    private static final double ACCURACY = 1e-9;
    private static final int MOST_EVALUATIONS = 200;

    /**
     * One stock tube at the length asked.
     *
     * @param stock the tube
     * @param critical its critical speed
     * @param allowed the greatest speed that is good on the road
     * @param longest the longest that it may be at the speed asked
     * @param mass its mass at the length asked
     * @param willDo true if the speed asked is not more than what is allowed
     */
    public record Row(
            StockTubes.StockTube stock,
            AngularSpeed critical,
            AngularSpeed allowed,
            Length longest,
            drivetrain.quantity.Mass mass,
            boolean willDo) {}

    /** Copies the rows. */
    public TubeSizing {
        rows = List.copyOf(rows);
    }

    /**
     * Tries every stock tube.
     *
     * @param speed the greatest speed of the shaft, greater than zero, up to 100000 rpm
     * @param length from joint center to joint center, 50 mm to 5 m
     * @param house the limits of the shop
     * @return the sizing
     * @throws drivetrain.refusal.RefusedException if speed or length are impossible
     */
    public static TubeSizing of(AngularSpeed speed, Length length, ShaftHouse house) {
        AngularSpeed most = requireSpeed(speed);
        Length span = ShaftPiece.requireLength(length);
        List<Row> rows = new ArrayList<>();
        for (StockTubes.StockTube stock : StockTubes.all()) {
            rows.add(row(stock, most, span, house));
        }
        rows.sort(Comparator.comparing((Row row) -> !row.willDo())
                .thenComparing(row -> row.stock().tube().diameter())
                .thenComparing(Row::mass));
        return new TubeSizing(most, span, rows, house);
    }

    private static AngularSpeed requireSpeed(AngularSpeed speed) {
        return speed.requirePositive("driveshaft speed")
                .requireBetween(
                        "driveshaft speed", AngularSpeed.ofRpm(0.0), AngularSpeed.ofRpm(100_000.0), AngularSpeed.RPM);
    }

    private static Row row(StockTubes.StockTube stock, AngularSpeed speed, Length length, ShaftHouse house) {
        AngularSpeed critical = CriticalSpeed.ofUniform(stock.tube(), stock.metal(), length);
        AngularSpeed allowed = ShaftSpeedChecks.allowed(critical, house);
        return new Row(
                stock,
                critical,
                allowed,
                longest(stock.tube(), stock.metal(), speed, house),
                BeamSpan.of(length, stock.tube(), stock.metal()).mass(),
                speed.compareTo(allowed) <= 0);
    }

    /**
     * Returns the smallest stock tube that will do.
     *
     * @return the lightest of the smallest diameter; empty if none will do
     */
    public Optional<Row> smallest() {
        return rows.stream().filter(Row::willDo).findFirst();
    }

    /**
     * Returns the longest that a tube may be at a speed, from joint center to joint center.
     *
     * @param tube the tube
     * @param material what it is made of
     * @param speed the greatest speed of the shaft, greater than zero
     * @param house the limits of the shop
     * @return the length at which the speed is what is good on the road
     * @throws drivetrain.refusal.RefusedException if the speed is not greater than zero
     */
    public static Length longest(Tube tube, ShaftMaterial material, AngularSpeed speed, ShaftHouse house) {
        AngularSpeed needed = ShaftSpeedChecks.needed(requireSpeed(speed), house);
        return Length.ofMeters(BeamFormula.length(BeamSection.of(tube, material), needed.toRadiansPerSecond()));
    }

    /**
     * Solves for the smallest outside diameter of a tube with a given wall.
     *
     * @param wall the wall
     * @param material what the tube is made of
     * @param length from joint center to joint center, 50 mm to 5 m
     * @param speed the greatest speed of the shaft, greater than zero
     * @param house the limits of the shop
     * @return the diameter, or that none up to 500 mm will do
     * @throws drivetrain.refusal.RefusedException if wall, length or speed are impossible
     */
    public static Outcome<Length> smallestDiameter(
            Length wall, ShaftMaterial material, Length length, AngularSpeed speed, ShaftHouse house) {
        double thick = wall.requirePositive("tube wall").toMeters();
        double span = ShaftPiece.requireLength(length).toMeters();
        double needed = ShaftSpeedChecks.needed(requireSpeed(speed), house).toRadiansPerSecond();
        double least = Math.max(0.005, 2.0 * thick);
        if (least > LARGEST || missing(LARGEST, thick, material, span, needed) > 0.0) {
            return Outcome.notEvaluated(
                    "no tube of that wall up to 500 mm is stiff enough for that speed at that length; a center "
                            + "bearing makes two shorter pieces");
        }
        if (missing(least, thick, material, span, needed) <= 0.0) {
            return Outcome.of(Length.ofMeters(least));
        }
        double diameter = new BrentSolver(ACCURACY, ACCURACY)
                .solve(MOST_EVALUATIONS, d -> missing(d, thick, material, span, needed), least, LARGEST);
        return Outcome.of(Length.ofMeters(diameter));
    }

    private static double missing(double diameter, double wall, ShaftMaterial material, double length, double needed) {
        Tube tube = Tube.of(Length.ofMeters(diameter), Length.ofMeters(Math.min(wall, diameter / 2.0)));
        return needed - BeamFormula.speed(BeamSection.of(tube, material), length);
    }

    /**
     * Works the smallest tube out.
     *
     * @return the working
     */
    public Working working() {
        Working.Builder working = Working.of("tube for " + speed.format(AngularSpeed.RPM, 0) + " at "
                        + DecimalText.significant(length.toMillimeters(), 5) + " mm")
                .input("greatest speed of the shaft", "n", Figure.of(speed, Display.ROTATION), "given")
                .input("length, joint center to joint center", "L", Figure.of(length, Display.DIMENSION), "given")
                .step(
                        "critical speed that is needed",
                        "n_c = n / " + DecimalText.shortest(house.number(Rule.CRITICAL_GOOD)),
                        Figure.of(ShaftSpeedChecks.needed(speed, house), Display.ROTATION))
                .source(house.source(Rule.CRITICAL_GOOD));
        smallest()
                .ifPresent(row -> working.from(CriticalSpeedWorking.ofTube(
                        ShaftPiece.of(row.stock().tube(), row.stock().metal()), length)));
        return working.build();
    }
}
