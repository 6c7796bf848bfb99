package drivetrain.report;

import drivetrain.assessment.Assessment;
import drivetrain.finding.Verdict;
import java.util.ArrayList;
import java.util.List;

/** Every check of a drivetrain package, worst first. */
public final class FindingsReport {

    private FindingsReport() {}

    /**
     * Words the checks.
     *
     * @param assessment the assessment
     * @return the report
     */
    public static Report of(Assessment assessment) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence(assessment)));
        blocks.add(Verdicts.of(assessment.findings()));
        if (!assessment.assumptions().isEmpty()) {
            blocks.add(Notes.of(assessment.assumptions()));
        }
        if (!assessment.cautions().isEmpty()) {
            blocks.add(Cautions.of(assessment.cautions()));
        }
        return new Report("check", blocks);
    }

    private static String sentence(Assessment assessment) {
        long exceeded = count(assessment, Verdict.EXCEEDED);
        long marginal = count(assessment, Verdict.MARGINAL);
        long open = count(assessment, Verdict.NOT_EVALUATED);
        String start = exceeded > 0
                ? "This package exceeds " + limits(exceeded)
                : marginal > 0
                        ? "This package keeps every limit that was checked"
                        : "Nothing speaks against this package";
        return start
                + (marginal > 0
                        ? ", and " + (marginal == 1 ? "one check is" : marginal + " checks are") + " marginal"
                        : "")
                + (open > 0 ? "; " + (open == 1 ? "one check was" : open + " checks were") + " not evaluated" : "")
                + ".";
    }

    private static String limits(long count) {
        return count == 1 ? "one limit" : count + " limits";
    }

    private static long count(Assessment assessment, Verdict verdict) {
        return assessment.findings().stream()
                .filter(finding -> finding.verdict() == verdict)
                .count();
    }
}
