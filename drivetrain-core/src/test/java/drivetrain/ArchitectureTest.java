package drivetrain;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.library.Architectures;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.NullMarked;

/** Holds the layers of the library: a package uses only packages of the rows above its own. */
@AnalyzeClasses(packages = "drivetrain", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    /** Rows from bottom to top; packages of one row are blind to each other. */
    private static final List<List<String>> ROWS = List.of(
            List.of("refusal"),
            List.of("quantity"),
            List.of("finding"),
            List.of("table"),
            List.of("atmosphere", "tire", "engine", "gearing", "road", "driveshaft", "fuel"),
            List.of("combination"),
            List.of("assessment"),
            List.of("planner"),
            List.of("comparison"),
            List.of("document", "report"));

    @ArchTest
    static final ArchRule usesOnlyTheRowsAbove = layers();

    @ArchTest
    static final ArchRule hasNoPackageCycles =
            slices().matching("drivetrain.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule keepsJacksonInDocument = noClasses()
            .that()
            .resideOutsideOfPackage("drivetrain.document..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("tools.jackson..", "com.fasterxml..", "org.snakeyaml..");

    @ArchTest
    static final ArchRule keepsCommonsMathInRoomsAssessmentAndComparison = noClasses()
            .that()
            .resideInAnyPackage(
                    "drivetrain.refusal..",
                    "drivetrain.quantity..",
                    "drivetrain.finding..",
                    "drivetrain.table..",
                    "drivetrain.combination..",
                    "drivetrain.planner..",
                    "drivetrain.document..",
                    "drivetrain.report..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.apache.commons.math3..");

    @ArchTest
    static final ArchRule dependsOnNothingElse = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "drivetrain..",
                    "java.io..",
                    "java.lang..",
                    "java.math..",
                    "java.net..",
                    "java.nio..",
                    "java.text..",
                    "java.time..",
                    "java.util..",
                    "org.jspecify.annotations..",
                    "org.apache.commons.math3..",
                    "tools.jackson..",
                    "org.snakeyaml.engine..",
                    "");

    @ArchTest
    static final ArchRule logsNothing =
            noClasses().should().dependOnClassesThat().resideInAPackage("java.util.logging..");

    @ArchTest
    static final ArchRule printsNothing = NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

    @ArchTest
    static final ArchRule namesClassesByWhatTheyAre =
            noClasses().should().haveNameMatching(".*(Util|Utils|Helper|Helpers|Manager|Impl)(\\$.*)?");

    @ArchTest
    static final ArchRule namesPackagesByWhatTheyHold = noClasses()
            .should()
            .resideInAnyPackage(
                    "..util..", "..common..", "..helper..", "..manager..", "..impl..", "..service..", "..model..");

    @ArchTest
    static final ArchRule keepsPublicTypesImmutable = fields().that()
            .areDeclaredInClassesThat()
            .arePublic()
            .and()
            .areDeclaredInClassesThat()
            .haveSimpleNameNotEndingWith("Builder")
            .should()
            .beFinal();

    @ArchTest
    static final ArchRule exposesOnlyConstants =
            fields().that().arePublic().should().beStatic().andShould().beFinal();

    @ArchTest
    static final ArchRule marksEveryPackageNullMarked = classes().should(resideInANullMarkedPackage());

    private static ArchRule layers() {
        LayeredArchitecture architecture =
                Architectures.layeredArchitecture().consideringOnlyDependenciesInAnyPackage("drivetrain..");
        for (List<String> row : ROWS) {
            for (String layer : row) {
                architecture = architecture.optionalLayer(layer).definedBy("drivetrain." + layer + "..");
            }
        }
        List<String> above = new ArrayList<>();
        for (List<String> row : ROWS) {
            for (String layer : row) {
                architecture = above.isEmpty()
                        ? architecture.whereLayer(layer).mayNotAccessAnyLayer()
                        : architecture.whereLayer(layer).mayOnlyAccessLayers(above.toArray(String[]::new));
            }
            above.addAll(row);
        }
        return architecture.ensureAllClassesAreContainedInArchitecture();
    }

    private static ArchCondition<JavaClass> resideInANullMarkedPackage() {
        return new ArchCondition<>("reside in a package annotated @NullMarked") {
            @Override
            public void check(JavaClass javaClass, ConditionEvents events) {
                boolean marked = javaClass.getPackage().isAnnotatedWith(NullMarked.class);
                events.add(new SimpleConditionEvent(
                        javaClass, marked, javaClass.getName() + " resides in " + javaClass.getPackageName()));
            }
        };
    }
}
