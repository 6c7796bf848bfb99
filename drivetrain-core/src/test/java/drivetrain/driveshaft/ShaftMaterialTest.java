package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.Density;
import drivetrain.quantity.Length;
import drivetrain.quantity.Pressure;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShaftMaterialTest {

    private static final String METAL = "modulus 205 GPa poisson 0.29 density 7850 kg/m3";
    private static final String LAMINATE = "laminate modulus 110 GPa shear 14 GPa density 1580 kg/m3";

    private static Refusal refusalOf(String text) {
        return catchThrowableOfType(RefusedException.class, () -> ShaftMaterial.parse(text))
                .refusal();
    }

    @Test
    void findsAMetalByItsName() {
        assertThat(ShaftMaterial.parse("Steel").text()).isEqualTo("steel");
        assertThat(ShaftMaterial.parse(" aluminium-6061-T6 ").text()).isEqualTo("aluminum-6061-t6");
        assertThat(ShaftMaterial.parse("steel").assumptions())
                .singleElement()
                .satisfies(assumption -> assertThat(assumption.flagged()).isFalse());
        assertThat(ShaftMaterial.parse("steel").shearStrength()).isEmpty();
    }

    @Test
    void saysWhatToTellWhereTheStrengthIsNotKnown() {
        assertThat(ShaftMaterial.parse("steel").strengthMissing())
                .startsWith(
                        "which steel it is was not said; name the grade bought, steel-1020-welded, steel-1020-drawn,");
        assertThat(ShaftMaterial.parse("modulus 205 GPa poisson 0.29 density 7850 kg/m3")
                        .strengthMissing())
                .contains("yield 350 MPa");
        assertThat(ShaftMaterial.parse("laminate modulus 110 GPa shear 14 GPa density 1580 kg/m3")
                        .strengthMissing())
                .contains("strength 120 MPa");
    }

    /** Least yield of 1020 drawn over a mandrel by ASTM A513 type 5, as a second tube dealer's page of technical data prints it: 60,000 psi. */
    @Test
    void gradesHaveTheLeastYieldOfTheStandard() {
        assertThat(((ShaftMetal) ShaftMaterial.parse("steel-1020-drawn"))
                        .yield()
                        .orElseThrow()
                        .toPsi())
                .isCloseTo(60_000, within(100.0));
        assertThat(StockMaterials.gradesOf("steel"))
                .allSatisfy(grade ->
                        assertThat(ShaftMaterial.parse(grade).shearStrength()).isPresent());
        assertThat(StockMaterials.gradesOf("titanium-6al-4v")).isEmpty();
    }

    @Test
    void readsAMetalThatIsWrittenOut() {
        ShaftMaterial steel = ShaftMaterial.parse("density 7850 kg/m3, modulus 205 GPa Poisson 0.29".replace(",", ""));

        assertThat(steel)
                .isEqualTo(ShaftMetal.of(Pressure.ofGigapascals(205), 0.29, Density.ofKilogramsPerCubicMeter(7850)));
        assertThat(steel.shearModulus().toGigapascals()).isCloseTo(79.457, within(1e-3));
        assertThat(steel.assumptions()).isEmpty();
        assertThat(ShaftMaterial.parse(METAL + " yield 346.4 MPa")
                        .shearStrength()
                        .orElseThrow()
                        .toMegapascals())
                .isCloseTo(200.0, within(0.01));
    }

    @Test
    void readsALaminate() {
        ShaftMaterial carbon = ShaftMaterial.parse(LAMINATE + " strength 120 MPa");

        assertThat(carbon.modulus()).isEqualTo(Pressure.ofGigapascals(110));
        assertThat(carbon.shearModulus()).isEqualTo(Pressure.ofGigapascals(14));
        assertThat(carbon.shearStrength()).contains(Pressure.ofMegapascals(120));
        assertThat(carbon.assumptions())
                .singleElement()
                .satisfies(assumption -> assertThat(assumption.flagged()).isTrue());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "steel",
                METAL,
                METAL + " yield 60 ksi",
                LAMINATE,
                LAMINATE + " strength 120 MPa",
                "modulus 29.5 Msi poisson .3 density 7.85 g/cc"
            })
    void readsBackWhatItWrites(String text) {
        ShaftMaterial material = ShaftMaterial.parse(text);

        assertThat(ShaftMaterial.parse(material.text())).isEqualTo(material);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "modulus 205 MPa poisson 0.29 density 7850 kg/m3 | 8 | modulus is not that of a shaft material: is the unit the right one?",
                "modulus 205000 GPa poisson 0.29 density 7850 kg/m3 | 8 | modulus is not that of a shaft material: is the unit the right one?",
                "modulus 205 GPa poisson 0.29 density 7.85 kg/m3 | 37 | density is not that of a shaft material: is the unit the right one?",
                "modulus 205 GPa poisson 0.29 density 7850 kg/L | 37 | density is not that of a shaft material: is the unit the right one?",
                "modulus 205 GPa poisson 0.29 density 7850 kg/m3 yield 350 kPa | 54 | yield is not that of a shaft material: is the unit the right one?",
                "modulus 205 GPa poisson 29 density 7850 kg/m3 | 24 | poisson is not that of a metal",
                "laminate modulus 110 MPa shear 14 GPa density 1580 kg/m3 | 17 | modulus is not that of a shaft material: is the unit the right one?",
                "laminate modulus 110 GPa shear 14 MPa density 1580 kg/m3 | 31 | shear is not that of a shaft material: is the unit the right one?",
                "laminate modulus 110 GPa shear 14 GPa density 1.58 kg/m3 | 46 | density is not that of a shaft material: is the unit the right one?",
                "laminate modulus 110 GPa shear 14 GPa density 1580 kg/m3 strength 120 Pa | 66 | strength is not that of a shaft material: is the unit the right one?",
                "steeel | 0 | is not a material that is known here",
                "carbon | 0 | has no usual figures: the plies make them, so ask the maker of the tube",
                "carbon modulus 110 GPa | 0 | has no usual figures: the plies make them, so ask the maker of the tube",
                "modulus 205 GPa density 7850 kg/m3 | 34 | does not tell its poisson",
                "modulus 205 GPa poisson 0.29 | 28 | does not tell its density",
                "modulus poisson 0.29 density 7850 kg/m3 | 7 | modulus does not start with a number",
                "modulus 205 GPa poisson .2.9 density 7850 kg/m3 | 24 | has a Poisson's ratio that is not a plain number",
                "modulus 205 GPa modulus 205 GPa poisson 0.29 density 7850 kg/m3 | 23 | has modulus twice",
                "modulus 205 GPa poisson 0.29 density 7850 kg/m3 strength 3 MPa | 48 | has strength, which does not belong here",
                "laminate 3 modulus 110 GPa shear 14 GPa density 1580 kg/m3 | 9 | has \"3\" where modulus is wanted",
                "laminate modulus 110 lb shear 14 GPa density 1580 kg/m3 | 21 | modulus \"lb\" is a unit of mass, not of pressure"
            })
    void refusesWhatIsNoMaterialAndPointsAtTheFault(String text, int position, String problem) {
        Refusal refusal = refusalOf(text);

        assertThat(refusal.problem()).isEqualTo(problem);
        assertThat(refusal.position()).hasValue(position);
        assertThat(refusal.given()).isEqualTo(text);
        assertThat(refusal.allowed()).isNotEmpty();
    }

    @Test
    void refusesAMetalOutsideTheLimitsHoweverItIsMade() {
        Refusal refusal = catchThrowableOfType(
                        RefusedException.class,
                        () -> ShaftMetal.of(Pressure.ofMegapascals(205), 0.3, Density.ofKilogramsPerCubicMeter(7850)))
                .refusal();

        assertThat(refusal.sentence())
                .isEqualTo(
                        "modulus of elasticity \"0.205 GPa\": is not that of a shaft material: is the unit the right one?; "
                                + "allowed: 20 to 700 GPa; see which unit the data sheet means");
    }

    @Test
    void suggestsANearNameAndRefusesEndlessText() {
        assertThat(refusalOf("steeel").suggestions()).contains("steel");
        assertThat(refusalOf("steel ".repeat(50)).problem()).isEqualTo("is too long");
    }

    @ParameterizedTest
    @CsvSource({"0.0", "0.29", "0.33", "0.5"})
    void hasCowpersCoefficientsOfTheSolidCircleAndOfTheThinTube(double poisson) {
        ShaftMaterial metal =
                ShaftMetal.of(Pressure.ofGigapascals(200), poisson, Density.ofKilogramsPerCubicMeter(7850));
        Tube thin = Tube.of(Length.ofMillimeters(100), Length.ofMillimeters(1e-6));

        assertThat(metal.shearCoefficient(Tube.solid(Length.ofMillimeters(100))))
                .isCloseTo(6 * (1 + poisson) / (7 + 6 * poisson), within(1e-15));
        assertThat(metal.shearCoefficient(thin)).isCloseTo(2 * (1 + poisson) / (4 + 3 * poisson), within(1e-12));
    }

    @Test
    void aLaminateTubeHasTheCoefficientOfAThinWall() {
        ShaftMaterial flat = ShaftMetal.of(Pressure.ofGigapascals(200), 0.0, Density.ofKilogramsPerCubicMeter(7850));
        Tube thin = Tube.of(Length.ofMillimeters(100), Length.ofMillimeters(1e-6));

        assertThat(ShaftMaterial.parse(LAMINATE).shearCoefficient(thin))
                .isCloseTo(flat.shearCoefficient(thin), within(1e-12));
    }

    @Test
    void everyStockMetalIsFoundByItsName() {
        assertThat(StockMaterials.all())
                .isNotEmpty()
                .allSatisfy(
                        metal -> assertThat(ShaftMaterial.parse(metal.name())).isEqualTo(metal));
        assertThat(StockMaterials.names()).doesNotHaveDuplicates();
        assertThat(StockMaterials.named("unobtainium")).isEmpty();
    }
}
