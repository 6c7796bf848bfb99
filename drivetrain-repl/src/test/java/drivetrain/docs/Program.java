package drivetrain.docs;

import java.io.InputStream;
import java.io.PrintStream;

/** A command-line program that can be run in this process. */
@FunctionalInterface
interface Program {

    int run(String[] args, InputStream in, PrintStream out, PrintStream err);
}
