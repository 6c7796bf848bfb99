package drivetrain.driveshaft;

import drivetrain.quantity.Angle;

/** Shafts and lines for the tests. */
final class Lines {

    static final String SHAFT = "tube 76.2 mm x 2.1 mm of steel, yokes in phase, joints rated 1700 N\u00B7m to 30 deg,"
            + " slip 24 teeth 38 mm across 95 mm engaged 50 mm free";

    private Lines() {}

    static InstalledShaft rear(String line) {
        return rear(SHAFT, line);
    }

    static InstalledShaft rear(String shaft, String line) {
        return new InstalledShaft(
                ShaftPlace.REAR, Driveshaft.parse(shaft), LineSurvey.parse(line).line(ShaftPlace.REAR));
    }

    static InstalledShaft front(String shaft, String line) {
        return new InstalledShaft(
                ShaftPlace.FRONT,
                Driveshaft.parse(shaft),
                LineSurvey.parse(line).line(ShaftPlace.FRONT));
    }

    static double residual(InstalledShaft installed) {
        return installed.residual().equivalentAngle().toDegrees();
    }

    static Angle degrees(double number) {
        return Angle.ofDegrees(number);
    }
}
