package drivetrain.driveshaft;

import drivetrain.driveshaft.ShaftHouse.Rule;
import drivetrain.finding.Finding;
import drivetrain.finding.HouseLimit;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.quantity.Angle;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The checks of a shaft over the travel of its axle. */
public final class TravelChecks {

    private static final Source MAKER = Source.given("the joint's maker");
    private static final Source SLIDE = Source.derived("a spline that is drawn apart or pushed to its end");

    private TravelChecks() {}

    /**
     * Checks angles, engagement and free travel at the extremes.
     *
     * @param travel the shaft over its travel
     * @param house the limits of the shop
     * @return one finding for each joint, one for the engagement, one for the free travel, and one for bushes that would have to give too much
     */
    public static List<Finding> of(ShaftTravel travel, ShaftHouse house) {
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < travel.widest().size(); i++) {
            findings.add(angle(travel, i, house));
        }
        findings.add(engagement(travel, house));
        findings.add(free(travel, house));
        bushes(travel, house).ifPresent(findings::add);
        return findings;
    }

    private static String place(ShaftTravel travel) {
        return travel.installed().place().label() + " shaft";
    }

    private static Finding angle(ShaftTravel travel, int index, ShaftHouse house) {
        String name = place(travel) + ", joint " + (index + 1) + " angle over the travel";
        Optional<Angle> most = travel.installed().shaft().joints().get(index).mostAngle();
        if (most.isEmpty()) {
            return Finding.notEvaluated(
                    name, "the greatest angle of the joint is not given, such as joints to 30 deg", MAKER);
        }
        Angle widest = travel.widest().get(index).angles().get(index);
        HouseLimit reserve = house.of(Rule.JOINT_RESERVE);
        double use = widest.ratioTo(most.get());
        Verdict verdict = use > 1.0 ? Verdict.EXCEEDED : use > 1.0 - reserve.value() ? Verdict.MARGINAL : Verdict.MET;
        return Finding.of(
                name,
                Figure.of(widest, Display.JOINT_ANGLE),
                Figure.of(most.get(), Display.JOINT_ANGLE),
                Figure.of(most.get().minus(widest), Display.JOINT_ANGLE),
                verdict,
                switch (verdict) {
                    case EXCEEDED -> "the joint binds before the suspension ends: it breaks, or the axle hangs on it";
                    case MARGINAL -> "little is left before the joint binds";
                    default -> "the joint turns freely over the whole travel";
                },
                verdict == Verdict.MARGINAL ? reserve.source() : MAKER);
    }

    private static Finding engagement(ShaftTravel travel, ShaftHouse house) {
        String name = place(travel) + ", spline engagement over the travel";
        Optional<Length> left = travel.engagementLeft();
        if (left.isEmpty()) {
            return Finding.notEvaluated(
                    name, "the engagement at ride height is not given, such as slip 24 teeth 95 mm engaged", SLIDE);
        }
        if (left.get().toMeters() <= 0.0) {
            return slide(
                    name,
                    left.get(),
                    Length.ofMeters(0.0),
                    Verdict.EXCEEDED,
                    "the spline comes apart at the longest",
                    SLIDE);
        }
        SlipSpline slip = travel.installed().shaft().slip().orElseThrow();
        HouseLimit rule = house.of(Rule.ENGAGEMENT);
        Optional<Length> wanted = slip.least().or(() -> slip.diameter().map(stub -> stub.times(rule.value())));
        if (wanted.isEmpty()) {
            return Finding.of(
                    name,
                    Figure.of(left.get(), Display.DIMENSION),
                    Verdict.NOT_EVALUATED,
                    "the least engagement is not given, nor the stub's diameter, such as slip 24 teeth 38 mm across 95 mm engaged 60 mm least",
                    rule.source());
        }
        boolean kept = left.get().compareTo(wanted.get()) >= 0;
        Source source = slip.least().isPresent() ? Source.given("the shaft's maker") : rule.source();
        return slide(
                name,
                left.get(),
                wanted.get(),
                kept ? Verdict.MET : slip.least().isPresent() ? Verdict.EXCEEDED : Verdict.MARGINAL,
                kept
                        ? "enough of the spline stays engaged at the longest"
                        : "too little of the spline stays engaged at the longest",
                source);
    }

    private static Finding free(ShaftTravel travel, ShaftHouse house) {
        String name = place(travel) + ", slip travel left when shortest";
        Optional<Length> left = travel.freeLeft();
        if (left.isEmpty()) {
            return Finding.notEvaluated(
                    name,
                    "how far the shaft can be pushed together is not given, such as slip 24 teeth 50 mm free",
                    SLIDE);
        }
        HouseLimit reserve = house.of(Rule.SLIP_RESERVE);
        Length wanted = house.length(Rule.SLIP_RESERVE);
        if (left.get().toMeters() <= 0.0) {
            return slide(
                    name,
                    left.get(),
                    wanted,
                    Verdict.EXCEEDED,
                    "the shaft bottoms before the suspension does and drives against transfer case and pinion bearings",
                    SLIDE);
        }
        boolean kept = left.get().compareTo(wanted) >= 0;
        return slide(
                name,
                left.get(),
                wanted,
                kept ? Verdict.MET : Verdict.MARGINAL,
                kept ? "the shaft does not bottom" : "the shaft all but bottoms",
                kept && !reserve.isGiven() ? SLIDE : reserve.source());
    }

    /** Where bushes would have to give more than they do, the axle is stopped before the extremes that were looked at. */
    private static Optional<Finding> bushes(ShaftTravel travel, ShaftHouse house) {
        Length most = house.length(Rule.BUSH_GIVE);
        if (travel.misfit().compareTo(most) <= 0) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(
                travel.installed().place().label() + " suspension, give of its bushes",
                Figure.of(travel.misfit(), Display.DIMENSION),
                Figure.of(most, Display.DIMENSION),
                Figure.of(most.minus(travel.misfit()), Display.DIMENSION),
                Verdict.MARGINAL,
                "one wheel at bump with the other at droop asks more of the bushes than they give; the axle may be stopped before, so that the extremes are on the safe side",
                house.source(Rule.BUSH_GIVE)));
    }

    private static Finding slide(
            String name, Length value, Length limit, Verdict verdict, String statement, Source rule) {
        return Finding.of(
                name,
                Figure.of(value, Display.DIMENSION),
                Figure.of(limit, Display.DIMENSION),
                Figure.of(value.minus(limit), Display.DIMENSION),
                verdict,
                statement,
                rule);
    }
}
