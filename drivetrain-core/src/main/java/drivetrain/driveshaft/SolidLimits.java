package drivetrain.driveshaft;

import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Density;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Quantity;
import drivetrain.quantity.Unit;
import drivetrain.refusal.Refusal;

/** What the figures of a shaft's material can be; a figure outside is taken for a slip of its unit, which is usually one of a thousand. */
final class SolidLimits {

    private SolidLimits() {}

    static void requireModulus(Pressure modulus) {
        require("modulus of elasticity", modulus, 20.0, 700.0, Pressure.GIGAPASCAL);
    }

    static void requireDensity(Density density) {
        require("density of the shaft", density, 1_000.0, 20_000.0, Density.KILOGRAM_PER_CUBIC_METER);
    }

    static void requirePoisson(double ratio) {
        if (!(ratio >= 0.0 && ratio <= 0.5)) {
            throw Refusal.of("Poisson's ratio", Double.toString(ratio), "is not that of a metal")
                    .allowing("0 to 0.5; steel 0.29, aluminum 0.33")
                    .asException();
        }
    }

    static void requireYield(Pressure strength) {
        require("yield strength", strength, 20.0, 4_000.0, Pressure.MEGAPASCAL);
    }

    static void requireLaminateModulus(Pressure modulus) {
        require("modulus of the laminate", modulus, 5.0, 700.0, Pressure.GIGAPASCAL);
    }

    static void requireLaminateShear(Pressure modulus) {
        require("shear modulus of the laminate", modulus, 1.0, 100.0, Pressure.GIGAPASCAL);
    }

    static void requireLaminateDensity(Density density) {
        require("density of the laminate", density, 1_000.0, 3_000.0, Density.KILOGRAM_PER_CUBIC_METER);
    }

    static void requireLaminateStrength(Pressure strength) {
        require("shear strength of the laminate", strength, 5.0, 1_000.0, Pressure.MEGAPASCAL);
    }

    static <Q extends Quantity<Q>> void require(String subject, Q value, double least, double most, Unit<Q> unit) {
        double number = value.in(unit);
        if (number >= least && number <= most) {
            return;
        }
        throw Refusal.of(
                        subject,
                        DecimalText.significant(number, 12) + " " + unit.symbol(),
                        "is not that of a shaft material: is the unit the right one?")
                .allowing(DecimalText.shortest(least) + " to " + DecimalText.shortest(most) + " " + unit.symbol()
                        + "; see which unit the data sheet means")
                .asException();
    }
}
