package drivetrain.report.text;

import drivetrain.quantity.Figure;
import drivetrain.quantity.MeasuredFigure;
import drivetrain.quantity.UnitSystem;
import drivetrain.refusal.VisibleText;
import java.nio.charset.Charset;

/** Which signs can be shown. Control characters never can: they are written as {@code \}{@code u001B}, whatever the choice. */
public enum Signs {
    /** Every sign. */
    UNICODE {
        @Override
        public String text(String text) {
            return VisibleText.of(text);
        }
    },
    /** The 95 printable ones of ASCII. */
    ASCII {
        @Override
        public String text(String text) {
            return AsciiText.of(VisibleText.of(text));
        }
    };

    private static final String SAMPLE = "\u2500\u253C\u2524\u28FF\u00B7\u00B2\u00D7\u2264\u03B7";

    /**
     * Chooses by what a charset can encode.
     *
     * @param charset the charset of the screen or file
     * @return {@link #UNICODE} if it can encode the signs of formulas, tables and drawings, otherwise {@link #ASCII}
     */
    public static Signs of(Charset charset) {
        return charset.canEncode() && charset.newEncoder().canEncode(SAMPLE) ? UNICODE : ASCII;
    }

    /**
     * Makes a text fit to be shown: control characters become visible and signs that cannot be shown are replaced.
     *
     * @param text any text
     * @return the text on one line
     */
    public abstract String text(String text);

    /**
     * Writes a figure with its unit.
     *
     * @param figure the figure
     * @param system the unit system
     * @return the text, such as {@code 65.0 mph}
     */
    public String text(Figure figure, UnitSystem system) {
        if (system == UnitSystem.BOTH && hasTwoUnits(figure)) {
            return text(figure, UnitSystem.US) + " (" + text(figure, UnitSystem.METRIC) + ")";
        }
        String unit = unit(figure, system);
        return unit.isEmpty() ? figure.digits(system) : figure.digits(system) + " " + unit;
    }

    /**
     * Writes the unit of a figure.
     *
     * @param figure the figure
     * @param system the unit system; {@link UnitSystem#BOTH} gives the US unit
     * @return the symbol; empty for a plain number
     */
    public String unit(Figure figure, UnitSystem system) {
        if (this == ASCII && figure instanceof MeasuredFigure<?> measured) {
            return system == UnitSystem.METRIC
                    ? measured.display().metric().asciiSymbol()
                    : measured.display().us().asciiSymbol();
        }
        return text(figure.unit(system));
    }

    /** The sign of which horizontal lines are made. */
    String horizontal() {
        return this == ASCII ? "-" : "\u2500";
    }

    String vertical() {
        return this == ASCII ? "|" : "\u2502";
    }

    String tickLeft() {
        return this == ASCII ? "+" : "\u2524";
    }

    String tickBelow() {
        return this == ASCII ? "+" : "\u252C";
    }

    String corner() {
        return this == ASCII ? "+" : "\u2514";
    }

    /** The dots of which curves are drawn. */
    Dots dots() {
        return this == ASCII ? Dots.ASCII : Dots.BRAILLE;
    }

    static boolean hasTwoUnits(Figure figure) {
        return !figure.unit(UnitSystem.US).equals(figure.unit(UnitSystem.METRIC));
    }
}
