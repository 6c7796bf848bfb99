package drivetrain.gearing;

/** Gear trains of an invented shop, for tests of our own figures. */
final class Trains {

    static final Transmission FIVE_SPEED =
            Transmission.parse("4.50 2.50 1.50 1.00 0.80 reverse 4.20 clutch efficiency 95 %");
    static final Transmission AUTOMATIC =
            Transmission.parse("4.03 2.36 1.53 1.15 0.85 0.67 reverse 3.06 converter stall 2.0 lockup slip 3 %");

    private Trains() {}

    static GearTrain fiveSpeed() {
        return new GearTrain(
                FIVE_SPEED,
                Overdrive.none(),
                TransferCase.parse("1.00 2.50 part-time efficiency 98 %"),
                AxleRatio.parse("4.00 efficiency 96 %"),
                HubReduction.none());
    }

    static GearTrain with(Overdrive overdrive, HubReduction hubs) {
        return new GearTrain(AUTOMATIC, overdrive, TransferCase.parse("1.00 2.72"), AxleRatio.parse("41/10"), hubs);
    }
}
