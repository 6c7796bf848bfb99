package drivetrain.combination;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import drivetrain.gearing.AxleRatio;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class CatalogTest {

    private static final Part<AxleRatio> SHORT = axle("rp-4.10", "41/10", "own.yaml");
    private static final Part<AxleRatio> LONG = axle("rp-3.42", "41/12", "own.yaml");

    private static Part<AxleRatio> axle(String name, String ratio, String origin) {
        return Part.of(name, "ring and pinion", AxleRatio.parse(ratio), origin);
    }

    private static Catalog catalog() {
        return Catalog.titled("Own shelf")
                .add(PartKind.AXLE, SHORT)
                .add(PartKind.AXLE, LONG)
                .build();
    }

    @Test
    void holdsNothingWhenEmpty() {
        Catalog none = Catalog.empty();

        assertThat(PartKind.all())
                .allSatisfy(kind -> assertThat(none.parts(kind)).isEmpty());
        assertThat(none.limits()).isEqualTo(HouseLimits.packed());
        assertThat(none.title()).isEqualTo("no catalog");
    }

    @Test
    void listsPartsInTheOrderInWhichTheyWereAdded() {
        assertThat(catalog().title()).isEqualTo("Own shelf");
        assertThat(catalog().parts(PartKind.AXLE)).containsExactly(SHORT, LONG);
        assertThat(catalog().parts(PartKind.TIRE)).isEmpty();
    }

    @Test
    void findsPartsByTheirExactNameWithinTheirKind() {
        assertThat(catalog().find(PartKind.AXLE, "rp-4.10")).contains(SHORT);
        assertThat(catalog().find(PartKind.AXLE, "RP-4.10")).isEmpty();
        assertThat(catalog().find(PartKind.TIRE, "rp-4.10")).isEmpty();
    }

    @Test
    void refusesATakenNameWithBothOrigins() {
        Refusal refusal = Refusals.of(() -> Catalog.titled("two files")
                .add(PartKind.AXLE, SHORT)
                .add(PartKind.AXLE, axle("rp-4.10", "4.10", "bought.yaml")));

        assertThat(refusal.subject()).isEqualTo("axle");
        assertThat(refusal.given()).isEqualTo("rp-4.10");
        assertThat(refusal.problem()).contains("own.yaml");
    }

    @Test
    void allowsOneNameInTwoKinds() {
        Catalog both = Catalog.titled("both")
                .add(PartKind.AXLE, axle("std", "4.10", "a"))
                .add(PartKind.TIRE, Part.of("std", "", PartKind.TIRE.parse("235/85R16"), "a"))
                .build();

        assertThat(both.find(PartKind.TIRE, "std")).isPresent();
        assertThat(both.find(PartKind.AXLE, "std")).isPresent();
    }

    @Test
    void addsEveryPartOfAnotherCatalog() {
        Part<AxleRatio> more = axle("rp-5.13", "41/8", "more.yaml");
        Catalog joined = Catalog.titled("joined")
                .add(PartKind.AXLE, more)
                .addAll(catalog())
                .build();

        assertThat(joined.parts(PartKind.AXLE)).containsExactly(more, SHORT, LONG);
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> Catalog.titled("twice").addAll(catalog()).addAll(catalog()));
    }

    @Test
    void doesNotChangeAfterItWasBuilt() {
        Catalog.Builder builder = Catalog.titled("grows").add(PartKind.AXLE, SHORT);
        Catalog before = builder.build();
        Catalog after = builder.add(PartKind.AXLE, LONG).build();

        assertThat(before.parts(PartKind.AXLE)).containsExactly(SHORT);
        assertThat(after.parts(PartKind.AXLE)).containsExactly(SHORT, LONG);
    }

    @Test
    void keepsTheLimitsOfTheShop() {
        HouseLimits own = HouseLimits.packed().with(HouseLimits.CRUISE_LEAST_OVER_IDLE, 2.5, "the shop");

        assertThat(Catalog.titled("own").limits(own).build().limits()).isEqualTo(own);
    }

    @Test
    void resolvesANameBeforeALiteral() {
        Catalog misleading = Catalog.titled("misleading")
                .add(PartKind.AXLE, axle("4.10", "41/10", "own.yaml"))
                .build();

        assertThat(misleading.resolve(PartKind.AXLE, "4.10").item()).isEqualTo(AxleRatio.parse("41/10"));
        assertThat(misleading.resolve(PartKind.AXLE, "4.10").isLiteral()).isFalse();
    }

    @Test
    void resolvesALiteral() {
        Part<AxleRatio> part = catalog().resolve(PartKind.AXLE, "37/9");

        assertThat(part).isEqualTo(Part.literal("37/9", AxleRatio.parse("37/9")));
        assertThat(part.isLiteral()).isTrue();
    }

    @Test
    void suggestsNamesForOneThatIsNearlyRight() {
        Refusal refusal = Refusals.of(() -> catalog().resolve(PartKind.AXLE, "rp-4.11"));

        assertThat(refusal.problem()).isEqualTo("is not on the shelf and not a literal");
        assertThat(refusal.suggestions()).contains("rp-4.10");
        assertThat(refusal.allowed()).contains("parts axle").contains(PartKind.AXLE.example());
    }

    @Test
    void takesAWordForANameEvenIfNoneIsNear() {
        Refusal refusal = Refusals.of(() -> catalog().resolve(PartKind.AXLE, "portal"));

        assertThat(refusal.problem()).isEqualTo("is not on the shelf and not a literal");
        assertThat(refusal.suggestions()).isEmpty();
    }

    @Test
    void locatesTheFaultInAFaultyLiteral() {
        Refusal refusal = Refusals.of(() -> Catalog.empty().resolve(PartKind.AXLE, "41/10 x"));

        assertThat(refusal.position()).hasValue(6);
        assertThat(refusal.problem()).doesNotContain("shelf");
    }

    @Test
    void refusesTheEmptyText() {
        assertThat(Refusals.of(() -> Catalog.empty().resolve(PartKind.AXLE, "")).problem())
                .doesNotContain("shelf");
    }

    @Test
    void makesAPromisedPartOnceAndNotBeforeItIsLookedUp() {
        AtomicInteger made = new AtomicInteger();
        Catalog catalog = Catalog.titled("shelf")
                .promise(PartKind.AXLE, "rp-4.10", () -> {
                    made.incrementAndGet();
                    return Part.of("rp-4.10", "", PartKind.AXLE.parse("41/10"), "shelf.yaml");
                })
                .build();
        assertThat(made).hasValue(0);
        Part<AxleRatio> first = catalog.resolve(PartKind.AXLE, "rp-4.10");
        assertThat(catalog.parts(PartKind.AXLE)).containsExactly(first);
        assertThat(catalog.find(PartKind.AXLE, "rp-4.10")).containsSame(first);
        assertThat(made).hasValue(1);
    }

    @Test
    void refusesToPromiseATakenName() {
        Catalog.Builder builder = Catalog.titled("shelf")
                .add(PartKind.AXLE, Part.of("rp-4.10", "", PartKind.AXLE.parse("41/10"), "first.yaml"));
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> builder.promise(PartKind.AXLE, "rp-4.10", () -> {
                    throw new AssertionError("not to be made");
                }))
                .withMessageContaining("first.yaml");
    }
}
