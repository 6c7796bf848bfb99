package drivetrain.report;

import java.util.regex.Pattern;

/** The names by which programs find a question, a block, a column or a fact: {@code roadSpeed}. */
final class MachineName {

    private static final Pattern CAMEL_CASE = Pattern.compile("[a-z][a-zA-Z0-9]*");

    private MachineName() {}

    static void require(String name) {
        if (!CAMEL_CASE.matcher(name).matches()) {
            throw new IllegalArgumentException(
                    "machine name \"" + name + "\"; allowed: a lower-case letter, then letters and digits");
        }
    }
}
