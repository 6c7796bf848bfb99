package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Verdict;
import drivetrain.quantity.Speed;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Every question asked of one combination.
 *
 * @param combination the drivetrain package
 * @param cruise engine speed at the order's cruise speed
 * @param speeds road speed in each gear at the engine's maximum speed
 * @param crawl crawl ratio and crawl speed
 * @param torque wheel torque in each gear
 * @param shifts engine speed after each upshift
 * @param speedometer what the speedometer shows
 * @param engine greatest torque and power of the engine
 * @param tire size and rolling circumference of the tire
 * @param shafts angles and motion of the driveshafts
 * @param critical how near the driveshafts come to whirling
 * @param torsion whether the driveshafts carry their greatest torque
 * @param travel the driveshafts over the travel of their axles
 * @param pull whether the engine holds the order's cruise speed
 * @param top the speed that the vehicle really reaches
 * @param grip what the tires put on the ground
 * @param loads the torque in every part
 * @param converter the torque converter behind the engine
 * @param supply whether the fuel supply keeps up
 * @param tank range and vapor of the tank
 * @param findings every check, each once
 */
public record Assessment(
        Combination combination,
        Outcome<CruiseAnswer> cruise,
        Outcome<RoadSpeedsAnswer> speeds,
        Outcome<CrawlAnswer> crawl,
        Outcome<WheelTorqueAnswer> torque,
        Outcome<ShiftAnswer> shifts,
        Outcome<SpeedometerAnswer> speedometer,
        Outcome<EngineAnswer> engine,
        Outcome<TireAnswer> tire,
        Outcome<ShaftsAnswer> shafts,
        Outcome<CriticalSpeedAnswer> critical,
        Outcome<StrengthAnswer> torsion,
        Outcome<TravelAnswer> travel,
        Outcome<PullAnswer> pull,
        Outcome<TopAnswer> top,
        Outcome<GripAnswer> grip,
        Outcome<LoadsAnswer> loads,
        Outcome<ConverterAnswer> converter,
        Outcome<SupplyAnswer> supply,
        Outcome<TankAnswer> tank,
        List<Finding> findings) {

    /** Copies the findings. */
    public Assessment {
        findings = List.copyOf(findings);
    }

    /**
     * Assesses a combination. A missing part makes single answers not evaluated and never stops the others.
     *
     * @param combination the drivetrain package
     * @return the assessment
     */
    public static Assessment of(Combination combination) {
        Outcome<Speed> asked = Outcome.of(combination.cruise(), "the order names no cruise speed");
        Outcome<CruiseAnswer> cruise = asked.then(speed -> CruiseAnswer.at(combination, speed, GearChoice.TOP));
        Outcome<RoadSpeedsAnswer> speeds = RoadSpeedsAnswer.atMaximum(combination);
        Outcome<SpeedometerAnswer> speedometer = SpeedometerAnswer.of(combination);
        Outcome<EngineAnswer> engine = EngineAnswer.of(combination);
        Outcome<TireAnswer> tire = TireAnswer.of(combination);
        Outcome<TravelAnswer> travel = TravelAnswer.of(combination);
        Outcome<SupplyAnswer> supply = SupplyAnswer.of(combination);
        Outcome<TankAnswer> tank = TankAnswer.of(combination, () -> supply);
        Outcome<GearPulls> pulls = GearPulls.of(combination);
        Outcome<PullAnswer> pull = PullAnswer.of(combination, pulls);
        Outcome<TopAnswer> top = TopAnswer.of(combination, pulls);
        Outcome<LoadsAnswer> loads = LoadsAnswer.of(combination);
        ShaftGround ground = ShaftGround.of(combination, top, loads);
        Outcome<ShaftsAnswer> shafts = ShaftsAnswer.of(ground);
        Outcome<CriticalSpeedAnswer> critical = CriticalSpeedAnswer.of(ground);
        Outcome<StrengthAnswer> torsion = StrengthAnswer.of(ground);
        Set<Finding> findings = new LinkedHashSet<>();
        findings.addAll(of(cruise));
        findings.addAll(of(engine));
        findings.addAll(of(tire));
        findings.add(DriveChecks.topSpeed(combination, speeds));
        findings.add(DriveChecks.axleMatch(combination));
        findings.addAll(of(speedometer));
        findings.addAll(ShaftFindings.of(ground, shafts, critical, torsion));
        findings.addAll(of(travel));
        findings.addAll(of(pull));
        findings.addAll(of(top));
        findings.addAll(of(loads));
        findings.addAll(SupplyChecks.of(combination, supply));
        findings.addAll(of(tank));
        return new Assessment(
                combination,
                cruise,
                speeds,
                CrawlAnswer.of(combination),
                WheelTorqueAnswer.of(combination),
                ShiftAnswer.atMaximum(combination),
                speedometer,
                engine,
                tire,
                shafts,
                critical,
                torsion,
                travel,
                pull,
                top,
                GripAnswer.of(combination, pulls),
                loads,
                ConverterAnswer.of(combination),
                supply,
                tank,
                List.copyOf(findings));
    }

    private static List<Finding> of(Outcome<? extends Answer> outcome) {
        return outcome.value().map(Answer::findings).orElse(List.of());
    }

    /**
     * Returns the worst verdict of the findings.
     *
     * @return the verdict of the combination
     */
    public Verdict verdict() {
        return Finding.worst(findings);
    }

    /**
     * Returns the answers by question.
     *
     * @return every question with its answer, or with what is missing, in the order of the questions
     */
    public Map<Question, Outcome<? extends Answer>> answers() {
        Map<Question, Outcome<? extends Answer>> answers = new LinkedHashMap<>();
        answers.put(Question.CRUISE, cruise);
        answers.put(Question.SPEEDS, speeds);
        answers.put(Question.CRAWL, crawl);
        answers.put(Question.TORQUE, torque);
        answers.put(Question.SHIFTS, shifts);
        answers.put(Question.SPEEDOMETER, speedometer);
        answers.put(Question.ENGINE, engine);
        answers.put(Question.TIRE, tire);
        answers.put(Question.SHAFTS, shafts);
        answers.put(Question.CRITICAL, critical);
        answers.put(Question.TORSION, torsion);
        answers.put(Question.TRAVEL, travel);
        answers.put(Question.PULL, pull);
        answers.put(Question.TOP, top);
        answers.put(Question.GRIP, grip);
        answers.put(Question.LOADS, loads);
        answers.put(Question.CONVERTER, converter);
        answers.put(Question.SUPPLY, supply);
        answers.put(Question.TANK, tank);
        return answers;
    }

    /**
     * Returns what the answers rest on.
     *
     * @return every assumption of every answer, each once
     */
    public List<Assumption> assumptions() {
        Set<Assumption> all = new LinkedHashSet<>();
        answers().values().forEach(outcome -> outcome.value().ifPresent(answer -> all.addAll(answer.assumptions())));
        return List.copyOf(all);
    }

    /**
     * Returns the warnings that belong to acting on the answers.
     *
     * @return every caution of every answer, each once
     */
    public List<Caution> cautions() {
        Set<Caution> all = new LinkedHashSet<>();
        answers().values().forEach(outcome -> outcome.value().ifPresent(answer -> all.addAll(answer.cautions())));
        return List.copyOf(all);
    }

    /**
     * Returns the cruise speed that was asked about.
     *
     * @return the speed, or empty
     */
    public Optional<Speed> cruiseSpeed() {
        return combination.cruise();
    }
}
