package drivetrain.repl.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.combination.Catalog;
import drivetrain.combination.Slot;
import drivetrain.quantity.UnitSystem;
import drivetrain.refusal.RefusedException;
import org.junit.jupiter.api.Test;

class SessionTest {

    private static final Session START = Session.on(Shelf.of("empty", Catalog.empty()));

    @Test
    void startsEmptyAndUnchanged() {
        assertThat(START.specification().choices()).isEmpty();
        assertThat(START.isChanged()).isFalse();
        assertThat(START.title()).isEmpty();
        assertThat(START.units()).isEqualTo(UnitSystem.US);
        assertThat(START.output()).isEqualTo(OutputForm.TABLE);
    }

    @Test
    void isUnchangedAgainOnceSaved() {
        Session changed = START.change("title x", START.specification().titled("x"));
        assertThat(changed.isChanged()).isTrue();
        assertThat(changed.title()).contains("x");
        assertThat(changed.saved().isChanged()).isFalse();
        assertThat(changed.saved().undo().orElseThrow().isChanged()).isTrue();
    }

    @Test
    void isAsUnchangedAsBeforeOnceAnOpeningIsUndone() {
        Setup other = new Setup(START.specification().titled("y"), START.setup().shelf());
        Session undone = START.open("open y", other).undo().orElseThrow();
        assertThat(undone.isChanged()).isFalse();
        assertThat(undone.redo().orElseThrow().isChanged()).isFalse();

        Session edited = START.change("title x", START.specification().titled("x"));
        Session back = edited.open("open y", other).undo().orElseThrow();
        assertThat(back.isChanged()).as("x was never saved").isTrue();
        Session savedBetween = edited.saved()
                .open("open y", other)
                .change("title z", START.specification().titled("z"))
                .saved();
        assertThat(savedBetween.undo().orElseThrow().isChanged())
                .as("z was saved, y is in hand")
                .isTrue();
        assertThat(savedBetween.undo().flatMap(Session::undo).orElseThrow().isChanged())
                .as("x was saved before")
                .isFalse();
    }

    @Test
    void isUnchangedOnceOpened() {
        Setup other = new Setup(START.specification().titled("y"), START.setup().shelf());
        assertThat(START.open("open y", other).isChanged()).isFalse();
    }

    @Test
    void refusesAChoiceThatCannotBeLookedUp() {
        assertThatThrownBy(() -> START.change("axle x", START.specification().with(Slot.REAR_AXLE, "no-such")))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("no-such");
    }

    @Test
    void keepsTheRestWhenASettingChanges() {
        Session metric = START.with(UnitSystem.METRIC).with(OutputForm.JSON);
        assertThat(metric.units()).isEqualTo(UnitSystem.METRIC);
        assertThat(metric.output()).isEqualTo(OutputForm.JSON);
        assertThat(metric.setup()).isEqualTo(START.setup());
    }
}
