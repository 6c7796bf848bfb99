package drivetrain.tire;

import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Verdict;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Figure;

/**
 * How far front and rear tires roll in one turn, held against each other.
 *
 * @param ratio front rolling circumference over rear
 * @param sameBasis true if both were found in the same way
 */
record AxleComparison(double ratio, boolean sameBasis) {

    private static final String CHECKED = "front and rear tire diameter";

    static Finding of(Tire front, Tire rear) {
        return compare(front, rear)
                .fold(
                        AxleComparison::finding,
                        reason -> Finding.notEvaluated(
                                CHECKED, reason, TireLimits.axleDifferenceMost().source()));
    }

    /** Two tires of one description roll alike, even where nobody knows how far. */
    private static Outcome<AxleComparison> compare(Tire front, Tire rear) {
        if (front.withName("").equals(rear.withName(""))) {
            return Outcome.of(new AxleComparison(1.0, true));
        }
        return front.rolling()
                .then(first -> rear.rolling()
                        .map(second -> new AxleComparison(
                                first.circumference().ratioTo(second.circumference()),
                                first.basis() == second.basis())));
    }

    private Finding finding() {
        TireLimits.Limit most = TireLimits.axleDifferenceMost();
        double difference = Math.abs(ratio - 1.0);
        return Finding.of(
                CHECKED,
                Figure.percent(difference, 2),
                Figure.percent(most.value(), 2),
                Figure.percent(most.value() - difference, 2),
                verdict(difference, most.value()),
                statement(difference),
                most.source());
    }

    private static Verdict verdict(double difference, double most) {
        if (difference > most) {
            return Verdict.EXCEEDED;
        }
        return difference > TireLimits.axleDifferenceMarginal().value() ? Verdict.MARGINAL : Verdict.MET;
    }

    private String statement(double difference) {
        if (difference == 0.0) {
            return "front and rear tires roll the same distance in one turn";
        }
        return "one turn of the front tire is " + DecimalText.fixed(100.0 * difference, 2) + " % "
                + (ratio > 1.0 ? "longer" : "shorter") + " than one of the rear tire"
                + (sameBasis ? "" : ", but the two were not found in the same way: measure both");
    }
}
