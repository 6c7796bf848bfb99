package drivetrain.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.combination.Slot;
import drivetrain.refusal.RefusedException;
import java.util.List;
import org.junit.jupiter.api.Test;

class PartListTest {

    private static final Place TIRE = Place.ofWord("tire").orElseThrow();

    private static List<String> read(Place place, String text) {
        return PartList.read(place, text, TestShelf.CATALOG).choices();
    }

    @Test
    void readsNamesAndLiteralsWithOrBetweenThem() {
        assertThat(read(Place.AXLES, "rp-41-10 or 4.56 or 41/9 or 4.56")).containsExactly("rp-41-10", "4.56", "41/9");
    }

    @Test
    void readsCommasWhereTheWholeIsNoPart() {
        assertThat(read(Place.AXLES, "3.73, 4.10,rp-41-9")).containsExactly("3.73", "4.10", "rp-41-9");
        Place engine = Place.ofWord("engine").orElseThrow();
        String literal = "420 hp at 5700 rpm, 460 lb-ft at 4100 rpm, idle 650 rpm, max 6600 rpm";
        assertThat(read(engine, literal + " or gas-62")).containsExactly(literal, "gas-62");
    }

    @Test
    void spreadsRanges() {
        assertThat(read(Place.AXLES, "3.07..3.10 step 0.01")).containsExactly("3.07", "3.08", "3.09", "3.10");
        assertThat(read(Place.AXLES, "3.07..5.38 step 0.01")).hasSize(232);
        assertThat(read(TIRE, "285/75R16 rollout 2400..2500 step 50 mm"))
                .containsExactly("285/75R16 rollout 2400 mm", "285/75R16 rollout 2450 mm", "285/75R16 rollout 2500 mm");
        Place transfer = Place.ofWord("transfer").orElseThrow();
        assertThat(read(transfer, "1.0..1.2 step 0.1 2..3 step 0.5")).hasSize(9).startsWith("1.0 2", "1.0 2.5");
    }

    @Test
    void searchesTheShelf() {
        assertThat(read(TIRE, "all")).containsExactly("tall", "stock", "mid");
        assertThat(read(Place.ofWord("transmission").orElseThrow(), "manual")).containsExactly("manual-5", "manual-4");
        assertThat(read(Place.ofWord("transmission").orElseThrow(), "manual direct"))
                .containsExactly("manual-4");
    }

    @Test
    void refusesWhatIsNoPart() {
        assertRefused(Place.AXLES, "4.10 or nonsense", 8, "no part");
        assertRefused(Place.AXLES, "3.07..5.38", 10, "no step");
        assertRefused(Place.AXLES, "5.38..3.07 step 0.01", 0, "runs down");
        assertRefused(Place.AXLES, "3.07..5.38 step 0", 0, "step of zero");
        assertRefused(Place.AXLES, "3.07..5.38 step 0.000001", 0, "too long");
        assertRefused(Place.AXLES, "4.10 or ", 8, "missing");
        assertRefused(Place.AXLES, "30..40 step 1", 0, "out of range");
        assertThatThrownBy(() -> new PartList(TIRE, List.of())).hasMessageContaining("empty");
        assertThatThrownBy(() -> read(TIRE, "tahll"))
                .isInstanceOfSatisfying(
                        RefusedException.class,
                        refused -> assertThat(refused.refusal().suggestions()).contains("tall"));
    }

    private static void assertRefused(Place place, String text, int position, String problem) {
        assertThatThrownBy(() -> read(place, text)).isInstanceOfSatisfying(RefusedException.class, refused -> {
            assertThat(refused.getMessage()).contains(problem);
            assertThat(refused.refusal().position()).hasValue(position);
        });
    }

    @Test
    void knowsThePlaces() {
        assertThat(Place.ofWord("axle")).hasValue(Place.AXLES);
        assertThat(Place.ofWord("Rear Axle").orElseThrow().slots()).containsExactly(Slot.REAR_AXLE);
        assertThat(Place.ofWord("gearbox").orElseThrow().slots()).containsExactly(Slot.TRANSMISSION);
        assertThat(Place.ofWord("banana")).isEmpty();
        assertThat(Place.words()).contains("axle", "tire", "transfer");
        assertThat(Place.AXLES.put(TestShelf.ORDER, "4.10").choices())
                .containsEntry(Slot.FRONT_AXLE, "4.10")
                .containsEntry(Slot.REAR_AXLE, "4.10");
        assertThat(TIRE.put(TestShelf.ORDER.with(Slot.FRONT_TIRE, "mid"), "stock")
                        .choice(Slot.FRONT_TIRE))
                .isEmpty();
    }
}
