package drivetrain.report;

import drivetrain.combination.Combination;
import drivetrain.comparison.Measure;
import drivetrain.comparison.MeasureGround;
import java.util.Collection;
import java.util.List;

/** What stands below figures by which packages are compared: what they rest on, and their warnings. */
final class Ground {

    private Ground() {}

    static void add(List<Block> blocks, Collection<Measure> measures, Collection<Combination> combinations) {
        MeasureGround ground = MeasureGround.of(measures, combinations);
        if (!ground.assumptions().isEmpty()) {
            blocks.add(Notes.of(ground.assumptions()));
        }
        if (!ground.cautions().isEmpty()) {
            blocks.add(Cautions.of(ground.cautions()));
        }
    }
}
