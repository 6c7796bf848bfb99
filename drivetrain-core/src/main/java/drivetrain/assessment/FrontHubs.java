package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.finding.Assumption;
import drivetrain.finding.Finding;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.gearing.AxleTie;

/** The front shaft of a part-time drive turns on the road only where its hubs are locked. */
final class FrontHubs {

    /** What an answer about such a shaft rests on. */
    static final Assumption LOCKED = Assumption.flagged(
            "front hubs",
            "the front shaft is taken as turning with its wheels; where free-wheeling hubs are fitted and unlocked it stands still on the road",
            Source.commonPractice("part-time four-wheel drive"));

    private FrontHubs() {}

    /** Tells whether a shaft can stand still on the road. */
    static boolean canRest(Combination combination, ShaftPlace place) {
        return place == ShaftPlace.FRONT
                && combination
                        .transfer()
                        .map(part -> part.item().tie() == AxleTie.PART_TIME)
                        .orElse(false);
    }

    /** What a shaft that can rest does at speed is never worse than marginal. */
    static Finding softened(Finding finding) {
        if (finding.verdict() != Verdict.EXCEEDED) {
            return finding;
        }
        return finding.judged(
                Verdict.MARGINAL,
                finding.statement() + "; with free-wheeling hubs unlocked the front shaft stands still");
    }
}
