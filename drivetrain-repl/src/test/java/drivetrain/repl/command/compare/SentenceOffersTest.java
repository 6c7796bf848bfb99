package drivetrain.repl.command.compare;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.repl.command.Command;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Progress;
import drivetrain.repl.session.Demo;
import drivetrain.repl.session.Session;
import java.util.List;
import org.junit.jupiter.api.Test;

class SentenceOffersTest {

    private static final Session SESSION = Session.on(Demo.shelf());
    private static final Command SWEEP = new SweepCommand(Progress.NONE);
    private static final Command FRONT = new FrontCommand(Progress.NONE);

    private static List<String> offers(Command command, String words) {
        List<String> before = words.isEmpty() ? List.of() : List.of(words.split(" ", -1));
        return command.offers(SESSION, before).stream().map(Offer::value).toList();
    }

    @Test
    void offersPlacesThenParts() {
        assertThat(offers(SWEEP, "")).contains("axle", "tire", "transfer case").doesNotContain("where");
        assertThat(offers(SWEEP, "axle")).contains("all", "rp-4.11");
        assertThat(offers(SWEEP, "transfer case")).contains("all");
        assertThat(offers(SWEEP, "axle rp-4.11")).containsExactly("or", "and", "where", "best", "by");
        assertThat(offers(SWEEP, "axle rp-4.11 or")).contains("rp-4.30").doesNotContain("all");
        assertThat(offers(SWEEP, "axle rp-4.11 and")).contains("tire");
    }

    @Test
    void offersFiguresAndUnitsInsideWishes() {
        assertThat(offers(SWEEP, "axle all where"))
                .contains("rpm", "crawl ratio")
                .doesNotContain("mph");
        assertThat(offers(SWEEP, "axle all where crawl speed")).contains("at least", "at most", "between");
        assertThat(offers(SWEEP, "axle all where rpm at")).contains("least", "most");
        assertThat(offers(SWEEP, "rear shaft all where")).contains("share of critical speed", "fuel flow");
        assertThat(offers(SWEEP, "rear shaft all where share of critical speed at most 70"))
                .containsExactly("%");
        assertThat(offers(SWEEP, "engine all where fuel flow at most 150")).contains("L/h", "US gal/h");
        assertThat(offers(SWEEP, "axle all where rpm at 65")).containsExactly("mph", "km/h");
        assertThat(offers(SWEEP, "axle all where crawl speed at most 1.2")).contains("mph", "km/h");
        assertThat(offers(SWEEP, "axle all where crawl ratio at least 60")).containsExactly("and", "best", "by");
        assertThat(offers(SWEEP, "axle all where rpm at 65 mph between 1800 and 2200"))
                .contains("rpm");
        assertThat(offers(SWEEP, "axle all where crawl ratio at least 60 and")).contains("rpm");
    }

    @Test
    void offersWhatRanks() {
        assertThat(offers(SWEEP, "axle all best")).contains("10");
        assertThat(offers(SWEEP, "axle all best 10")).containsExactly("by");
        assertThat(offers(SWEEP, "axle all by")).contains("lowest", "highest", "crawl ratio");
        assertThat(offers(SWEEP, "axle all by lowest")).contains("crawl speed").doesNotContain("highest");
        assertThat(offers(SWEEP, "axle all by lowest crawl speed")).contains("and", "weight");
        assertThat(offers(FRONT, "lowest rpm against")).contains("highest");
        assertThat(offers(FRONT, "lowest rpm against highest crawl ratio")).contains("over");
        assertThat(offers(FRONT, "lowest rpm against crawl ratio over")).contains("axle");
        assertThat(offers(FRONT, "lowest rpm against crawl ratio over axle all where"))
                .contains("crawl ratio");
    }

    @Test
    void offersPartsToSolveForAndTolerances() {
        assertThat(offers(new SolveCommand(), "")).contains("axle", "top gear");
        assertThat(offers(new SolveCommand(), "axle")).containsExactly("for");
        assertThat(offers(new SolveCommand(), "axle for")).contains("rpm", "crawl ratio");
        assertThat(offers(new SolveCommand(), "axle for cruise 2000")).contains("rpm");
        assertThat(offers(new SolveCommand(), "axle for cruise 2000 rpm")).containsExactly("at");
        assertThat(offers(new SolveCommand(), "axle for cruise 2000 rpm at 65")).containsExactly("mph", "km/h");
        assertThat(offers(new ToleranceCommand(), "")).contains("tire");
        assertThat(offers(new ToleranceCommand(), "tire 1")).containsExactly("%");
        assertThat(offers(new ToleranceCommand(), "tire 1 %")).containsExactly("and");
        assertThat(offers(new WhatIfCommand(), "")).contains("axle");
        assertThat(offers(new CompareCommand(), "")).contains("in-hand", "differences");
    }
}
