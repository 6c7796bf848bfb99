package drivetrain.tire;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.finding.Finding;
import drivetrain.finding.Verdict;
import drivetrain.quantity.Mass;
import drivetrain.quantity.Speed;
import drivetrain.quantity.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TireChecksTest {

    private static Finding load(String tire, double kilograms, boolean dual) {
        return TireChecks.load("rear", Tire.parse(tire), Mass.ofKilograms(kilograms), dual);
    }

    private static Finding speed(String tire, double kilometersPerHour) {
        return TireChecks.speed("rear", Tire.parse(tire), Speed.ofKilometersPerHour(kilometersPerHour));
    }

    private static Finding same(String front, String rear) {
        return TireChecks.sameDiameter(Tire.parse(front), Tire.parse(rear));
    }

    @ParameterizedTest
    @CsvSource({
        "LT265/75R16 123/120R, 2900, false, met",
        "LT265/75R16 123/120R, 2945, false, met",
        "LT265/75R16 123/120R, 2946, false, marginal",
        "LT265/75R16 123/120R, 3100, false, marginal",
        "LT265/75R16 123/120R, 3101, false, exceeded",
        "LT265/75R16 123/120R, 5600, true, marginal",
        "LT265/75R16 123/120R, 5601, true, exceeded",
        "265/75R16 116T, 2272, false, met",
        "265/75R16 116T, 2273, false, marginal",
        "P265/75R16 116T, 2273, false, marginal",
        "195/75R16C 107/105R, 1800, false, met",
        "7.50R16 121/120L, 2750, false, met",
    })
    void holdsAxleLoadAgainstCapacity(String tire, double kilograms, boolean dual, String verdict) {
        assertThat(load(tire, kilograms, dual).verdict().label()).isEqualTo(verdict);
    }

    @Test
    void reportsLoadWithLimitAndMargin() {
        Finding finding = load("LT265/75R16 123/120R", 2900, false);

        assertThat(finding.checked()).isEqualTo("rear tire load");
        assertThat(finding.value().orElseThrow().text(UnitSystem.METRIC)).isEqualTo("2900 kg");
        assertThat(finding.limit().orElseThrow().text(UnitSystem.METRIC)).isEqualTo("3100 kg");
        assertThat(finding.margin().orElseThrow().text(UnitSystem.METRIC)).isEqualTo("200 kg");
        assertThat(finding.statement()).isEqualTo("load index 123 is 1550 kg a tire, and the axle has 2 of them");
        assertThat(load("265/75R16 116T", 2400, false).statement())
                .endsWith("less than 9 % of the load capacity is left");
    }

    @Test
    void asksForAMissingLoadIndex() {
        assertThat(load("265/75R16", 2000, false))
                .returns(Verdict.NOT_EVALUATED, Finding::verdict)
                .satisfies(finding -> assertThat(finding.statement()).contains("no load index; add"));
        assertThat(load("265/75R16 116T", 2000, true).statement()).contains("for dual wheels");
    }

    @Test
    void refusesAnAxleWithoutLoad() {
        assertThat(RefusedSize.by(() -> load("265/75R16 116T", 0, false)).subject())
                .isEqualTo("rear axle load");
    }

    @ParameterizedTest
    @CsvSource({
        "285/75R16 122/119Q, 151.9, met",
        "285/75R16 122/119Q, 152.1, marginal",
        "285/75R16 122/119Q, 160, marginal",
        "285/75R16 122/119Q, 160.1, exceeded",
        "285/75R16, 100, not evaluated",
        "285/35R19 99H, 199, met",
        "285/35R19 99Y, 301, exceeded",
        "285/35ZR19 (99Y), 301, not evaluated",
        "285/35ZR19 (99Y), 280, met",
    })
    void holdsTopSpeedAgainstTheSpeedSymbol(String tire, double kilometersPerHour, String verdict) {
        assertThat(speed(tire, kilometersPerHour).verdict().label()).isEqualTo(verdict);
    }

    @Test
    void reportsSpeedWithLimitAndMargin() {
        Finding finding = speed("285/75R16 122/119Q", 155);

        assertThat(finding.checked()).isEqualTo("rear tire speed");
        assertThat(finding.limit().orElseThrow().text(UnitSystem.METRIC)).isEqualTo("160.0 km/h");
        assertThat(finding.margin().orElseThrow().text(UnitSystem.METRIC)).isEqualTo("5.0 km/h");
        assertThat(finding.statement()).isEqualTo("speed symbol Q is 160 km/h; less than 5 % of the speed is left");
    }

    @ParameterizedTest
    @CsvSource({
        "285/75R16, 285/75R16, met",
        "285/75R16 rollout 2500 mm, 285/75R16 rollout 2512 mm, met",
        "285/75R16 rollout 2500 mm, 285/75R16 rollout 2515 mm, marginal",
        "285/75R16 rollout 2540 mm, 285/75R16 rollout 2500 mm, exceeded",
        "265/75R16, 285/75R16, exceeded",
        "7.50-20, 7.50-20, met",
        "7.50-20, 7.50-16, not evaluated",
        "7.50-16, 7.50-20, not evaluated",
    })
    void holdsFrontTiresAgainstRearTires(String front, String rear, String verdict) {
        assertThat(same(front, rear).verdict().label()).isEqualTo(verdict);
    }

    @Test
    void saysWhichTireRollsFurtherAndWhetherBothWereFoundAlike() {
        assertThat(same("285/75R16", "285/75R16").statement()).contains("the same distance");
        assertThat(same("265/75R16", "285/75R16").statement())
                .isEqualTo("one turn of the front tire is 3.60 % shorter than one of the rear tire");
        assertThat(same("285/75R16", "285/75R16 rollout 2510 mm").statement())
                .startsWith("one turn of the front tire is 1.33 % longer")
                .endsWith("measure both");
    }

    @ParameterizedTest
    @CsvSource({
        "285/75R16, ''",
        "285/75R16 rollout 2510 mm, met",
        "285/75R16 rollout 2410 mm, marginal",
        "285/75R16 rollout 2700 mm, marginal",
        "285/75R16 rollout 2510 mm revs 632/mile, met met met",
        "285/75R16 rollout 2500 mm revs 632/mile, marginal met met",
        "285/75R16 diameter 32.8 in, met",
        "285/75R16 diameter 35 in, marginal",
        "7.50-20 rollout 2800 mm, ''",
        "7.50-20 rollout 2800 mm revs 500/mile, marginal",
    })
    void doubtsMeasurementsThatDisagree(String tire, String verdicts) {
        List<Finding> findings = TireChecks.consistency("front", Tire.parse(tire));

        assertThat(findings.stream().map(finding -> finding.verdict().label()))
                .containsExactly(verdicts.isEmpty() ? new String[0] : verdicts.split(" "));
    }

    @Test
    void saysWhatToDoAboutAMeasurementInDoubt() {
        Finding finding = TireChecks.consistency("front", Tire.parse("285/75R16 rollout 2410 mm"))
                .get(0);

        assertThat(finding.checked()).isEqualTo("front tire roll-out against its size");
        assertThat(finding.statement())
                .isEqualTo("2410 mm against 2543 mm, 5.2 % less: measure again, or check the size");
        assertThat(finding.margin().orElseThrow().text(UnitSystem.METRIC)).isEqualTo("-0.2 %");
    }

    @Test
    void warnsOfBurstingTiresAndDefersToLicensedPractice() {
        assertThat(TireCautions.all())
                .hasSize(2)
                .allMatch(caution -> caution.hazard().equals("tire"));
        assertThat(TireCautions.all().get(0).text()).contains("burst");
        assertThat(TireCautions.all().get(1).text()).contains("local law").contains("licensed practice");
    }
}
