package drivetrain.document;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.combination.Catalog;
import drivetrain.combination.PartKind;
import drivetrain.fuel.PumpPoint;
import drivetrain.quantity.VolumeFlow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FuelCatalogTest {

    private static Catalog read(String list) {
        return CatalogDocument.parse("shelf.yaml", Samples.catalogOf(list), DocumentFormat.YAML);
    }

    @Test
    void readsTheDemoShelf() throws Exception {
        Catalog demo = CatalogDocument.readPacked("drivetrain/demo", java.util.List.of("fuel.yaml"));
        assertThat(demo.parts(PartKind.FUEL_PUMP)).hasSize(4);
        assertThat(demo.find(PartKind.INJECTORS, "inj-60").orElseThrow().item().number())
                .isEmpty();
        assertThat(demo.resolve(PartKind.FUEL_PUMP, "2 x tank-255 in parallel")
                        .item()
                        .count())
                .isEqualTo(2);
        assertThat(demo.resolve(PartKind.FUEL_LINE, "2 m of efi-8, filter fine-10")
                        .item()
                        .feed())
                .hasSize(2);
        assertThat(demo.resolve(PartKind.INJECTORS, "8 x inj-42").item().number())
                .hasValue(8);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pumps:\\n  - name: p\\n    curves:\\n      - voltage: 12 V|has no points",
                "pumps:\\n  - name: p\\n    curves:\\n      - {voltage: 12 V, points: [{pressure: 0 psi, flow: 9 gph}]}|can mean more than one unit",
                "pumps:\\n  - name: p\\n    curves:\\n      - {voltage: 12 V, points: [{pressure: 0 psi, flow: 9 L/h}]}|has 1 point",
                "injectors:\\n  - {name: i, flow: 42 lb/h, pressure: 43.5 psi, testDensity: 9 kg/L}|out of range",
                "fuelHoses:\\n  - {name: h, material: wood, bore: 8 mm}|is not one of the words",
                "fuelLines:\\n  - {name: l, pieces: 2 m of silver}|is not a tube or hose",
                "fuelSystems:\\n  - {name: s, setup: 900 V}|is out of range",
                "tanks:\\n  - {name: t, volume: 20 gal}|can mean more than one unit",
                "fuels:\\n  - {name: f, family: diesel, ethanol: 0.1, density: 840 kg/m3, viscosity: 3 mm2/s}|is out of range"
            })
    void refusesWithThePlace(String list, String problem) {
        assertThat(Refused.sentence(() -> read(list.replace("\\n", "\n"))))
                .startsWith("shelf.yaml:")
                .contains(problem);
    }

    @Test
    void readsACurveFromASheet() {
        PumpPoint point = new PumpSheet(SourceText.of("p.csv", "# run 2\npressure psi,flow L/h\n0,200\n 40 , 150\n"))
                .points()
                .get(1);
        assertThat(point.flow()).isEqualTo(VolumeFlow.ofLitersPerHour(150.0));
        assertThat(point.current()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "#|p.csv:1:1: pump curve: is empty",
                "pressure psi;flow gph|p.csv:1:1: pump curve \"pressure psi;flow gph\": has 1 cells",
                "pressure psi,flow gph|p.csv:1:14: pump curve \"flow gph\": does not name a unit of volume flow",
                "pressure psi,flow L/h\\n0,x|p.csv:2:3: pump curve \"x\": is not a number",
                "pressure psi,flow L/h\\n0,1,2|p.csv:2:1: pump curve \"0,1,2\": has 3 cells",
                "pressure psi,flow L/h\\n0,99999|p.csv:2:1: pump flow",
                "pressure psi,flow L/h\\n0,\"1\"|p.csv:2:1: pump curve"
            })
    void refusesASheetWithThePlace(String text, String words) {
        assertThat(Refused.sentence(() -> new PumpSheet(SourceText.of("p.csv", text.replace("\\n", "\n"))).points()))
                .startsWith(words);
    }
}
