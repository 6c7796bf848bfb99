package drivetrain.repl.command.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class SweepWatchTest {

    private final AtomicLong now = new AtomicLong(1);

    @Test
    void staysSilentAtFirst() {
        List<String> told = new ArrayList<>();
        SweepWatch watch = new SweepWatch(told::add, false);
        watch.progress(0.5);
        assertThat(told).isEmpty();
        assertThat(watch.isCanceled()).isFalse();
        assertThat(watch.expected()).isZero();
    }

    @Test
    void tellsAfterASecond() {
        List<String> told = new ArrayList<>();
        SweepWatch watch = new SweepWatch(now::get, told::add, false);
        watch.progress(0.1);
        now.addAndGet(1_100_000_000L);
        watch.progress(0.5);
        assertThat(told).hasSize(1).first().asString().startsWith("sweep: 50 %, about ");
    }

    @Test
    void stopsWhatWouldTakeLongUnlessConfirmed() {
        SweepWatch watch = new SweepWatch(now::get, line -> {}, false);
        SweepWatch confirmed = new SweepWatch(now::get, line -> {}, true);
        watch.progress(0.0001);
        confirmed.progress(0.0001);
        now.addAndGet(1_100_000_000L);
        watch.progress(0.001);
        confirmed.progress(0.001);
        assertThat(watch.isCanceled()).isTrue();
        assertThat(watch.expected()).isGreaterThan(1000.0);
        assertThat(confirmed.isCanceled()).isFalse();
    }

    @Test
    void stopsASearchWhoseFirstPartDoesNotEndUnlessConfirmed() {
        SweepWatch watch = new SweepWatch(now::get, line -> {}, false);
        SweepWatch confirmed = new SweepWatch(now::get, line -> {}, true);
        assertThat(watch.isCanceled()).isFalse();
        assertThat(confirmed.isCanceled()).isFalse();
        now.addAndGet(5_100_000_000L);
        assertThat(watch.isCanceled()).isTrue();
        assertThat(watch.expected()).isBetween(60.0, 600.0);
        assertThat(confirmed.isCanceled()).isFalse();
    }

    @Test
    void saysTimesInWords() {
        assertThat(SweepWatch.words(0.2)).isEqualTo("1 s");
        assertThat(SweepWatch.words(45.0)).isEqualTo("45 s");
        assertThat(SweepWatch.words(600.0)).isEqualTo("10 min");
        assertThat(SweepWatch.words(7200.0)).isEqualTo("2 h");
        assertThat(SweepWatch.words(1e6)).isEqualTo("12 days");
    }

    @Test
    void stopsWhatIsExpectedToTakeLongUnlessConfirmed() {
        SweepWatch watch = new SweepWatch(now::get, line -> {}, false);
        SweepWatch confirmed = new SweepWatch(now::get, line -> {}, true);
        watch.expect(5.0);
        watch.expect(150.0);
        assertThat(watch.isCanceled())
                .as("expected from a cold start, which the work itself will tell better")
                .isFalse();
        watch.expect(1.3e8);
        confirmed.expect(1.3e8);
        assertThat(watch.isCanceled()).isTrue();
        assertThat(SweepWatch.words(watch.expected())).isEqualTo("4 years");
        assertThat(confirmed.isCanceled()).isFalse();
    }
}
