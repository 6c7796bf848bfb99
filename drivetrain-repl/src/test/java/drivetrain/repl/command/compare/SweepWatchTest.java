package drivetrain.repl.command.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SweepWatchTest {

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
    void tellsAfterASecond() throws InterruptedException {
        List<String> told = new ArrayList<>();
        SweepWatch watch = new SweepWatch(told::add, false);
        watch.progress(0.1);
        Thread.sleep(1100);
        watch.progress(0.5);
        assertThat(told).hasSize(1).first().asString().startsWith("sweep: 50 %, about ");
    }

    @Test
    void stopsWhatWouldTakeLongUnlessConfirmed() throws InterruptedException {
        SweepWatch watch = new SweepWatch(line -> {}, false);
        SweepWatch confirmed = new SweepWatch(line -> {}, true);
        watch.progress(0.0001);
        confirmed.progress(0.0001);
        Thread.sleep(1100);
        watch.progress(0.001);
        confirmed.progress(0.001);
        assertThat(watch.isCanceled()).isTrue();
        assertThat(watch.expected()).isGreaterThan(1000.0);
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
}
