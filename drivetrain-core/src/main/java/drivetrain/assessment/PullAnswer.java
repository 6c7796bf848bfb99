package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Verdict;
import drivetrain.finding.Working;
import drivetrain.gearing.DriveGear;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Speed;
import drivetrain.road.Grade;
import drivetrain.road.GradeHeld;
import drivetrain.road.RoadCautions;
import drivetrain.road.RoadLoad;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether the engine holds a road speed on a grade, and in which gear.
 *
 * @param combination the drivetrain package
 * @param load the resistance on the grade
 * @param speed the road speed
 * @param power the power that it takes in the highest gear that holds it, or in top gear where none does
 * @param holding the highest gear that holds the speed on the grade; empty where none does
 * @param top the highest gear of the high range, whether it holds the speed or not; empty where it does not cover the speed
 * @param rows every gear that covers the speed, from the shortest to the tallest
 * @param assumptions what the forces rest on
 * @param findings whether the highest gear holds the speed
 */
public record PullAnswer(
        Combination combination,
        RoadLoad load,
        Speed speed,
        CruisePower power,
        Optional<Row> holding,
        Optional<Row> top,
        List<Row> rows,
        List<Assumption> assumptions,
        List<Finding> findings)
        implements Answer {

    private static final String CHECKED = "speed held in top gear";

    /**
     * One gear at the speed.
     *
     * @param gear the gear
     * @param engineSpeed the engine speed, with clutch or converter locked
     * @param held the driving force, what is left of it, and the grade that it holds
     */
    public record Row(DriveGear gear, AngularSpeed engineSpeed, GradeHeld held) {

        /**
         * Returns the share of the driving force that is left over.
         *
         * @return a fraction, negative where the gear does not hold the speed
         */
        public double reserve() {
            return held.reserve().ratioTo(held.drive());
        }
    }

    /** Copies the lists. */
    public PullAnswer {
        rows = List.copyOf(rows);
        assumptions = List.copyOf(assumptions);
        findings = List.copyOf(findings);
    }

    /**
     * Asks at the cruise speed of the order, on the level.
     *
     * @param combination the drivetrain package
     * @return the answer, or what is missing
     */
    public static Outcome<PullAnswer> of(Combination combination) {
        return of(combination, GearPulls.of(combination));
    }

    static Outcome<PullAnswer> of(Combination combination, Outcome<GearPulls> pulls) {
        return Outcome.of(combination.cruise(), "the order names no cruise speed")
                .then(speed -> at(combination, Grade.level(), speed, pulls));
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @param grade the grade
     * @param speed the road speed, greater than zero
     * @return the answer, or what is missing
     * @throws drivetrain.refusal.RefusedException if the road speed is not greater than zero
     */
    public static Outcome<PullAnswer> at(Combination combination, Grade grade, Speed speed) {
        speed.requirePositive("road speed");
        return at(combination, grade, speed, GearPulls.of(combination));
    }

    private static Outcome<PullAnswer> at(Combination combination, Grade grade, Speed speed, Outcome<GearPulls> pulls) {
        return SpeedLimiter.allowed(combination, speed)
                .then(allowed -> RoadGround.load(combination))
                .then(load -> pulls.then(known -> answer(combination, load.on(grade), speed, known)));
    }

    private static Outcome<PullAnswer> answer(Combination combination, RoadLoad load, Speed speed, GearPulls pulls) {
        List<Row> rows = new ArrayList<>();
        for (GearPulls.Gear pull : pulls.gears()) {
            GradeHeld.of(pull.curve(), load, speed)
                    .value()
                    .ifPresent(held -> rows.add(new Row(
                            pull.gear(),
                            pull.gear().engineSpeedAt(speed, pulls.rolling().radius()),
                            held)));
        }
        Optional<Row> holding = rows.stream().filter(row -> row.held().holds()).reduce((shorter, taller) -> taller);
        DriveGear highest = pulls.train().top();
        Optional<Row> top =
                rows.stream().filter(row -> row.gear().equals(highest)).findFirst();
        GearChoice choice = holding.or(() -> top).map(row -> choice(row.gear())).orElse(GearChoice.TOP);
        return CruisePower.at(combination, speed, load.grade(), choice).map(power -> {
            List<Assumption> assumptions = new ArrayList<>(RoadGround.loadAssumptions(combination));
            assumptions.addAll(pulls.assumptions());
            List<Finding> findings = new ArrayList<>();
            findings.add(held(highest, top, holding, speed));
            findings.addAll(pulls.engine().findings());
            return new PullAnswer(combination, load, speed, power, holding, top, rows, assumptions, findings);
        });
    }

    private static GearChoice choice(DriveGear gear) {
        GearChoice choice = GearChoice.of(gear.number(), gear.range());
        return gear.auxiliaryEngaged() ? choice.withAuxiliary() : choice;
    }

    private static Finding held(DriveGear highest, Optional<Row> top, Optional<Row> holding, Speed speed) {
        if (top.isEmpty()) {
            return Finding.notEvaluated(
                    CHECKED,
                    "the engine's torque is not known at " + speed.format(Speed.MILE_PER_HOUR, 1) + " in "
                            + highest.label(),
                    GradeHeld.reserveRule());
        }
        double reserve = top.get().reserve();
        double least = GradeHeld.leastReserve();
        Verdict verdict = reserve < 0.0 ? Verdict.EXCEEDED : reserve < least ? Verdict.MARGINAL : Verdict.MET;
        String lower = holding.map(row -> row.gear().label() + " is the highest gear that holds it")
                .orElse("no gear holds it");
        String statement = switch (verdict) {
            case EXCEEDED -> highest.label() + " does not hold this speed; " + lower;
            case MARGINAL -> highest.label() + " barely holds this speed; a headwind or a load takes it away";
            default -> highest.label() + " holds this speed with force left over";
        };
        return Finding.of(
                CHECKED,
                Figure.percent(reserve, 0),
                Figure.percent(least, 0),
                Figure.percent(reserve - least, 0),
                verdict,
                statement,
                GradeHeld.reserveRule());
    }

    @Override
    public List<Caution> cautions() {
        return RoadCautions.grades();
    }

    @Override
    public Working working() {
        Working.Builder working = Working.of("holding a speed on a grade").from(load.working(speed));
        holding.or(() -> top).ifPresent(row -> ForceWorking.into(working, combination, row.gear(), speed));
        rows.forEach(row -> working.from(row.held().working(load)));
        return working.build();
    }
}
