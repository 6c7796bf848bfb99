package drivetrain.report;

import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.report.Facts.Fact;
import drivetrain.tire.RollingCircumference;
import java.util.List;

/** How far a tire rolls in a turn, and how that is known. */
final class RollingFacts {

    private RollingFacts() {}

    static List<Fact> of(RollingCircumference rolling) {
        return List.of(
                Fact.of(
                        "rollingCircumference",
                        "rolling circumference",
                        Figure.of(rolling.circumference(), Display.DIMENSION)),
                Fact.of("rollingBasis", "rolling basis", rolling.basis().label()),
                Fact.of("rollingRadius", "rolling radius", Figure.of(rolling.radius(), Display.DIMENSION)),
                Fact.of("revolutions", "tire revolutions", Figure.of(rolling.revolutions(), Display.REVOLUTIONS)));
    }
}
