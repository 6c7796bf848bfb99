package drivetrain.report;

import drivetrain.assessment.Answer;
import java.util.ArrayList;
import java.util.List;

/** How an answer is worked out: inputs, formulas, steps and sources, and what it rests on. */
public final class ExplainReport {

    private ExplainReport() {}

    /**
     * Words the working of an answer.
     *
     * @param answer the answer
     * @return the report
     */
    public static Report of(Answer answer) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Steps.of(answer.working()));
        if (!answer.assumptions().isEmpty()) {
            blocks.add(Notes.of(answer.assumptions()));
        }
        return new Report("explain", blocks);
    }
}
