package drivetrain.report;

import drivetrain.combination.Combination;
import drivetrain.comparison.Measure;
import drivetrain.comparison.MeasureGround;
import drivetrain.finding.Assumption;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** What stands below figures by which packages are compared: what they rest on, and their warnings. */
final class Ground {

    private Ground() {}

    static void add(List<Block> blocks, Collection<Measure> measures, Collection<Combination> combinations) {
        add(blocks, measures, combinations, List.of());
    }

    /** Adds the ground of figures, with assumptions of the question itself ahead of it. */
    static void add(
            List<Block> blocks,
            Collection<Measure> measures,
            Collection<Combination> combinations,
            List<Assumption> first) {
        MeasureGround ground = MeasureGround.of(measures, combinations);
        List<Assumption> assumptions = new ArrayList<>(first);
        assumptions.addAll(ground.assumptions());
        if (!assumptions.isEmpty()) {
            blocks.add(Notes.of(assumptions));
        }
        if (!ground.cautions().isEmpty()) {
            blocks.add(Cautions.of(ground.cautions()));
        }
    }
}
