package drivetrain.gearing;

import drivetrain.finding.Finding;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.finding.Working;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;

/** Whether the front and the rear driveshaft want to turn at one speed: axle ratio / rolling circumference has to agree. */
public final class AxleMatch {

    private static final String CHECKED = "front and rear axle";
    private static final double METERS_PER_KILOMETER = 1000.0;

    private AxleMatch() {}

    /**
     * Checks the match.
     *
     * @param front the front axle ratio
     * @param frontCircumference the rolling circumference in front
     * @param rear the rear axle ratio
     * @param rearCircumference the rolling circumference at the rear
     * @param tie how the axles are tied
     * @return met, marginal (to be looked at) or exceeded, with the wind-up for each kilometre; always met where only the rear axle is driven,
     *     never worse than marginal behind an open center differential, which turns all the time then
     * @throws drivetrain.refusal.RefusedException if a circumference is out of range
     */
    public static Finding of(
            Ratio front, Length frontCircumference, Ratio rear, Length rearCircumference, AxleTie tie) {
        double mismatch = mismatch(front, frontCircumference, rear, rearCircumference);
        double size = Math.abs(mismatch);
        if (tie == AxleTie.REAR_ONLY) {
            return finding(size, Verdict.MET, "only the rear axle is driven, so that the axles need not agree");
        }
        Verdict verdict =
                size <= Limits.MET ? Verdict.MET : size <= Limits.MARGINAL ? Verdict.MARGINAL : Verdict.EXCEEDED;
        double turns = windUpPerKilometer(front, frontCircumference, rear, rearCircumference);
        if (tie == AxleTie.OPEN) {
            Verdict mild = verdict == Verdict.EXCEEDED ? Verdict.MARGINAL : verdict;
            return finding(
                    size, mild, statement(mismatch, turns) + "; the open center differential turns all the time");
        }
        return finding(
                size,
                verdict,
                statement(mismatch, turns)
                        + (verdict == Verdict.MET ? "" : "; tires scrub and shafts wind up while the axles are tied"));
    }

    /**
     * Returns by how much the front driveshaft wants to turn faster than the rear one.
     *
     * @param front the front axle ratio
     * @param frontCircumference the rolling circumference in front, 1 to 5 m
     * @param rear the rear axle ratio
     * @param rearCircumference the rolling circumference at the rear, 1 to 5 m
     * @return (front ratio / front circumference) / (rear ratio / rear circumference) - 1
     * @throws drivetrain.refusal.RefusedException if a circumference is out of range
     */
    public static double mismatch(Ratio front, Length frontCircumference, Ratio rear, Length rearCircumference) {
        Speedometer.requireCircumference("front rolling circumference", frontCircumference);
        Speedometer.requireCircumference("rear rolling circumference", rearCircumference);
        return front.value() / rear.value() * rearCircumference.ratioTo(frontCircumference) - 1.0;
    }

    /**
     * Returns the wind-up of the front driveshaft against the rear one for each kilometre, if nothing slips.
     *
     * @param front the front axle ratio
     * @param frontCircumference the rolling circumference in front, 1 to 5 m
     * @param rear the rear axle ratio
     * @param rearCircumference the rolling circumference at the rear, 1 to 5 m
     * @return turns of the driveshaft; negative where the rear one wants to turn faster
     * @throws drivetrain.refusal.RefusedException if a circumference is out of range
     */
    public static double windUpPerKilometer(
            Ratio front, Length frontCircumference, Ratio rear, Length rearCircumference) {
        double rearTurns = METERS_PER_KILOMETER * rear.value() / rearCircumference.toMeters();
        return mismatch(front, frontCircumference, rear, rearCircumference) * rearTurns;
    }

    /**
     * Shows how mismatch and wind-up are worked out.
     *
     * @param front the front axle ratio
     * @param frontCircumference the rolling circumference in front, 1 to 5 m
     * @param rear the rear axle ratio
     * @param rearCircumference the rolling circumference at the rear, 1 to 5 m
     * @return the working
     * @throws drivetrain.refusal.RefusedException if a circumference is out of range
     */
    public static Working working(Ratio front, Length frontCircumference, Ratio rear, Length rearCircumference) {
        double mismatch = mismatch(front, frontCircumference, rear, rearCircumference);
        double turns = windUpPerKilometer(front, frontCircumference, rear, rearCircumference);
        return Working.of("front and rear axle match")
                .input("front axle ratio", "i_f", front.figure(), "front axle " + front.text())
                .input("front rolling circumference", "C_f", dimension(frontCircumference), "front tire")
                .input("rear axle ratio", "i_r", rear.figure(), "rear axle " + rear.text())
                .input("rear rolling circumference", "C_r", dimension(rearCircumference), "rear tire")
                .step("mismatch", "m = (i_f / C_f) / (i_r / C_r) - 1", Figure.percent(mismatch, 3))
                .step("wind-up, driveshaft turns per km", "k = m x i_r x 1000 m / C_r", Figure.plain(turns, 2))
                .step("wind-up, wheel turns per km", "k / i_r", Figure.plain(turns / rear.value(), 3))
                .source(GearWorkings.KINEMATICS)
                .source(Limits.SOURCE)
                .build();
    }

    private static Finding finding(double size, Verdict verdict, String statement) {
        return Finding.of(
                CHECKED,
                Figure.percent(size, 2),
                Figure.percent(Limits.MET, 2),
                Figure.percent(Limits.MET - size, 2),
                verdict,
                statement,
                Limits.SOURCE);
    }

    private static String statement(double mismatch, double turns) {
        if (mismatch == 0.0) {
            return "the axles agree";
        }
        return "the " + (mismatch > 0.0 ? "front" : "rear") + " driveshaft wants to turn "
                + DecimalText.fixed(100.0 * Math.abs(mismatch), 2) + " % faster: "
                + DecimalText.significant(Math.abs(turns), 3) + " turns per km";
    }

    private static Figure dimension(Length length) {
        return Figure.of(length, Display.DIMENSION);
    }

    /** Loads the house limits when the first match is checked. */
    private static final class Limits {
        static final double MET;
        static final double MARGINAL;
        static final Source SOURCE;

        static {
            TableRow row = ReferenceTable.load("gearing/axle-match.csv").rows().get(0);
            MET = row.number("met") / 100.0;
            MARGINAL = row.number("marginal") / 100.0;
            SOURCE = row.source();
        }
    }
}
