package drivetrain.finding;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class AssumptionTest {

    private static final Source GIVEN = Source.given("the order");
    private static final Assumption ASSUMPTION = Assumption.of("converter", "it is locked", GIVEN);

    @Test
    void isFlaggedIfItsSourceIsUncertain() {
        assertThat(ASSUMPTION.flagged()).isFalse();
        assertThat(Assumption.of("converter", "it is locked", Source.fromMemory("a rule"))
                        .flagged())
                .isTrue();
        assertThat(Assumption.flagged("converter", "it is locked", GIVEN).flagged())
                .isTrue();
    }

    @Test
    void isEqualIfEveryComponentIs() {
        assertThat(ASSUMPTION)
                .isEqualTo(Assumption.of("converter", "it is locked", Source.given("the order")))
                .hasSameHashCodeAs(Assumption.of("converter", "it is locked", Source.given("the order")))
                .isNotEqualTo(Assumption.of("clutch", "it is locked", GIVEN))
                .isNotEqualTo(Assumption.of("converter", "it slips", GIVEN))
                .isNotEqualTo(Assumption.of("converter", "it is locked", Source.given("the catalog")))
                .isNotEqualTo(Assumption.flagged("converter", "it is locked", GIVEN))
                .isNotEqualTo("converter");
    }

    @Test
    void distinguishesSourcesAndCautions() {
        assertThat(GIVEN).isNotEqualTo(Source.derived("the order")).isNotEqualTo("the order");
        assertThat(GIVEN).isEqualTo(Source.given("the order")).hasSameHashCodeAs(Source.given("the order"));
        Caution caution = new Caution("tire", "It can burst.");
        assertThat(caution)
                .isEqualTo(new Caution("tire", "It can burst."))
                .hasSameHashCodeAs(new Caution("tire", "It can burst."))
                .isNotEqualTo(new Caution("shaft", "It can burst."))
                .isNotEqualTo(new Caution("tire", "It can leak."))
                .isNotEqualTo("tire");
    }
}
