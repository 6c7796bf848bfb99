package drivetrain.comparison;

import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Kind;
import drivetrain.quantity.Quantity;
import drivetrain.quantity.Unit;
import drivetrain.refusal.Refusal;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;

/** How the numbers of a measure are read and shown. The number itself is in the SI unit, or plain, or a fraction. */
public final class Scale {

    private static final Pattern NUMBER = Pattern.compile("[0-9]+(\\.[0-9]+)?|\\.[0-9]+");

    private final List<String> units;
    private final ToDoubleFunction<String> reader;
    private final DoubleFunction<Figure> shower;

    private Scale(List<String> units, ToDoubleFunction<String> reader, DoubleFunction<Figure> shower) {
        this.units = units;
        this.reader = reader;
        this.shower = shower;
    }

    /**
     * Makes a scale of a quantity.
     *
     * @param kind the kind of quantity
     * @param display its units and decimals
     * @param <Q> the kind
     * @return the scale
     */
    public static <Q extends Quantity<Q>> Scale of(Kind<Q> kind, Display<Q> display) {
        List<String> units = kind.units().stream().map(Unit::symbol).toList();
        return new Scale(
                units, text -> kind.parse(text).si(), number -> Figure.of(kind.of(number, kind.siUnit()), display));
    }

    /**
     * Makes a scale of plain numbers, such as ratios.
     *
     * @param decimals the decimals shown
     * @return the scale
     */
    public static Scale plain(int decimals) {
        return new Scale(List.of(), text -> number(text, text), number -> Figure.plain(number, decimals));
    }

    /**
     * Makes a scale of fractions that are written as percentages.
     *
     * @param decimals the decimals shown
     * @return the scale
     */
    public static Scale percent(int decimals) {
        return new Scale(List.of("%"), Scale::percentage, number -> Figure.percent(number, decimals));
    }

    /**
     * Makes a scale of what is delivered over what is wanted, which is written as a margin: 115 % of what is wanted is a margin of 15 %.
     *
     * @param decimals the decimals shown
     * @return the scale
     */
    public static Scale marginAbove(int decimals) {
        return new Scale(
                List.of("%"), text -> 1.0 + percentage(text), number -> Figure.percent(number - 1.0, decimals));
    }

    /**
     * Makes a scale of a limit over what is asked of it, which is written as the margin below the limit: 80 % of the limit used is a margin of 20 %.
     *
     * @param decimals the decimals shown
     * @return the scale
     */
    public static Scale marginBelow(int decimals) {
        return new Scale(List.of("%"), Scale::overLimit, number -> Figure.percent(1.0 - 1.0 / number, decimals));
    }

    private static double overLimit(String text) {
        double margin = percentage(text);
        if (!(margin < 1.0)) {
            throw Refusal.of("margin", text.strip(), "leaves nothing for the load")
                    .allowing("0 % up to less than 100 %")
                    .at(0)
                    .asException();
        }
        return 1.0 / (1.0 - margin);
    }

    private static double number(String text, String given) {
        if (!NUMBER.matcher(text).matches()) {
            throw Refusal.of("number", given, "is not a plain number")
                    .allowing("a number with a decimal point and no unit, such as 62.5")
                    .at(0)
                    .asException();
        }
        return Double.parseDouble(text);
    }

    private static double percentage(String text) {
        String stripped = text.strip();
        if (!stripped.endsWith("%")) {
            throw Refusal.of("percentage", text, "has no % behind it")
                    .allowing("a percentage such as 65 %, which is a fraction of 0.65")
                    .at(text.length())
                    .asException();
        }
        return number(stripped.substring(0, stripped.length() - 1).strip(), text) / 100.0;
    }

    /**
     * Lists the units that a number can have.
     *
     * @return the symbols; empty for plain numbers
     */
    public List<String> units() {
        return units;
    }

    /**
     * Reads a number.
     *
     * @param text the number with its unit
     * @return the number in the SI unit, the plain number, or the fraction
     * @throws drivetrain.refusal.RefusedException if the text is no such number
     */
    public double parse(String text) {
        return reader.applyAsDouble(text.strip());
    }

    /**
     * Shows a number.
     *
     * @param number the number in the SI unit, the plain number, or the fraction
     * @return the figure
     * @throws drivetrain.refusal.RefusedException if the number is impossible for the kind of quantity
     */
    public Figure figure(double number) {
        return shower.apply(number);
    }
}
