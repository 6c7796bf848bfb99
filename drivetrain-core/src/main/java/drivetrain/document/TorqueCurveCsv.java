package drivetrain.document;

import drivetrain.engine.TorqueCurve;
import drivetrain.refusal.RefusedException;
import java.io.IOException;
import java.nio.file.Path;

/**
 * Reads a torque curve as a test bench writes it: comma-separated, engine speed and torque, the units in the header.
 *
 * <pre>
 * # bench sheet of the rebuilt engine
 * speed rpm,torque lb-ft
 * 1000,310
 * 1500,340.5
 * </pre>
 *
 * The header may leave out the words {@code speed} and {@code torque} but never the units, and may put a unit in brackets. Cells are plain numbers
 * with a decimal point, without quotation marks. Lines that begin with {@code #} and blank lines are passed over.
 */
public final class TorqueCurveCsv {

    private TorqueCurveCsv() {}

    /**
     * Reads a file.
     *
     * @param file a UTF-8 file
     * @return the curve
     * @throws IOException if the file cannot be read
     * @throws RefusedException if a line is not understood, with its place
     */
    public static TorqueCurve read(Path file) throws IOException {
        return read(SourceBytes.read(file));
    }

    /**
     * Reads a text.
     *
     * @param name the name by which refusals call it
     * @param text the whole text
     * @return the curve
     * @throws RefusedException if a line is not understood, with its place
     */
    public static TorqueCurve parse(String name, String text) {
        return read(SourceText.of(name, text));
    }

    static TorqueCurve read(SourceText source) {
        return new CurveSheet(source).curve();
    }
}
