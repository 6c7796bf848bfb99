package drivetrain.report;

import drivetrain.gearing.DriveGear;
import drivetrain.gearing.Stage;
import drivetrain.quantity.Figure;
import drivetrain.report.Facts.Fact;
import java.util.ArrayList;
import java.util.List;

/** The ratios that a total ratio is made of. */
final class RatioFacts {

    private static final List<String> KEYS =
            List.of("gearRatio", "auxiliaryRatio", "rangeRatio", "axleRatio", "hubRatio");

    private RatioFacts() {}

    /** Lists the total ratio and its factors, leaving out what is not fitted. */
    static List<Fact> of(DriveGear gear) {
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of("totalRatio", "total ratio", Figure.plain(gear.totalRatio(), 3)));
        List<Stage> stages = gear.stages().all();
        for (int i = 0; i < stages.size(); i++) {
            Stage stage = stages.get(i);
            boolean plain = stage.ratio().value() == 1.0 && (i == 1 || i == 4);
            if (!plain) {
                facts.add(Fact.of(KEYS.get(i), stage.name(), stage.ratio().figure()));
            }
        }
        return facts;
    }
}
