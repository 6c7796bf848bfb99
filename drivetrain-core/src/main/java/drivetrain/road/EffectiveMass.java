package drivetrain.road;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.quantity.MomentOfInertia;
import drivetrain.refusal.Refusal;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;

/**
 * The mass that the driving force accelerates: the vehicle's own, and what its rotating parts add. A part that turns i times as fast as the wheels adds its moment of
 * inertia times the square of i over the square of the rolling radius.
 */
public final class EffectiveMass {

    /** Where the formula comes from. */
    public static final Source SOURCE = Source.fromMemory("Gillespie, Fundamentals of Vehicle Dynamics, ch. 2: "
            + "effective mass of rotating parts with the square of the ratio; follows from the balance of energy");

    private static final class Defaults {
        static final TableRow ENGINE = row("engine");
        static final TableRow WHEEL = row("wheel");

        private static TableRow row(String part) {
            return ReferenceTable.load("road/rotating-inertia.csv").rows().stream()
                    .filter(row -> row.text("part").equals(part))
                    .findFirst()
                    .orElseThrow(() -> Refusal.of("rotating inertia", part, "has no row in the reference table")
                            .asException());
        }
    }

    private EffectiveMass() {}

    /**
     * Returns the effective mass in one gear with nothing slipping.
     *
     * @param mass the mass of the vehicle
     * @param engine the moment of inertia of what turns with the engine, zero or more
     * @param totalRatio engine speed over wheel speed
     * @param efficiency from engine to wheel
     * @param wheels the moment of inertia of all wheels together, zero or more
     * @param rollingRadius the rolling radius, greater than zero
     * @return m + (I_e i^2 e + I_w) / r^2
     * @throws drivetrain.refusal.RefusedException if the radius is not greater than zero
     */
    public static Mass of(
            Mass mass,
            MomentOfInertia engine,
            double totalRatio,
            double efficiency,
            MomentOfInertia wheels,
            Length rollingRadius) {
        double radius = rollingRadius.requirePositive("rolling radius").si();
        double turning = engine.si() * totalRatio * totalRatio * efficiency + wheels.si();
        return Mass.ofKilograms(mass.si() + turning / (radius * radius));
    }

    /**
     * Returns the moment of inertia that is taken for an engine that states none.
     *
     * @return crankshaft with flywheel or converter
     */
    public static MomentOfInertia defaultEngine() {
        return MomentOfInertia.ofKilogramSquareMeters(Defaults.ENGINE.number("inertia"));
    }

    /**
     * Returns the moment of inertia that is taken for a wheel where none is stated.
     *
     * @return one wheel with its tire
     */
    public static MomentOfInertia defaultWheel() {
        return MomentOfInertia.ofKilogramSquareMeters(Defaults.WHEEL.number("inertia"));
    }

    /**
     * States that the default of the engine was taken.
     *
     * @return the assumption, flagged
     */
    public static Assumption engineAssumption() {
        return assumption("inertia of the engine", Defaults.ENGINE);
    }

    /**
     * States that the default of a wheel was taken.
     *
     * @return the assumption, flagged
     */
    public static Assumption wheelAssumption() {
        return assumption("inertia of the wheels", Defaults.WHEEL);
    }

    private static Assumption assumption(String subject, TableRow row) {
        return Assumption.flagged(
                subject,
                row.text("description") + ": " + DecimalText.shortest(row.number("inertia")) + " kg m2 by default ("
                        + row.text("from") + " to " + row.text("to")
                        + "), none is stated; gears and shafts are not counted",
                row.source());
    }
}
