package drivetrain.repl;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures;

/** Holds the three layers of the shell, and the terminal library in the last of them. */
@AnalyzeClasses(packages = "drivetrain.repl", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    @ArchTest
    static final ArchRule usesOnlyTheLayersAbove = Architectures.layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("drivetrain.repl..")
            .optionalLayer("session")
            .definedBy("drivetrain.repl.session..")
            .optionalLayer("command")
            .definedBy("drivetrain.repl.command..")
            .optionalLayer("shell")
            .definedBy("drivetrain.repl.shell..")
            .whereLayer("session")
            .mayNotAccessAnyLayer()
            .whereLayer("command")
            .mayOnlyAccessLayers("session")
            .whereLayer("shell")
            .mayOnlyAccessLayers("session", "command")
            .ensureAllClassesAreContainedInArchitecture();

    @ArchTest
    static final ArchRule hasNoPackageCycles =
            slices().matching("drivetrain.repl.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule keepsTheTerminalInShell = noClasses()
            .that()
            .resideOutsideOfPackage("drivetrain.repl.shell..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.jline..");

    @ArchTest
    static final ArchRule dependsOnNothingElse = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("drivetrain..", "java..", "org.jline..", "org.jspecify.annotations..", "");

    @ArchTest
    static final ArchRule printsOnlyFromShell =
            noClasses().that().resideOutsideOfPackage("drivetrain.repl.shell..").should(ACCESS_STANDARD_STREAMS);

    @ArchTest
    static final ArchRule namesClassesByWhatTheyAre =
            noClasses().should().haveNameMatching(".*(Util|Utils|Helper|Helpers|Manager|Impl)(\\$.*)?");
}
