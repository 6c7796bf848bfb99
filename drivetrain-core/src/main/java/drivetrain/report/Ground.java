package drivetrain.report;

import drivetrain.assessment.Assessment;
import java.util.List;

/** What stands below an answer about a whole package: what it rests on, and its warnings. */
final class Ground {

    private Ground() {}

    static void add(List<Block> blocks, Assessment assessment) {
        if (!assessment.assumptions().isEmpty()) {
            blocks.add(Notes.of(assessment.assumptions()));
        }
        if (!assessment.cautions().isEmpty()) {
            blocks.add(Cautions.of(assessment.cautions()));
        }
    }
}
