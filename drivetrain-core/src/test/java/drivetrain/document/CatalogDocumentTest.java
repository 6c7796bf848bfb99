package drivetrain.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.combination.Catalog;
import drivetrain.combination.HouseLimits;
import drivetrain.combination.Part;
import drivetrain.combination.PartKind;
import drivetrain.combination.Vehicle;
import drivetrain.driveshaft.ShaftHouse;
import drivetrain.engine.Aspiration;
import drivetrain.engine.Engine;
import drivetrain.engine.Ignition;
import drivetrain.engine.MeasuredAt;
import drivetrain.engine.NoTorque;
import drivetrain.engine.PeakEstimate;
import drivetrain.engine.Rating;
import drivetrain.engine.TorqueCurve;
import drivetrain.finding.HouseLimit;
import drivetrain.finding.Source;
import drivetrain.gearing.AxleRatio;
import drivetrain.gearing.AxleTie;
import drivetrain.gearing.Clutch;
import drivetrain.gearing.Converter;
import drivetrain.gearing.Efficiency;
import drivetrain.gearing.HubReduction;
import drivetrain.gearing.Overdrive;
import drivetrain.gearing.Ratio;
import drivetrain.gearing.SpeedometerDrive;
import drivetrain.gearing.TransferCase;
import drivetrain.gearing.Transmission;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.quantity.Power;
import drivetrain.quantity.RevolutionsPerDistance;
import drivetrain.quantity.Torque;
import drivetrain.quantity.Volume;
import drivetrain.tire.Tire;
import drivetrain.tire.TireDesignation;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class CatalogDocumentTest {

    @TempDir
    Path folder;

    private static Catalog sample() throws IOException {
        return CatalogDocument.read(Samples.path("catalog.yaml"));
    }

    private static <T> T item(PartKind<T> kind, String name) throws IOException {
        return sample().find(kind, name).orElseThrow().item();
    }

    private static Catalog parse(String text) {
        return CatalogDocument.parse("shelf.yaml", text, DocumentFormat.YAML);
    }

    private Path file(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    @Test
    void readsEngines() throws IOException {
        Engine engine = item(PartKind.ENGINE, "v8-6.2");
        assertThat(engine.aspiration()).isEqualTo(Aspiration.NATURAL);
        assertThat(engine.ignition()).isEqualTo(Ignition.SPARK);
        assertThat(engine.displacement()).contains(Volume.parse("6.2 L"));
        assertThat(engine.rating()).isEqualTo(Rating.NET);
        assertThat(engine.measuredAt()).isEqualTo(MeasuredAt.CRANK);
        assertThat(engine.idle()).contains(AngularSpeed.ofRpm(650));
        assertThat(engine.maximumSpeed()).isEqualTo(AngularSpeed.ofRpm(6600));
        assertThat(engine.statedPower()).contains(Power.parse("420 hp"));
        TorqueCurve curve = (TorqueCurve) engine.torque();
        assertThat(curve.points()).hasSize(7);
        assertThat(curve.points().get(3).torque()).isEqualTo(Torque.ofPoundFeet(460));
        assertThat(item(PartKind.ENGINE, "i6-4.2").torque()).isInstanceOf(PeakEstimate.class);
        assertThat(item(PartKind.ENGINE, "crate-unknown").torque()).isEqualTo(new NoTorque());
        TorqueCurve measured =
                (TorqueCurve) item(PartKind.ENGINE, "i4-2.5-diesel").torque();
        assertThat(measured.points().get(0).torque()).isEqualTo(Torque.ofNewtonMeters(190));
    }

    @Test
    void readsTransmissions() throws IOException {
        Transmission automatic = item(PartKind.TRANSMISSION, "auto-6-hd");
        assertThat(automatic.forward()).hasSize(6).startsWith(Ratio.of(4.03)).endsWith(Ratio.of(0.67));
        assertThat(automatic.reverse()).contains(Ratio.of(3.06));
        assertThat(automatic.efficiency()).contains(Efficiency.of(0.96));
        assertThat(automatic.coupling())
                .isEqualTo(new Converter(OptionalDouble.of(2.0), true, OptionalDouble.of(0.97)));
        assertThat(item(PartKind.TRANSMISSION, "auto-4").coupling())
                .isEqualTo(new Converter(OptionalDouble.empty(), false, OptionalDouble.of(0.96)));
        assertThat(item(PartKind.TRANSMISSION, "auto-3").coupling()).isEqualTo(Converter.unknown());
        Transmission manual = item(PartKind.TRANSMISSION, "manual-5");
        assertThat(manual.coupling()).isEqualTo(new Clutch());
        assertThat(manual.forward().get(1)).isEqualTo(Ratio.ofTeeth(34, 13));
    }

    @Test
    void readsWhatIsBehindTheTransmission() throws IOException {
        assertThat(item(PartKind.TRANSFER_CASE, "part-time-2.72"))
                .isEqualTo(new TransferCase(
                        "part-time-2.72",
                        Ratio.of(1.0),
                        Optional.of(Ratio.of(2.72)),
                        AxleTie.PART_TIME,
                        Optional.of(Efficiency.of(0.97))));
        assertThat(item(PartKind.TRANSFER_CASE, "full-time-1").low()).isEmpty();
        assertThat(item(PartKind.AXLE, "rp-4.10").ratio()).isEqualTo(Ratio.ofTeeth(41, 10));
        assertThat(item(PartKind.OVERDRIVE, "od-0.78"))
                .isEqualTo(new Overdrive("od-0.78", Ratio.of(0.78), Optional.empty()));
        assertThat(item(PartKind.HUB_REDUCTION, "portal-1.5"))
                .isEqualTo(new HubReduction("portal-1.5", Ratio.ofTeeth(24, 16), Optional.of(Efficiency.of(0.985))));
    }

    @Test
    void readsTiresAndVehicles() throws IOException {
        assertThat(item(PartKind.TIRE, "at-285-75r16"))
                .isEqualTo(new Tire(
                        "at-285-75r16",
                        TireDesignation.parse("285/75R16 122/119Q"),
                        Optional.of(Length.ofMillimeters(2510)),
                        Optional.of(RevolutionsPerDistance.ofPerMile(645)),
                        Optional.of(Length.ofInches(32.8))));
        Vehicle wagon = item(PartKind.VEHICLE, "wagon-long");
        assertThat(wagon.mass()).contains(Mass.ofKilograms(2150));
        assertThat(wagon.dualRearWheels()).isFalse();
        assertThat(wagon.speedometer().orElseThrow().drive()).isEqualTo(SpeedometerDrive.DRIVESHAFT);
        assertThat(wagon.speedometer().orElseThrow().drivenTeeth()).isEqualTo(OptionalInt.of(21));
        Vehicle pickup = item(PartKind.VEHICLE, "pickup-dual");
        assertThat(pickup.dualRearWheels()).isTrue();
        assertThat(pickup.speedometer().orElseThrow().calibratedCircumference())
                .isEqualTo(Tire.parse("255/70R18").rolling().orThrow().circumference());
    }

    @Test
    void keepsTitleDescriptionOriginAndLimits() throws IOException {
        Catalog catalog = sample();
        assertThat(catalog.title()).isEqualTo("Test shelf of an invented workshop");
        Part<Engine> part = catalog.find(PartKind.ENGINE, "v8-6.2").orElseThrow();
        assertThat(part.description()).isEqualTo("6.2 L V8, naturally aspirated");
        assertThat(part.origin()).endsWith("catalog.yaml:8");
        assertThat(catalog.find(PartKind.ENGINE, "i6-4.2").orElseThrow().description())
                .isEmpty();
        assertThat(catalog.limits().get(HouseLimits.CRUISE_LEAST_OVER_IDLE))
                .isEqualTo(new HouseLimit(2.2, Source.given("Test shelf of an invented workshop")));
        assertThat(catalog.limits().get(HouseLimits.CRUISE_MOST_OF_MAXIMUM))
                .isEqualTo(HouseLimits.packed().get(HouseLimits.CRUISE_MOST_OF_MAXIMUM));
    }

    @Test
    void readsTheSameFromJson() throws IOException {
        String json = """
                {"document": "drivetrain-catalog", "version": 1, "title": "Shelf",
                 "axles": [{"name": "rp-4.10", "ratio": "41/10"}, {"name": "rp-3.73", "ratio": 3.73}]}
                """;
        Catalog catalog = CatalogDocument.read(file("shelf.json", json));
        assertThat(catalog.find(PartKind.AXLE, "rp-4.10").orElseThrow().item())
                .isEqualTo(new AxleRatio("rp-4.10", Ratio.ofTeeth(41, 10), Optional.empty()));
        assertThat(catalog.find(PartKind.AXLE, "rp-3.73").orElseThrow().item().ratio())
                .isEqualTo(Ratio.of(3.73));
    }

    /** Each row of the file is one list of a catalog that begins on line 4. */
    @ParameterizedTest
    @CsvFileSource(resources = "refused-parts.csv", numLinesToSkip = 2, delimiter = '|', maxCharsPerColumn = 9000)
    void refusesAFaultyPartAtTheFault(String list, String sentence) {
        assertThat(Refused.sentence(() -> parse(Samples.catalogOf(list.translateEscapes()))))
                .startsWith("shelf.yaml:" + sentence);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "refused-heads.csv", numLinesToSkip = 2, delimiter = '|')
    void refusesWhatIsNoCatalog(String text, String sentence) {
        assertThat(Refused.sentence(() -> parse(text.translateEscapes()))).startsWith("shelf.yaml:" + sentence);
    }

    @Test
    void suggestsTheNearestFieldAndWord() {
        assertThat(Refused.by(() -> parse(Samples.catalogOf("engine:\n  - name: x\n")))
                        .suggestions())
                .startsWith("engines");
        assertThat(Refused.by(() -> parse(Samples.catalogOf("tires:\n  - {name: x, siez: 205R16}\n")))
                        .suggestions())
                .startsWith("size");
        assertThat(Refused.by(() -> parse(
                                Samples.catalogOf("transferCases:\n  - {name: x, high: 1.00, drive: part time}\n")))
                        .suggestions())
                .containsExactly("part-time");
    }

    @Test
    void mergesSeveralDocuments() throws IOException {
        Path axles = file("axles.yaml", Samples.catalogOf("axles:\n  - {name: a, ratio: 41/10}\n"));
        Path more = file("more.yaml", Samples.catalogOf("axles:\n  - {name: b, ratio: 37/9}\n"));
        Path other = file(
                "other.json",
                "{\"document\":\"drivetrain-catalog\",\"version\":1,\"title\":\"Other\",\"houseLimits\":{\"cruiseMostOfMaximum\":0.6}}");
        Catalog catalog = CatalogDocument.read(List.of(axles, more, other));
        assertThat(catalog.title()).isEqualTo("Test shelf + Other");
        assertThat(catalog.parts(PartKind.AXLE)).extracting(Part::name).containsExactly("a", "b");
        assertThat(catalog.limits().get(HouseLimits.CRUISE_MOST_OF_MAXIMUM).value())
                .isEqualTo(0.6);
    }

    @Test
    void clipsATitleThatIsJoinedFromVeryMany() throws IOException {
        Path first = file("1.yaml", Samples.catalogOf("").replace("Test shelf", "x".repeat(150)));
        Path second = file("2.yaml", Samples.catalogOf("").replace("Test shelf", "y".repeat(150)));
        assertThat(CatalogDocument.read(List.of(first, second)).title())
                .hasSize(203)
                .endsWith("yyy...");
    }

    @Test
    void refusesANameThatTwoDocumentsGiveWithBothPlaces() throws IOException {
        Path axles = file("axles.yaml", Samples.catalogOf("axles:\n  - {name: a, ratio: 41/10}\n"));
        Path more = file(
                "more.yaml", Samples.catalogOf("axles:\n  - {name: b, ratio: 37/9}\n  - {name: a, ratio: 37/9}\n"));
        assertThat(Refused.sentence(() -> CatalogDocument.read(List.of(axles, more))))
                .startsWith(more + ":6:12: axle \"a\": is on the shelf already, from " + axles + ":5;");
    }

    @Test
    void refusesALimitThatTwoDocumentsSetWithBothPlaces() throws IOException {
        String limits = Samples.catalogOf("houseLimits: {cruiseLeastOverIdle: 2.5}\n");
        Path first = file("first.yaml", limits);
        Path second = file("second.yaml", limits);
        assertThat(Refused.sentence(() -> CatalogDocument.read(List.of(first, second))))
                .isEqualTo(second + ":4:36: cruiseLeastOverIdle: is set already, at " + first + ":4:36");
    }

    /** What is good may stand in one file and what is too much in another, in either order. */
    @Test
    void holdsLimitsAgainstEachOtherWhenAllFilesAreRead() throws IOException {
        Path good = file("good.yaml", Samples.catalogOf("houseLimits: {criticalSpeedShareGood: 0.8}\n"));
        Path most = file("most.yaml", Samples.catalogOf("houseLimits: {criticalSpeedShareMost: 0.85}\n"));
        Path less = file("less.yaml", Samples.catalogOf("houseLimits: {criticalSpeedShareMost: 0.72}\n"));
        ShaftHouse house = CatalogDocument.read(List.of(good, most)).limits().driveshafts();

        assertThat(house.of(ShaftHouse.Rule.CRITICAL_GOOD)).isEqualTo(new HouseLimit(0.8, Source.given("Test shelf")));
        assertThat(CatalogDocument.read(List.of(most, good)).limits().driveshafts())
                .isEqualTo(house);
        assertThat(Refused.sentence(() -> CatalogDocument.read(List.of(good, less))))
                .startsWith(less
                        + ":4:39: house limit criticalSpeedShareMost \"0.72\": is less than criticalSpeedShareGood;");
        assertThat(Refused.sentence(() -> CatalogDocument.read(good)))
                .startsWith(good + ":4:39: house limit criticalSpeedShareGood \"0.8\": is more than");
    }

    @Test
    void letsOneNameStandForPartsOfDifferentKinds() {
        Catalog catalog = parse(
                Samples.catalogOf("axles:\n  - {name: a, ratio: 41/10}\noverdrives:\n  - {name: a, ratio: 0.78}\n"));
        assertThat(catalog.find(PartKind.AXLE, "a")).isPresent();
        assertThat(catalog.find(PartKind.OVERDRIVE, "a")).isPresent();
    }

    @Test
    void readsPackedDocuments() throws IOException {
        Catalog catalog = CatalogDocument.readPacked("drivetrain/document", List.of("catalog.yaml"));
        assertThat(catalog.parts(PartKind.ENGINE)).hasSize(4);
        assertThat(catalog.find(PartKind.ENGINE, "i4-2.5-diesel").orElseThrow().origin())
                .isEqualTo("drivetrain/document/catalog.yaml:26");
        assertThatThrownBy(() -> CatalogDocument.readPacked("drivetrain/document", List.of("nowhere.yaml")))
                .isInstanceOf(FileNotFoundException.class);
    }

    @Test
    void leavesAMissingFileToItsCaller() {
        assertThatThrownBy(() -> CatalogDocument.read(folder.resolve("nowhere.yaml")))
                .isInstanceOf(NoSuchFileException.class);
    }

    @Test
    void readsTorqueCurvesBelowTheCatalogsFolderOnly() throws IOException {
        String engine = "engines:\n  - name: x\n    aspiration: natural\n    ignition: spark\n    rating: net\n"
                + "    measuredAt: crank\n    maximumSpeed: 5000 rpm\n    torqueCurveFile: ";
        file("curve.csv", "speed rpm,torque lb-ft\n1000,200\n2000,220\n3000,210\n");
        file("shelf/curves/curve.csv", "speed rpm,torque lb-ft\n1000,200\n2000,220\n3000,x\n");
        Files.createSymbolicLink(folder.resolve("shelf/link.csv"), folder.resolve("curve.csv"));
        for (String path : List.of(
                "../curve.csv",
                "curves/../../curve.csv",
                folder.resolve("curve.csv").toString(),
                "~/curve.csv",
                "..\\curve.csv",
                "c:curve.csv",
                "curves//curve.csv",
                ".hidden.csv",
                "curve.txt")) {
            Path catalog = file("shelf/shelf.yaml", Samples.catalogOf(engine + "'" + path + "'\n"));
            assertThat(Refused.sentence(() -> CatalogDocument.read(catalog)))
                    .startsWith(catalog + ":11:23: torqueCurveFile \"")
                    .contains("is not a file below the catalog's folder");
        }
        for (String path : List.of("link.csv", "nowhere.csv", "shelf.yaml/x.csv")) {
            Path catalog = file("shelf/shelf.yaml", Samples.catalogOf(engine + path + "\n"));
            assertThat(Refused.sentence(() -> CatalogDocument.read(catalog)))
                    .startsWith(catalog + ":11:22: torqueCurveFile \"" + path + "\": cannot be read");
        }
        Path catalog = file("shelf/shelf.yaml", Samples.catalogOf(engine + "curves/curve.csv\n"));
        assertThat(Refused.sentence(() -> CatalogDocument.read(catalog)))
                .startsWith(folder.resolve("shelf/curves/curve.csv") + ":4:6: torque curve \"x\": is not a number");
        assertThat(Refused.sentence(() -> parse(Samples.catalogOf(engine + "curve.csv\n"))))
                .contains("cannot be read");
    }
}
