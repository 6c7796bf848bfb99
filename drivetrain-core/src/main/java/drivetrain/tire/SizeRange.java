package drivetrain.tire;

import drivetrain.quantity.DecimalText;
import drivetrain.refusal.Refusal;

/** The range in which a number of a size is plausible, and the steps in which it comes. Ranges: common practice, no source. */
enum SizeRange {
    METRIC_WIDTH("section width", 105, 455, 1, "mm"),
    ASPECT("aspect ratio", 20, 100, 1, "%"),
    RIM("rim diameter", 8, 30, 2, "in"),
    FLOTATION_DIAMETER("nominal diameter", 20, 60, 100, "in"),
    FLOTATION_WIDTH("section width", 4, 25, 100, "in"),
    NUMERIC_WIDTH("section width", 2.5, 18, 100, "in");

    private final String subject;
    private final double least;
    private final double most;
    private final int stepsPerUnit;
    private final String allowed;

    SizeRange(String subject, double least, double most, int stepsPerUnit, String unit) {
        this.subject = subject;
        this.least = least;
        this.most = most;
        this.stepsPerUnit = stepsPerUnit;
        this.allowed =
                DecimalText.shortest(least) + " to " + DecimalText.shortest(most) + " " + unit + steps(stepsPerUnit);
    }

    private static String steps(int perUnit) {
        return switch (perUnit) {
            case 1 -> ", whole";
            case 2 -> ", in halves";
            default -> ", at most two decimals";
        };
    }

    String subject() {
        return subject;
    }

    boolean holds(double value) {
        return value >= least && value <= most && Math.rint(value * stepsPerUnit) / stepsPerUnit == value;
    }

    String allowed() {
        return allowed;
    }

    void require(double value) {
        if (!holds(value)) {
            throw Refusal.of(
                            subject,
                            Double.isFinite(value) ? DecimalText.shortest(value) : "" + value,
                            "is out of range")
                    .allowing(allowed())
                    .asException();
        }
    }

    static void requireRadialZr(boolean zr, Construction construction) {
        if (zr && construction != Construction.RADIAL) {
            throw Refusal.of("construction", "Z" + construction.mark(), "does not exist")
                    .allowing("ZR")
                    .asException();
        }
    }

    static void refusePassenger(Markings markings) {
        if (markings.is(TireUse.PASSENGER)) {
            throw Refusal.of("tire use", TireUse.PASSENGER.mark(), "goes with a metric size only")
                    .allowing("LT, ST or C")
                    .asException();
        }
    }
}
