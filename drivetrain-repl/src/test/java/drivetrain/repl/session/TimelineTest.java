package drivetrain.repl.session;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.combination.Catalog;
import drivetrain.combination.Slot;
import org.junit.jupiter.api.Test;

class TimelineTest {

    private static final Session START = Session.on(Shelf.of("empty", Catalog.empty()));

    private static Session axle(Session session, double ratio) {
        return session.change("axle " + ratio, session.specification().with(Slot.REAR_AXLE, Double.toString(ratio)));
    }

    @Test
    void undoesAndRedoesFiftyChanges() {
        Session session = START;
        for (int i = 0; i < 50; i++) {
            session = axle(session, 3.0 + i / 100.0);
        }
        Session changed = session;
        for (int i = 0; i < 50; i++) {
            session = session.undo().orElseThrow();
        }
        assertThat(session.specification()).isEqualTo(START.specification());
        assertThat(session.undo()).isEmpty();
        for (int i = 0; i < 50; i++) {
            session = session.redo().orElseThrow();
        }
        assertThat(session.specification()).isEqualTo(changed.specification());
        assertThat(session.redo()).isEmpty();
    }

    @Test
    void forgetsTheOldestChange() {
        Session session = START;
        for (int i = 0; i <= Timeline.LEVELS; i++) {
            session = axle(session, 3.0 + i / 100.0);
        }
        assertThat(session.timeline().done()).hasSize(Timeline.LEVELS);
        assertThat(session.timeline().done().get(0).what()).isEqualTo("axle 3.01");
    }

    @Test
    void dropsWhatWasUndoneAtTheNextChange() {
        Session session = axle(axle(START, 3.5).undo().orElseThrow(), 4.0);
        assertThat(session.redo()).isEmpty();
        assertThat(session.timeline().lastDone().orElseThrow().what()).isEqualTo("axle 4.0");
    }

    @Test
    void namesWhatWouldBeDone() {
        Session undone = axle(START, 3.5).undo().orElseThrow();
        assertThat(undone.timeline().lastDone()).isEmpty();
        assertThat(undone.timeline().lastUndone().orElseThrow().what()).isEqualTo("axle 3.5");
    }
}
