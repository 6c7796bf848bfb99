package drivetrain.assessment;

import drivetrain.driveshaft.CriticalSpeed;
import drivetrain.driveshaft.Driveshaft;
import drivetrain.driveshaft.ShaftHouse;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.driveshaft.ShaftSpeed;
import drivetrain.driveshaft.ShaftSpeedChecks;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.quantity.Angle;
import drivetrain.quantity.Length;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Holds the speeds at which a shaft is judged against its critical speed. */
final class ShaftWhirl {

    private static final Source RULE = Source.derived("first bending mode of the shaft between its joint centers");

    private ShaftWhirl() {}

    /** The critical speed of a shaft, or why a shaft of these lengths cannot be. */
    static Outcome<CriticalSpeed> critical(ShaftPlace place, Driveshaft shaft, List<Length> lengths) {
        try {
            return CriticalSpeed.of(shaft, lengths);
        } catch (RefusedException impossible) {
            Refusal why = impossible.refusal();
            return Outcome.notEvaluated(
                    "the " + place.label() + " " + why.subject() + " " + why.given() + " " + why.problem());
        }
    }

    /** The checks of a shaft against its critical speed. */
    static List<Finding> findings(ShaftGround ground, ShaftPlace place, Optional<Angle> bend) {
        return ground.critical(place)
                .fold(critical -> findings(ground, place, critical, bend), reason -> List.of(missing(place, reason)));
    }

    static Finding missing(ShaftPlace place, String reason) {
        return Finding.notEvaluated(place.label() + " shaft, critical speed", reason, RULE);
    }

    private static List<Finding> findings(
            ShaftGround ground, ShaftPlace place, CriticalSpeed critical, Optional<Angle> bend) {
        String which = place.label();
        ShaftHouse house = ground.house();
        List<Finding> findings = new ArrayList<>();
        Outcome<ShaftSpeed> fastest = fastest(ground, place);
        findings.add(fastest.fold(
                speed -> ShaftSpeedChecks.critical(which, critical.speed(), speed, house),
                reason -> Finding.notEvaluated(which + " shaft speed", reason, RULE)));
        at(ShaftSpeeds.beyondTires(ground), ground, place)
                .map(speed -> ShaftSpeedChecks.critical(which, critical.speed(), speed, house))
                .ifPresent(found -> findings.add(DriveChecks.leftToTheDriver(
                        found,
                        found.statement()
                                + "; only the driver, who must keep below the tire's limit, keeps it from there")));
        at(ShaftSpeeds.cruise(ground.combination()), ground, place).ifPresent(held -> {
            if (fastest.value()
                    .filter(most -> !most.speed().isLessThan(held.speed()))
                    .isEmpty()) {
                findings.add(ShaftSpeedChecks.critical(which, critical.speed(), held, house));
            }
            findings.add(ShaftSpeedChecks.half(which, critical.speed(), held, bend, house));
            critical.bounce().ifPresent(bounce -> findings.add(ShaftSpeedChecks.bounce(which, bounce, held, house)));
        });
        return FrontHubs.canRest(ground.combination(), place)
                ? findings.stream().map(FrontHubs::softened).toList()
                : findings;
    }

    /** The speed up to which a shaft is judged; where no tire is chosen, that of the engine in its tallest gear. */
    private static Outcome<ShaftSpeed> fastest(ShaftGround ground, ShaftPlace place) {
        return Outcome.of(
                at(ShaftSpeeds.fastest(ground), ground, place)
                        .or(() -> ReachedShaftSpeeds.greatest(ground.combination())
                                .value()),
                "neither the engine with its gears nor a tire with its speed symbol tells how fast it can turn");
    }

    static Optional<ShaftSpeed> at(Optional<ShaftSpeeds.Judged> judged, ShaftGround ground, ShaftPlace place) {
        return judged.flatMap(speed -> speed.of(ground.combination(), place).value());
    }
}
