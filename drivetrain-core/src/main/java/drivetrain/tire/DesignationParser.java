package drivetrain.tire;

import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads a size designation from left to right; the first sign that does not fit is the fault. */
final class DesignationParser {

    static final String SUBJECT = "tire size";
    static final int LONGEST_TEXT = 80;

    private static final String SIZES = "a size such as 265/75R16, 35x12.50R17LT or 7.50-16";
    private static final String CONSTRUCTIONS = "R or ZR (radial), - or D (bias-ply), B (bias-belted)";
    private static final double LEAST_MILLIMETERS = 100.0;

    private final Cursor in;

    private DesignationParser(String text) {
        this.in = new Cursor(SUBJECT, text);
    }

    static TireDesignation parse(String text) {
        if (text.length() > LONGEST_TEXT) {
            throw Refusal.of(SUBJECT, text.substring(0, LONGEST_TEXT) + "...", "is too long")
                    .allowing(SIZES)
                    .at(LONGEST_TEXT)
                    .asException();
        }
        DesignationParser parser = new DesignationParser(text);
        try {
            return parser.read();
        } catch (RefusedException refused) {
            Refusal why = refused.refusal();
            throw NearestSize.of(text, parser.in.whole(), why.position().orElse(0))
                    .map(near -> why.suggesting(List.of(near)).asException())
                    .orElse(refused);
        }
    }

    /** Reads without looking for a near reading. */
    static TireDesignation read(String text) {
        return new DesignationParser(text).read();
    }

    private TireDesignation read() {
        if (in.atEnd()) {
            throw in.unexpected("a size", SIZES);
        }
        int useAt = in.next();
        Optional<TireUse> prefix = prefix();
        Cursor.Numeral first = in.number("the first number of the size", SIZES);
        if (in.accept('X')) {
            return flotation(first, prefix, useAt);
        }
        if (in.peek() == '/' || (first.isWhole() && first.value() >= LEAST_MILLIMETERS)) {
            return metric(first, prefix, useAt);
        }
        Carcass carcass = carcass("the construction or, in a metric size, / and the aspect ratio");
        checked(first, SizeRange.NUMERIC_WIDTH);
        refuseZr(carcass);
        double rim = rim();
        return new NumericDesignation(first.value(), carcass.construction, rim, markings(prefix, useAt, false));
    }

    private TireDesignation flotation(Cursor.Numeral diameter, Optional<TireUse> prefix, int useAt) {
        checked(diameter, SizeRange.FLOTATION_DIAMETER);
        Cursor.Numeral width = in.number("the section width", SizeRange.FLOTATION_WIDTH.allowed());
        checked(width, SizeRange.FLOTATION_WIDTH);
        Carcass carcass = carcass("the construction");
        refuseZr(carcass);
        int rimAt = in.next();
        double rim = rim();
        if (!FlotationDesignation.leavesRoom(diameter.value(), rim)) {
            throw in.fault(rimAt, "has a rim that leaves no room for the tire", SizeRange.RIM.allowed());
        }
        return new FlotationDesignation(
                diameter.value(), width.value(), carcass.construction, rim, markings(prefix, useAt, false));
    }

    private TireDesignation metric(Cursor.Numeral width, Optional<TireUse> prefix, int useAt) {
        checked(width, SizeRange.METRIC_WIDTH);
        OptionalInt aspect = OptionalInt.empty();
        if (in.accept('/')) {
            Cursor.Numeral ratio = in.number("the aspect ratio", SizeRange.ASPECT.allowed());
            checked(ratio, SizeRange.ASPECT);
            aspect = OptionalInt.of((int) ratio.value());
        }
        Carcass carcass =
                carcass(aspect.isPresent() ? "the construction" : "/ and the aspect ratio, or the construction,");
        double rim = rim();
        return new MetricDesignation(
                (int) width.value(), aspect, carcass.construction, carcass.zr, rim, markings(prefix, useAt, true));
    }

    private Optional<TireUse> prefix() {
        for (TireUse use : new TireUse[] {TireUse.LIGHT_TRUCK, TireUse.TRAILER, TireUse.PASSENGER}) {
            if (in.accept(use.mark())) {
                return Optional.of(use);
            }
        }
        return Optional.empty();
    }

    private record Carcass(Construction construction, boolean zr, int at) {}

    private Carcass carcass(String wanted) {
        int at = in.next();
        if (in.accept("ZR")) {
            return new Carcass(Construction.RADIAL, true, at);
        }
        if (in.accept('D')) {
            return new Carcass(Construction.DIAGONAL, false, at);
        }
        for (Construction construction : Construction.values()) {
            if (in.accept(construction.mark())) {
                return new Carcass(construction, false, at);
            }
        }
        throw in.unexpected(wanted, CONSTRUCTIONS);
    }

    private void refuseZr(Carcass carcass) {
        if (carcass.zr) {
            throw in.fault(carcass.at, "has ZR, which goes with a metric size only", "R, - or D, B");
        }
    }

    private double rim() {
        Cursor.Numeral rim = in.number("the rim diameter", SizeRange.RIM.allowed());
        checked(rim, SizeRange.RIM);
        return rim.value();
    }

    private void checked(Cursor.Numeral number, SizeRange range) {
        if (!range.holds(number.value())) {
            throw in.fault(
                    number.start(), "has " + range.subject() + " " + number.text() + ", out of range", range.allowed());
        }
    }

    private Markings markings(Optional<TireUse> prefix, int useAt, boolean metric) {
        if (!metric && prefix.equals(Optional.of(TireUse.PASSENGER))) {
            throw in.fault(useAt, "has P, which goes with a metric size only", "LT or ST, or none");
        }
        return new MarkingsParser(in, prefix).read();
    }
}
