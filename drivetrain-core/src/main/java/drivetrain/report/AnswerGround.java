package drivetrain.report;

import drivetrain.assessment.Answer;
import java.util.ArrayList;
import java.util.List;

/** What stands below an answer: its checks, what it rests on, and its warnings. */
final class AnswerGround {

    private AnswerGround() {}

    /** Makes the blocks that the answer needs, none of them empty. */
    static List<Block> of(Answer answer) {
        List<Block> blocks = new ArrayList<>();
        if (!answer.findings().isEmpty()) {
            blocks.add(Verdicts.of(answer.findings()));
        }
        if (!answer.assumptions().isEmpty()) {
            blocks.add(Notes.of(answer.assumptions()));
        }
        if (!answer.cautions().isEmpty()) {
            blocks.add(Cautions.of(answer.cautions()));
        }
        return blocks;
    }

    /** Makes a report of an answer: what it says, then what it stands on. */
    static Report report(String question, List<Block> says, Answer answer) {
        List<Block> blocks = new ArrayList<>(says);
        blocks.addAll(of(answer));
        return new Report(question, blocks);
    }
}
