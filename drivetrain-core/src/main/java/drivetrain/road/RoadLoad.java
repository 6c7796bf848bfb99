package drivetrain.road;

import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.Area;
import drivetrain.quantity.Density;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Force;
import drivetrain.quantity.Mass;
import drivetrain.quantity.Power;
import drivetrain.quantity.Speed;

/**
 * What resists the vehicle at a steady speed: rolling, air and grade.
 *
 * @param mass the mass of the vehicle with its load, 100 to 50,000 kg
 * @param surface what it runs on
 * @param dragArea drag coefficient times frontal area, 0.1 to 10 m2
 * @param airDensity the density of the air, 0.2 to 2 kg/m3
 * @param grade the grade, positive uphill
 * @param headwind the speed of the wind against the vehicle, negative from behind, at most 60 m/s
 */
public record RoadLoad(Mass mass, Surface surface, Area dragArea, Density airDensity, Grade grade, Speed headwind) {

    /** Standard acceleration of free fall, 9.806 65 m/s2 exactly; ISO 80000-3. */
    public static final double GRAVITY = 9.80665;

    /** The least mass that is taken for a vehicle, 100 kg. */
    public static final Mass LEAST_MASS = Mass.ofKilograms(100.0);

    /** The greatest mass that is taken for a vehicle, 50,000 kg. */
    public static final Mass MOST_MASS = Mass.ofKilograms(50_000.0);

    /** The least drag area that is taken for a vehicle, 0.1 m2. */
    public static final Area LEAST_DRAG_AREA = Area.ofSquareMeters(0.1);

    /** The greatest drag area that is taken for a vehicle, 10 m2. */
    public static final Area MOST_DRAG_AREA = Area.ofSquareMeters(10.0);

    private static final Density THINNEST = Density.ofKilogramsPerCubicMeter(0.2);
    private static final Density DENSEST = Density.ofKilogramsPerCubicMeter(2.0);
    private static final Speed STRONGEST_WIND = Speed.ofMetersPerSecond(60.0);
    private static final Source STATICS = Source.derived(
            "balance of the forces along the road: rolling resistance with the load on the tires, drag 1/2 rho CdA v^2, weight along the grade");

    /**
     * Checks the ranges.
     *
     * @throws drivetrain.refusal.RefusedException if a value is out of range
     */
    public RoadLoad {
        mass.requireBetween("vehicle mass", LEAST_MASS, MOST_MASS, Mass.KILOGRAM);
        dragArea.requireBetween("drag area", LEAST_DRAG_AREA, MOST_DRAG_AREA, Area.SQUARE_METER);
        airDensity.requireBetween("air density", THINNEST, DENSEST, Density.KILOGRAM_PER_CUBIC_METER);
        headwind.requireBetween("wind", STRONGEST_WIND.times(-1.0), STRONGEST_WIND, Speed.METER_PER_SECOND);
    }

    /**
     * Makes a road load on a level road in still air.
     *
     * @param mass the mass
     * @param surface what it runs on
     * @param dragArea drag coefficient times frontal area
     * @param airDensity the density of the air
     * @return the road load
     * @throws drivetrain.refusal.RefusedException if a value is out of range
     */
    public static RoadLoad level(Mass mass, Surface surface, Area dragArea, Density airDensity) {
        return new RoadLoad(mass, surface, dragArea, airDensity, Grade.level(), Speed.ofMetersPerSecond(0.0));
    }

    /**
     * Puts the same vehicle on a grade.
     *
     * @param other the grade
     * @return a copy on that grade
     */
    public RoadLoad on(Grade other) {
        return new RoadLoad(mass, surface, dragArea, airDensity, other, headwind);
    }

    /**
     * Puts the same vehicle into a wind.
     *
     * @param against the speed of the wind against the vehicle
     * @return a copy in that wind
     * @throws drivetrain.refusal.RefusedException if the wind is stronger than 60 m/s
     */
    public RoadLoad inWind(Speed against) {
        return new RoadLoad(mass, surface, dragArea, airDensity, grade, against);
    }

    /**
     * Returns the weight.
     *
     * @return mass times standard gravity
     */
    public Force weight() {
        return Force.ofNewtons(weightNewtons());
    }

    /**
     * Returns the rolling resistance of all tires.
     *
     * @param speed the road speed
     * @return coefficient x weight x cosine of the slope
     */
    public Force rolling(Speed speed) {
        return Force.ofNewtons(rollingNewtons(speed.si()));
    }

    /**
     * Returns the drag of the air.
     *
     * @param speed the road speed
     * @return 1/2 x density x drag area x the square of the air speed, negative where the wind pushes
     */
    public Force drag(Speed speed) {
        return Force.ofNewtons(dragNewtons(speed.si()));
    }

    /**
     * Returns the share of the weight that pulls along the road.
     *
     * @return weight x sine of the slope, negative downhill
     */
    public Force climb() {
        return Force.ofNewtons(weightNewtons() * grade.sine());
    }

    /**
     * Returns the whole resistance.
     *
     * @param speed the road speed
     * @return rolling resistance, drag and climb together
     */
    public Force total(Speed speed) {
        return Force.ofNewtons(totalNewtons(speed.si()));
    }

    /**
     * Returns the power that it takes at the wheels. The drag is that of the air speed, the power that of the road speed.
     *
     * @param speed the road speed
     * @return whole resistance x road speed
     */
    public Power powerAtWheels(Speed speed) {
        return Power.ofWatts(totalNewtons(speed.si()) * speed.si());
    }

    /**
     * Shows how the resistance and the power are worked out.
     *
     * @param speed the road speed
     * @return the working
     */
    public Working working(Speed speed) {
        Working.Builder working = Working.of("resistance at " + speed.format(Speed.MILE_PER_HOUR, 1))
                .input("road speed", "v", Figure.of(speed, Display.ROAD_SPEED), "given")
                .input("mass", "m", Figure.of(mass, Display.MASS), "vehicle")
                .input(
                        "rolling resistance, " + surface.description(),
                        "c_0",
                        Figure.plain(surface.rolling(), 3),
                        "table")
                .input("drag area", "CdA", Figure.of(dragArea, Display.DRAG_AREA), "vehicle")
                .input("air density", "rho", Figure.of(airDensity, Display.AIR_DENSITY), "air")
                .input("grade", "tan a", grade.figure(), "given");
        if (headwind.si() != 0.0) {
            working.input("headwind", "w", Figure.of(headwind, Display.ROAD_SPEED), "given");
        }
        return working.step(
                        "rolling resistance",
                        surface.hard() ? "R = (c_0 + 0.0095/2.4 (v / 100 km/h)^2) m g cos a" : "R = c_0 m g cos a",
                        Figure.of(rolling(speed), Display.FORCE))
                .step("drag", "D = 1/2 rho CdA (v + w)^2", Figure.of(drag(speed), Display.FORCE))
                .step("weight along the grade", "G = m g sin a", Figure.of(climb(), Display.FORCE))
                .step("whole resistance", "F = R + D + G", Figure.of(total(speed), Display.FORCE))
                .step("power at the wheels", "P = F v", Figure.of(powerAtWheels(speed), Display.POWER))
                .source(STATICS)
                .source(surface.rollingSource())
                .build();
    }

    double weightNewtons() {
        return mass.si() * GRAVITY;
    }

    double rollingNewtons(double speed) {
        return RollingResistance.at(surface.rolling(), surface.hard(), speed) * weightNewtons() * grade.cosine();
    }

    double dragNewtons(double speed) {
        double air = speed + headwind.si();
        return 0.5 * airDensity.si() * dragArea.si() * air * Math.abs(air);
    }

    double totalNewtons(double speed) {
        return rollingNewtons(speed) + dragNewtons(speed) + weightNewtons() * grade.sine();
    }
}
