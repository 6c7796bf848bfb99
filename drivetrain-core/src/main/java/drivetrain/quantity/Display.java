package drivetrain.quantity;

/**
 * How one sort of figure is shown: its unit and decimals in the US and in the metric system.
 *
 * @param us the US unit
 * @param usDecimals the decimals shown in the US unit
 * @param metric the metric unit
 * @param metricDecimals the decimals shown in the metric unit
 * @param <Q> the kind of quantity
 */
public record Display<Q extends Quantity<Q>>(Unit<Q> us, int usDecimals, Unit<Q> metric, int metricDecimals) {

    /** Road speed: mph and km/h to one decimal. */
    public static final Display<Speed> ROAD_SPEED = new Display<>(Speed.MILE_PER_HOUR, 1, Speed.KILOMETER_PER_HOUR, 1);

    /** Walking-pace speed, such as crawl speed: two decimals. */
    public static final Display<Speed> CRAWL_SPEED = new Display<>(Speed.MILE_PER_HOUR, 2, Speed.KILOMETER_PER_HOUR, 2);

    /** Speed of rotation: rpm in both systems. */
    public static final Display<AngularSpeed> ROTATION = new Display<>(AngularSpeed.RPM, 0, AngularSpeed.RPM, 0);

    /** A dimension of a part: inches to two decimals, millimeters to one. */
    public static final Display<Length> DIMENSION = new Display<>(Length.INCH, 2, Length.MILLIMETER, 1);

    /** Torque: whole lb·ft and N·m. */
    public static final Display<Torque> TORQUE = new Display<>(Torque.POUND_FOOT, 0, Torque.NEWTON_METER, 0);

    /** Power: whole hp and kW. */
    public static final Display<Power> POWER = new Display<>(Power.HORSEPOWER, 0, Power.KILOWATT, 0);

    /** Force: whole lbf and N. */
    public static final Display<Force> FORCE = new Display<>(Force.POUND_FORCE, 0, Force.NEWTON, 0);

    /** Mass and axle load: whole lb and kg. */
    public static final Display<Mass> MASS = new Display<>(Mass.POUND, 0, Mass.KILOGRAM, 0);

    /** Tire revolutions: per mile and per kilometer. */
    public static final Display<RevolutionsPerDistance> REVOLUTIONS =
            new Display<>(RevolutionsPerDistance.PER_MILE, 1, RevolutionsPerDistance.PER_KILOMETER, 1);

    /** Tire or fuel pressure: psi and kPa. */
    public static final Display<Pressure> GAUGE_PRESSURE = new Display<>(Pressure.PSI, 1, Pressure.KILOPASCAL, 0);

    /** Pressure of the air: hPa in both systems, as weather stations report it. */
    public static final Display<Pressure> AIR_PRESSURE =
            new Display<>(Pressure.HECTOPASCAL, 1, Pressure.HECTOPASCAL, 1);

    /** Temperature: degrees Fahrenheit and Celsius to one decimal. */
    public static final Display<Temperature> TEMPERATURE =
            new Display<>(Temperature.FAHRENHEIT, 1, Temperature.CELSIUS, 1);

    /** Elevation: feet and meters. */
    public static final Display<Length> ELEVATION = new Display<>(Length.FOOT, 0, Length.METER, 0);

    /** A frequency of vibration: Hz to one decimal in both systems. */
    public static final Display<Frequency> FREQUENCY = new Display<>(Frequency.HERTZ, 1, Frequency.HERTZ, 1);

    /** A stress in a part: whole psi, MPa to one decimal. */
    public static final Display<Pressure> STRESS = new Display<>(Pressure.PSI, 0, Pressure.MEGAPASCAL, 1);

    /** A modulus of elasticity: million psi to two decimals, GPa to one. */
    public static final Display<Pressure> MODULUS = new Display<>(Pressure.MEGA_PSI, 2, Pressure.GIGAPASCAL, 1);

    /** The density of a solid: kg/m3 in both systems. */
    public static final Display<Density> SOLID_DENSITY =
            new Display<>(Density.KILOGRAM_PER_CUBIC_METER, 0, Density.KILOGRAM_PER_CUBIC_METER, 0);

    /** The stiffness of a support: whole lbf/in and N/mm. */
    public static final Display<Stiffness> SUPPORT =
            new Display<>(Stiffness.POUND_FORCE_PER_INCH, 0, Stiffness.NEWTON_PER_MILLIMETER, 0);

    /** The wall of a tube: inches to three decimals, millimeters to two. */
    public static final Display<Length> WALL = new Display<>(Length.INCH, 3, Length.MILLIMETER, 2);

    /** The angle of a joint or the slope of a shaft: degrees to two decimals in both systems. */
    public static final Display<Angle> JOINT_ANGLE = new Display<>(Angle.DEGREE, 2, Angle.DEGREE, 2);

    /** The angular acceleration of a shaft: whole rad/s2 in both systems. */
    public static final Display<AngularAcceleration> SHAKE = new Display<>(
            AngularAcceleration.RADIAN_PER_SECOND_SQUARED, 0, AngularAcceleration.RADIAN_PER_SECOND_SQUARED, 0);

    /** Area that the wind sees: square feet to one decimal, square meters to two. */
    public static final Display<Area> DRAG_AREA = new Display<>(Area.SQUARE_FOOT, 1, Area.SQUARE_METER, 2);

    /** Moment of inertia: lb ft2 to one decimal, kg m2 to two. */
    public static final Display<MomentOfInertia> INERTIA =
            new Display<>(MomentOfInertia.POUND_SQUARE_FOOT, 1, MomentOfInertia.KILOGRAM_SQUARE_METER, 2);

    /** Capacity factor of a torque converter: whole rpm/sqrt(lb-ft), rpm/sqrt(N-m) to one decimal. */
    public static final Display<CapacityFactor> CAPACITY =
            new Display<>(CapacityFactor.RPM_PER_ROOT_POUND_FOOT, 0, CapacityFactor.RPM_PER_ROOT_NEWTON_METER, 1);

    /** Time of a run: seconds to one decimal. */
    public static final Display<Time> RUN_TIME = new Display<>(Time.SECOND, 1, Time.SECOND, 1);

    /** Distance of a run: whole feet and meters. */
    public static final Display<Length> RUN_LENGTH = new Display<>(Length.FOOT, 0, Length.METER, 0);

    /** Density of the air: kg/m3 to three decimals in both systems. */
    public static final Display<Density> AIR_DENSITY =
            new Display<>(Density.KILOGRAM_PER_CUBIC_METER, 3, Density.KILOGRAM_PER_CUBIC_METER, 3);

    /** A distance on the road: whole miles and kilometers. */
    public static final Display<Length> ROAD_DISTANCE = new Display<>(Length.MILE, 0, Length.KILOMETER, 0);

    /** Flow of one injector: lb/h and kg/h to one decimal. */
    public static final Display<MassFlow> INJECTOR_FLOW =
            new Display<>(MassFlow.POUND_PER_HOUR, 1, MassFlow.KILOGRAM_PER_HOUR, 1);

    /** Length of a fuel line: feet and meters to one decimal. */
    public static final Display<Length> LINE_LENGTH = new Display<>(Length.FOOT, 1, Length.METER, 1);

    /** Bore of a fuel line: inches to three decimals, millimeters to one. */
    public static final Display<Length> BORE = new Display<>(Length.INCH, 3, Length.MILLIMETER, 1);

    /** Flow of fuel by volume: US gallons and liters an hour. */
    public static final Display<VolumeFlow> VOLUME_FLOW =
            new Display<>(VolumeFlow.US_GALLON_PER_HOUR, 1, VolumeFlow.LITER_PER_HOUR, 0);

    /** Flow of fuel by mass: pounds and kilograms an hour. */
    public static final Display<MassFlow> MASS_FLOW =
            new Display<>(MassFlow.POUND_PER_HOUR, 0, MassFlow.KILOGRAM_PER_HOUR, 1);

    /** Specific fuel consumption. */
    public static final Display<SpecificFuelConsumption> SPECIFIC_CONSUMPTION = new Display<>(
            SpecificFuelConsumption.POUND_PER_HORSEPOWER_HOUR, 3, SpecificFuelConsumption.GRAM_PER_KILOWATT_HOUR, 0);

    /** Volume of a tank: US gallons and liters. */
    public static final Display<Volume> TANK_VOLUME = new Display<>(Volume.US_GALLON, 1, Volume.LITER, 1);

    /** Density of a fuel, kg/m3 in both systems. */
    public static final Display<Density> DENSITY =
            new Display<>(Density.KILOGRAM_PER_CUBIC_METER, 1, Density.KILOGRAM_PER_CUBIC_METER, 1);

    /** Kinematic viscosity. */
    public static final Display<KinematicViscosity> VISCOSITY = new Display<>(
            KinematicViscosity.SQUARE_MILLIMETER_PER_SECOND, 2, KinematicViscosity.SQUARE_MILLIMETER_PER_SECOND, 2);

    /** Voltage. */
    public static final Display<Voltage> VOLTAGE = new Display<>(Voltage.VOLT, 2, Voltage.VOLT, 2);

    /** Electric current. */
    public static final Display<Current> CURRENT = new Display<>(Current.AMPERE, 1, Current.AMPERE, 1);

    /** Electric power. */
    public static final Display<Power> ELECTRIC_POWER = new Display<>(Power.WATT, 0, Power.WATT, 0);

    /** Speed of a flow in a line, m/s in both systems. */
    public static final Display<Speed> FLOW_SPEED = new Display<>(Speed.METER_PER_SECOND, 2, Speed.METER_PER_SECOND, 2);

    /** A small mass, such as a day's fuel vapor. */
    public static final Display<Mass> VAPOR_MASS = new Display<>(Mass.GRAM, 1, Mass.GRAM, 1);

    /**
     * Checks the decimals.
     *
     * @throws IllegalArgumentException if a count is less than 0 or more than 15
     */
    public Display {
        DecimalText.requireDecimals(usDecimals);
        DecimalText.requireDecimals(metricDecimals);
    }
}
