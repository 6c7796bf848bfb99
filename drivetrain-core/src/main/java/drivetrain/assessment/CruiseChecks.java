package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.combination.HouseLimits;
import drivetrain.engine.Engine;
import drivetrain.finding.Finding;
import drivetrain.finding.HouseLimit;
import drivetrain.finding.Verdict;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Speed;
import drivetrain.tire.TireChecks;
import java.util.ArrayList;
import java.util.List;

/** Whether the engine lugs or screams at a road speed, and whether the tire may go that fast. */
final class CruiseChecks {

    private static final String LUG = "engine speed at cruise, low side";
    private static final String SCREAM = "engine speed at cruise, high side";

    private CruiseChecks() {}

    static List<Finding> of(Combination combination, Speed speed, AngularSpeed engineSpeed) {
        List<Finding> findings = new ArrayList<>();
        findings.add(lug(combination, engineSpeed));
        findings.add(scream(combination, engineSpeed));
        SpeedLimiter.cruise(combination, speed).ifPresent(findings::add);
        combination.tire().ifPresent(tire -> findings.add(TireChecks.speed("cruise", tire.item(), speed)));
        return findings;
    }

    private static Finding lug(Combination combination, AngularSpeed engineSpeed) {
        HouseLimit house = combination.limits().get(HouseLimits.CRUISE_LEAST_OVER_IDLE);
        return Idle.of(combination)
                .fold(
                        idle -> {
                            AngularSpeed least = idle.times(house.value());
                            Verdict verdict = verdict(engineSpeed.isLessThan(idle), engineSpeed.isLessThan(least));
                            double margin = engineSpeed.ratioTo(least) - 1.0;
                            return held(LUG, engineSpeed, least, margin, verdict, lugStatement(verdict), house);
                        },
                        reason -> Finding.notEvaluated(LUG, reason, house.source()));
    }

    private static Verdict verdict(boolean exceeded, boolean marginal) {
        return exceeded ? Verdict.EXCEEDED : marginal ? Verdict.MARGINAL : Verdict.MET;
    }

    private static Finding held(
            String checked,
            AngularSpeed engineSpeed,
            AngularSpeed limit,
            double margin,
            Verdict verdict,
            String statement,
            HouseLimit house) {
        return Finding.of(
                checked,
                Figure.of(engineSpeed, Display.ROTATION),
                Figure.of(limit, Display.ROTATION),
                Figure.percent(margin, 0),
                verdict,
                statement,
                house.source());
    }

    private static String lugStatement(Verdict verdict) {
        return switch (verdict) {
            case EXCEEDED -> "the engine would turn slower than its idle; it stalls or shudders in this gear";
            case MARGINAL -> "the engine turns slowly for a cruise; it may lug on a grade";
            default -> "the engine turns fast enough to pull";
        };
    }

    private static Finding scream(Combination combination, AngularSpeed engineSpeed) {
        HouseLimit house = combination.limits().get(HouseLimits.CRUISE_MOST_OF_MAXIMUM);
        return combination
                .needEngine()
                .map(Engine::maximumSpeed)
                .fold(
                        maximum -> {
                            AngularSpeed most = maximum.times(house.value());
                            Verdict verdict =
                                    verdict(engineSpeed.isGreaterThan(maximum), engineSpeed.isGreaterThan(most));
                            double margin = 1.0 - engineSpeed.ratioTo(most);
                            return held(SCREAM, engineSpeed, most, margin, verdict, screamStatement(verdict), house);
                        },
                        reason -> Finding.notEvaluated(SCREAM, reason, house.source()));
    }

    private static String screamStatement(Verdict verdict) {
        return switch (verdict) {
            case EXCEEDED -> "the engine would turn faster than its maximum speed; this gear cannot be used there";
            case MARGINAL -> "the engine turns fast for a cruise; it will be loud and thirsty";
            default -> "the engine turns easily";
        };
    }
}
