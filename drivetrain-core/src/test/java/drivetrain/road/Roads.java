package drivetrain.road;

import drivetrain.finding.Source;
import drivetrain.quantity.Area;
import drivetrain.quantity.Density;
import drivetrain.quantity.Force;
import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.quantity.Speed;

/** Roads and vehicles of the tests: invented figures. */
final class Roads {

    static final Density AIR = Density.ofKilogramsPerCubicMeter(1.225);
    static final AxleBalance BALANCE =
            new AxleBalance(Mass.ofKilograms(2200.0), 0.54, Length.ofMeters(2.85), Length.ofMeters(0.78));

    private Roads() {}

    /** A surface that does not depend on speed. */
    static Surface smooth(double rolling) {
        Source source = Source.given("test");
        return new Surface("test", "a test surface", rolling, rolling, rolling, false, source, 0.8, 0.9, source);
    }

    static RoadLoad wagon() {
        return RoadLoad.level(Mass.ofKilograms(2200.0), Surface.parse("asphalt"), Area.ofSquareMeters(1.4), AIR);
    }

    static ForceCurve constant(String label, double newtons, double lowest, double highest) {
        return ForceCurve.of(label, speed(lowest), speed(highest), v -> Force.ofNewtons(newtons));
    }

    static ForceCurve power(String label, double watts, double lowest, double highest) {
        return ForceCurve.of(label, speed(lowest), speed(highest), v -> Force.ofNewtons(watts / v.si()));
    }

    static Speed speed(double metersPerSecond) {
        return Speed.ofMetersPerSecond(metersPerSecond);
    }
}
