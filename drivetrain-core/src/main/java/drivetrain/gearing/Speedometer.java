package drivetrain.gearing;

import drivetrain.finding.Finding;
import drivetrain.finding.Working;
import drivetrain.quantity.Length;
import drivetrain.quantity.Speed;
import drivetrain.refusal.Refusal;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A speedometer that shows the true speed on the tire and the axle that it was calibrated for.
 *
 * @param drive what turns it
 * @param calibratedCircumference the rolling circumference of the tire that it was calibrated for, 1 to 5 m
 * @param calibratedAxle the axle ratio that it was calibrated for; needed where the driveshaft turns it
 * @param drivenTeeth the teeth of the driven speedometer gear, 5 to 80, where it has one
 * @param drivingTeeth the teeth of the driving speedometer gear, 5 to 80, where it has one
 */
public record Speedometer(
        SpeedometerDrive drive,
        Length calibratedCircumference,
        Optional<Ratio> calibratedAxle,
        OptionalInt drivenTeeth,
        OptionalInt drivingTeeth) {

    /**
     * Checks the parts.
     *
     * @throws drivetrain.refusal.RefusedException if a value is out of range, the axle is missing for a driveshaft drive, or only one of the two
     *     tooth counts is given, or tooth counts are given for wheel sensors
     */
    public Speedometer {
        requireCircumference("calibrated circumference", calibratedCircumference);
        calibratedAxle.ifPresent(RatioLimits.AXLE::require);
        if (drive == SpeedometerDrive.DRIVESHAFT && calibratedAxle.isEmpty()) {
            throw Refusal.of("speedometer", drive.label(), "needs the axle ratio that it was calibrated for")
                    .asException();
        }
        boolean geared = drivenTeeth.isPresent();
        if (geared != drivingTeeth.isPresent() || (geared && drive == SpeedometerDrive.WHEELS)) {
            throw Refusal.of("speedometer", drive.label(), "has tooth counts that do not fit it")
                    .allowing("driven and driving teeth together, on a driveshaft drive; or neither")
                    .asException();
        }
        drivenTeeth.ifPresent(DrivenGear::requireTeeth);
        drivingTeeth.ifPresent(DrivenGear::requireTeeth);
    }

    static void requireCircumference(String subject, Length circumference) {
        circumference.requireBetween(subject, Length.ofMeters(1.0), Length.ofMeters(5.0), Length.MILLIMETER);
    }

    /**
     * Returns what is shown at a true speed, the wheels without hub reduction.
     *
     * @param actual the true speed
     * @param circumference the rolling circumference of the tire now fitted, 1 to 5 m
     * @param axle the axle ratio now fitted
     * @return the reading
     * @throws drivetrain.refusal.RefusedException if the circumference is out of range
     */
    public SpeedometerReading read(Speed actual, Length circumference, Ratio axle) {
        return read(actual, circumference, axle, HubReduction.none());
    }

    /**
     * Returns what is shown at a true speed.
     *
     * @param actual the true speed
     * @param circumference the rolling circumference of the tire now fitted, 1 to 5 m
     * @param axle the axle ratio now fitted
     * @param hubs the hub reduction now fitted; the calibrated axle had none
     * @return the reading
     * @throws drivetrain.refusal.RefusedException if the circumference is out of range
     */
    public SpeedometerReading read(Speed actual, Length circumference, Ratio axle, HubReduction hubs) {
        return new SpeedometerReading(actual, actual.times(shownOverTrue(circumference, axle, hubs)));
    }

    /**
     * Returns shown speed over true speed.
     *
     * @param circumference the rolling circumference of the tire now fitted, 1 to 5 m
     * @param axle the axle ratio now fitted
     * @param hubs the hub reduction now fitted
     * @return the ratio of circumferences, calibrated over fitted; with a driveshaft drive times the ratio of axle ratios, fitted over calibrated
     * @throws drivetrain.refusal.RefusedException if the circumference is out of range
     */
    public double shownOverTrue(Length circumference, Ratio axle, HubReduction hubs) {
        requireCircumference("rolling circumference", circumference);
        double tire = calibratedCircumference.ratioTo(circumference);
        if (drive == SpeedometerDrive.WHEELS) {
            return tire;
        }
        double calibrated = calibratedAxle.map(Ratio::value).orElseThrow();
        return tire * (axle.value() * hubs.ratio().value() / calibrated);
    }

    /**
     * Holds the reading against UN Regulation 39 at its test speeds of 40, 80 and 120 km/h.
     *
     * @param circumference the rolling circumference of the tire now fitted
     * @param axle the axle ratio now fitted
     * @param hubs the hub reduction now fitted
     * @return the finding at the speed with the least margin
     */
    public Finding unR39(Length circumference, Ratio axle, HubReduction hubs) {
        return SpeedometerRules.unR39(shownOverTrue(circumference, axle, hubs));
    }

    /**
     * Holds the reading against the relation of UN Regulation 39 at any speed.
     *
     * @param actual the true speed
     * @param circumference the rolling circumference of the tire now fitted
     * @param axle the axle ratio now fitted
     * @param hubs the hub reduction now fitted
     * @return the finding
     */
    public Finding unR39At(Speed actual, Length circumference, Ratio axle, HubReduction hubs) {
        return SpeedometerRules.unR39At(actual, shownOverTrue(circumference, axle, hubs));
    }

    /**
     * Holds the reading against 49 CFR 393.82, for information: it binds commercial motor vehicles in the United States only.
     *
     * @param circumference the rolling circumference of the tire now fitted
     * @param axle the axle ratio now fitted
     * @param hubs the hub reduction now fitted
     * @return the finding, never worse than marginal
     */
    public Finding usCommercial(Length circumference, Ratio axle, HubReduction hubs) {
        return SpeedometerRules.usCommercial(shownOverTrue(circumference, axle, hubs));
    }

    /**
     * Finds the driven gears on both sides of the exact one for the tire and the axle now fitted, the driving gear kept.
     *
     * @param circumference the rolling circumference of the tire now fitted
     * @param axle the axle ratio now fitted
     * @param hubs the hub reduction now fitted
     * @return the choice, or empty where the speedometer has no known driven gear
     */
    public Optional<DrivenGearChoice> drivenGearChoice(Length circumference, Ratio axle, HubReduction hubs) {
        return drivenTeeth.isPresent()
                ? Optional.of(DrivenGearChoice.of(drivenTeeth.getAsInt(), shownOverTrue(circumference, axle, hubs)))
                : Optional.empty();
    }

    /**
     * Shows how the reading is worked out.
     *
     * @param actual the true speed
     * @param circumference the rolling circumference of the tire now fitted
     * @param axle the axle ratio now fitted
     * @param hubs the hub reduction now fitted
     * @return the working
     */
    public Working working(Speed actual, Length circumference, Ratio axle, HubReduction hubs) {
        return SpeedometerWorkings.reading(this, read(actual, circumference, axle, hubs), circumference, axle, hubs);
    }
}
