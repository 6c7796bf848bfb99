package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.combination.ShaftChoice;
import drivetrain.driveshaft.CriticalSpeed;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.driveshaft.ShaftSpeed;
import drivetrain.driveshaft.ShaftSpeedCautions;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.tire.RollingCircumference;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How near the driveshafts come to whirling.
 *
 * @param shafts the shafts that can be answered for, the front one first
 * @param missing what is missing for a shaft of which something is chosen
 */
public record CriticalSpeedAnswer(List<Shaft> shafts, List<String> missing) implements Answer {

    /**
     * One shaft.
     *
     * @param place which axle it runs to
     * @param critical its critical speed
     * @param speeds the speeds that it reaches, by gear, then at top speed, at the tire's symbol and at cruise
     * @param assumptions what they rest on
     * @param findings the checks
     */
    public record Shaft(
            ShaftPlace place,
            CriticalSpeed critical,
            List<ShaftSpeed> speeds,
            List<Assumption> assumptions,
            List<Finding> findings) {

        /** Copies the lists. */
        public Shaft {
            speeds = List.copyOf(speeds);
            assumptions = List.copyOf(assumptions);
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
        return of(ShaftGround.of(combination));
    }

    static Outcome<CriticalSpeedAnswer> of(ShaftGround ground) {
        return ShaftOutcomes.of(
                ground.combination(),
                choice -> ground.critical(choice.place()).map(critical -> shaft(ground, choice, critical)),
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

    private static Shaft shaft(ShaftGround ground, ShaftChoice choice, CriticalSpeed critical) {
        ShaftPlace place = choice.place();
        Combination combination = ground.combination();
        List<ShaftSpeed> speeds = new ArrayList<>();
        ReachedShaftSpeeds.atMaximum(combination).value().ifPresent(speeds::addAll);
        Optional<ShaftSpeed> top = ShaftWhirl.at(ShaftSpeeds.atTop(ground), ground, place);
        top.ifPresent(speeds::add);
        ShaftWhirl.at(ShaftSpeeds.atTireSymbol(combination), ground, place).ifPresent(speeds::add);
        ShaftWhirl.at(ShaftSpeeds.cruise(combination), ground, place).ifPresent(speeds::add);
        Set<Assumption> assumptions = new LinkedHashSet<>(critical.beam().assumptions());
        ShaftSpeeds.rolling(combination, place)
                .value()
                .map(RollingCircumference::assumptions)
                .ifPresent(assumptions::addAll);
        top.ifPresent(known -> assumptions.add(ShaftGround.TOP_SPEED));
        if (FrontHubs.canRest(combination, place)) {
            assumptions.add(FrontHubs.LOCKED);
        }
        return new Shaft(
                place,
                critical,
                speeds,
                List.copyOf(assumptions),
                ShaftWhirl.findings(ground, place, ShaftLengths.greatestBend(choice)));
    }

    @Override
    public List<Assumption> assumptions() {
        return ShaftOutcomes.assumptions(shafts, Shaft::assumptions);
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
