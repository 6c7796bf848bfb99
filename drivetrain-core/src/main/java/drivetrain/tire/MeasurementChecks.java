package drivetrain.tire;

import drivetrain.finding.Finding;
import drivetrain.finding.Verdict;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.quantity.RevolutionsPerDistance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Doubts a measurement that does not agree with another one or with the size. */
final class MeasurementChecks {

    private MeasurementChecks() {}

    static List<Finding> of(String where, Tire tire) {
        List<Finding> findings = new ArrayList<>();
        Optional<Length> byMaker = tire.revolutions().map(RevolutionsPerDistance::perRevolution);
        tire.rollout()
                .ifPresent(measured -> byMaker.ifPresent(published -> findings.add(compare(
                        where + " tire roll-out against its maker's revolutions",
                        measured,
                        published,
                        TireLimits.measurementsDiffer()))));
        Optional<Length> size = TireMeasurements.bySize(tire.designation()).value();
        size.ifPresent(expected -> {
            tire.rollout()
                    .ifPresent(measured -> findings.add(compare(
                            where + " tire roll-out against its size", measured, expected, TireLimits.sizeDiffers())));
            byMaker.ifPresent(published -> findings.add(compare(
                    where + " tire maker's revolutions against the size",
                    published,
                    expected,
                    TireLimits.sizeDiffers())));
        });
        tire.diameter()
                .ifPresent(given -> tire.designation()
                        .overallDiameter()
                        .value()
                        .ifPresent(expected -> findings.add(compare(
                                where + " tire diameter against its size",
                                given,
                                expected.diameter(),
                                TireLimits.sizeDiffers()))));
        return List.copyOf(findings);
    }

    private static Finding compare(String checked, Length given, Length expected, TireLimits.Limit limit) {
        double off = given.ratioTo(expected) - 1.0;
        boolean doubted = Math.abs(off) > limit.value();
        String statement = given.format(Length.MILLIMETER, 0) + " against " + expected.format(Length.MILLIMETER, 0)
                + ", " + DecimalText.fixed(100.0 * Math.abs(off), 1) + " % " + (off < 0.0 ? "less" : "more")
                + (doubted ? ": measure again, or check the size" : "");
        return Finding.of(
                checked,
                Figure.of(given, Display.DIMENSION),
                Figure.of(expected, Display.DIMENSION),
                Figure.percent(limit.value() - Math.abs(off), 1),
                doubted ? Verdict.MARGINAL : Verdict.MET,
                statement,
                limit.source());
    }
}
