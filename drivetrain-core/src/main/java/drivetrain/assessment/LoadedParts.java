package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.combination.Part;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.finding.Outcome;
import drivetrain.gearing.AxleRatings;
import drivetrain.gearing.AxleRatio;
import drivetrain.gearing.AxleTie;
import drivetrain.gearing.Clutch;
import drivetrain.gearing.DriveGear;
import drivetrain.gearing.GearTrain;
import drivetrain.quantity.Torque;
import drivetrain.road.LoadPath;
import drivetrain.road.PartLoad;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The way of the torque from the engine through every part to the wheels. */
final class LoadedParts {

    /** Ends the name of a half-shaft whose axle differential is locked. */
    static final String LOCKED = ", axle locked";

    private static final Torque ONE = Torque.ofNewtonMeters(1.0);

    private final DriveGear gear;
    private final Outcome<Torque> input;
    private final List<PartLoad> parts = new ArrayList<>();

    private LoadedParts(DriveGear gear, Outcome<Torque> input) {
        this.gear = gear;
        this.input = input;
    }

    /** The loads in the gear that is worst for each part: forward or reverse, high or low. */
    static LoadPath of(Combination combination, GearTrain train, InputTorque input, AxleSlip slip) {
        return LoadPath.worst(train.gears().stream()
                .sorted(Comparator.comparingDouble(DriveGear::totalRatio).reversed())
                .map(gear -> of(combination, train, gear, input, slip))
                .toList());
    }

    private static LoadPath of(
            Combination combination, GearTrain train, DriveGear gear, InputTorque input, AxleSlip slip) {
        LoadedParts path = new LoadedParts(gear, input.behindCoupling());
        AxleTie tie = train.transferCase().tie();
        Outcome<Torque> all = switch (tie) {
            case REAR_ONLY -> slip.rear();
            case OPEN -> slip.lighter().map(torque -> torque.times(2.0));
            case PART_TIME, LOCKED -> slip.both();
        };
        path.aheadOfTheAxles(train, input, all);
        double share = tie == AxleTie.OPEN ? 0.5 : 1.0;
        Optional<Torque> output = train.transferCase().outputRating();
        path.axle(
                "rear",
                share,
                tie == AxleTie.OPEN ? slip.lighter() : slip.rear(),
                output,
                shaft(combination, ShaftPlace.REAR),
                train.rear().ratings());
        if (tie != AxleTie.REAR_ONLY) {
            AxleRatings front = combination
                    .frontAxle()
                    .map(Part::item)
                    .map(AxleRatio::ratings)
                    .orElseGet(AxleRatings::unknown);
            path.axle(
                    "front",
                    share,
                    tie == AxleTie.OPEN ? slip.lighter() : slip.front(),
                    output,
                    shaft(combination, ShaftPlace.FRONT),
                    front);
        }
        return new LoadPath(path.parts);
    }

    /** What a driveshaft's weakest joint or flange may carry. */
    private static Optional<Torque> shaft(Combination combination, ShaftPlace place) {
        return combination
                .shaft(place)
                .shaft()
                .map(Part::item)
                .flatMap(shaft -> Stream.concat(
                                shaft.flangeRating().stream(),
                                shaft.joints().stream().flatMap(joint -> joint.rating().stream()))
                        .min(Comparator.naturalOrder()));
    }

    private void aheadOfTheAxles(GearTrain train, InputTorque torque, Outcome<Torque> slip) {
        double wheels = gear.wheelTorque(ONE).si();
        double out = gear.transmissionOutputTorque(ONE).si();
        double transfer = out
                * gear.stages().auxiliary().ratio().value()
                * gear.stages().auxiliary().efficiency().value();
        if (train.transmission().coupling() instanceof Clutch clutch) {
            add("clutch", 1.0, wheels, 1.0, torque.engine(), slip, clutch.rating());
        }
        add(
                "transmission input",
                1.0,
                wheels,
                1.0,
                input,
                slip,
                train.transmission().inputRating());
        if (train.transferCase().isFitted()) {
            add(
                    "transmission output",
                    out,
                    wheels / out,
                    1.0,
                    input,
                    slip,
                    train.transmission().outputRating());
            add(
                    "transfer case input",
                    transfer,
                    wheels / transfer,
                    1.0,
                    input,
                    slip,
                    train.transferCase().inputRating());
        }
    }

    private void axle(
            String where,
            double share,
            Outcome<Torque> slip,
            Optional<Torque> output,
            Optional<Torque> driveshaft,
            AxleRatings ratings) {
        double wheels = gear.wheelTorque(ONE).si();
        double shaft = gear.driveshaftTorque(ONE).si();
        double halves = gear.halfShaftTorque(ONE).si();
        String halfShaft = where + " half-shaft";
        add(where + " transfer case output", shaft * share, wheels / shaft, 1.0, input, slip, output);
        add(where + " driveshaft", shaft * share, wheels / shaft, 1.0, input, slip, driveshaft);
        add(where + " ring and pinion", halves * share, wheels / halves, 1.0, input, slip, ratings.ringAndPinion());
        add(halfShaft, 0.5 * halves * share, wheels / halves, 0.5, input, slip, ratings.halfShaft());
        add(halfShaft + " joint", 0.5 * halves * share, wheels / halves, 0.5, input, slip, ratings.joint());
        add(halfShaft + LOCKED, halves * share, wheels / halves, 1.0, input, slip, Optional.empty());
    }

    private void add(
            String part,
            double fromInput,
            double toWheels,
            double wheelShare,
            Outcome<Torque> torque,
            Outcome<Torque> slip,
            Optional<Torque> rating) {
        parts.add(PartLoad.of(
                new PartLoad.Path(part, gear.label(), fromInput, toWheels, wheelShare), torque, slip, rating));
    }
}
