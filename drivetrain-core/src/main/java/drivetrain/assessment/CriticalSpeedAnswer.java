package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.combination.ShaftChoice;
import drivetrain.driveshaft.CriticalSpeed;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.driveshaft.ShaftSpeed;
import drivetrain.driveshaft.ShaftSpeedCautions;
import drivetrain.driveshaft.ShaftSpeedChecks;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.Angle;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How near the driveshafts come to whirling.
 *
 * @param shafts the shafts that can be answered for, the front one first
 * @param missing what is missing for a shaft of which something is chosen
 */
public record CriticalSpeedAnswer(List<Shaft> shafts, List<String> missing) implements Answer {

    private static final Source RULE = Source.derived("the speed of the shaft against its critical speed");

    /**
     * One shaft.
     *
     * @param place which axle it runs to
     * @param critical its critical speed
     * @param speeds the speeds that it reaches, by gear, then at top speed, at the tire's symbol and at cruise
     * @param findings the checks
     */
    public record Shaft(ShaftPlace place, CriticalSpeed critical, List<ShaftSpeed> speeds, List<Finding> findings) {

        /** Copies the lists. */
        public Shaft {
            speeds = List.copyOf(speeds);
            findings = List.copyOf(findings);
        }

        /**
         * Returns how much of the critical speed a speed is.
         *
         * @param speed the speed
         * @return the share, 1 where the shaft whirls
         */
        public double fraction(ShaftSpeed speed) {
            return speed.speed().ratioTo(critical.speed());
        }
    }

    /** Copies the lists. */
    public CriticalSpeedAnswer {
        shafts = List.copyOf(shafts);
        missing = List.copyOf(missing);
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @return the answer, or what is missing for both shafts
     */
    public static Outcome<CriticalSpeedAnswer> of(Combination combination) {
        return ShaftOutcomes.of(
                combination,
                choice -> critical(choice).map(critical -> shaft(combination, choice, critical)),
                CriticalSpeedAnswer::new);
    }

    /**
     * Asks only for the critical speed of one shaft.
     *
     * @param choice the shaft with its line
     * @return the critical speed, or what is missing or cannot be
     */
    public static Outcome<CriticalSpeed> critical(ShaftChoice choice) {
        return ShaftLengths.of(choice)
                .then(lengths -> choice.needShaft().then(made -> ShaftWhirl.critical(choice.place(), made, lengths)));
    }

    private static Shaft shaft(Combination combination, ShaftChoice choice, CriticalSpeed critical) {
        List<ShaftSpeed> speeds = new ArrayList<>();
        ReachedShaftSpeeds.atMaximum(combination).value().ifPresent(speeds::addAll);
        ReachedShaftSpeeds.atTop(combination).value().ifPresent(speeds::add);
        ReachedShaftSpeeds.atTireSymbol(combination).value().ifPresent(speeds::add);
        Optional<ShaftSpeed> cruise = ReachedShaftSpeeds.atCruise(combination);
        cruise.ifPresent(speeds::add);
        String which = choice.place().label();
        List<Finding> findings = new ArrayList<>();
        findings.add(ReachedShaftSpeeds.judged(combination)
                .fold(
                        speed -> ShaftSpeedChecks.critical(which, critical.speed(), speed),
                        reason -> Finding.notEvaluated(which + " shaft speed", reason, RULE)));
        Optional<Angle> bend = ShaftLengths.greatestBend(choice);
        cruise.ifPresent(held -> {
            findings.add(ShaftSpeedChecks.half(which, critical.speed(), held, bend));
            critical.bounce().ifPresent(bounce -> findings.add(ShaftSpeedChecks.bounce(which, bounce, held)));
        });
        return new Shaft(choice.place(), critical, speeds, findings);
    }

    @Override
    public List<Assumption> assumptions() {
        return ShaftOutcomes.assumptions(
                shafts, shaft -> shaft.critical().beam().assumptions());
    }

    @Override
    public List<Finding> findings() {
        return ShaftOutcomes.findings(shafts, Shaft::findings);
    }

    @Override
    public List<Caution> cautions() {
        return ShaftSpeedCautions.whirl();
    }

    @Override
    public Working working() {
        Working.Builder working = Working.of("critical speed of the driveshafts");
        for (Shaft shaft : shafts) {
            String place = shaft.place().label();
            working.from(shaft.critical().working());
            for (ShaftSpeed speed : shaft.speeds()) {
                working.step(
                        place + " shaft, " + speed.where(),
                        "n / n_c, n = "
                                + Figure.of(speed.speed(), Display.ROTATION).text(drivetrain.quantity.UnitSystem.US),
                        Figure.percent(shaft.fraction(speed), 1));
            }
            shaft.findings().forEach(finding -> working.source(finding.rule()));
        }
        return working.build();
    }
}
