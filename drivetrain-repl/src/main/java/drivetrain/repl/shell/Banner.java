package drivetrain.repl.shell;

import java.util.List;

/** What the shell says when it starts. */
final class Banner {

    private Banner() {}

    static List<String> lines() {
        return List.of(
                "Drivetrain " + Manuals.version(),
                "First: open demo, then cruise 65 mph",
                "tour shows more, help lists the words");
    }
}
