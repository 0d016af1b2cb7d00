package hotidle.circuits;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

class ArchitectureTest {

    private static final JavaClasses CIRCUITS = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("hotidle.circuits");

    @Test
    void theRulesLookAtSomething() {
        assertTrue(CIRCUITS.size() > 60, CIRCUITS.size() + " classes");
    }

    @Test
    void circuitsKnowTheSolverAndNeitherPlotsNorTheCommandLine() {
        classes()
                .that()
                .resideOutsideOfPackages("hotidle.circuits.create..", "hotidle.circuits.sheet..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        "hotidle.circuits..",
                        "hotidle.geartrain..",
                        "hotidle.film..",
                        "hotidle.part..",
                        "hotidle.network..",
                        // a fault is written as sizes are, and read into what is laid over a unit
                        "hotidle.fault..",
                        "hotidle.transmission..",
                        "hotidle.oil..",
                        "hotidle.law..",
                        "java..",
                        "org.snakeyaml..",
                        "org.apache.commons.csv..")
                .check(CIRCUITS);
        // a sheet of gauge readings is read into what the study of them asks for, and written from what it expects; an
        // air reading of a bore
        // becomes the bore that the study of such tests finds
        classes()
                .that()
                .resideInAPackage("hotidle.circuits.sheet..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        "hotidle.circuits..",
                        "hotidle.study.gauge..",
                        "hotidle.study",
                        "hotidle.oil..",
                        "hotidle.law..",
                        "hotidle.part..",
                        "hotidle.network..",
                        "hotidle.transmission..",
                        "java..",
                        "org.apache.commons.csv..")
                .check(CIRCUITS);
        // a new unit's file says which assumed sizes move its verdict most, and so asks a study; gaps are scaled as
        // they stand hot, in oil
        classes()
                .that()
                .resideInAPackage("hotidle.circuits.create..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        "hotidle.circuits..",
                        "hotidle.study..",
                        "hotidle.assess..",
                        "hotidle.part..",
                        "hotidle.network..",
                        "hotidle.oil..",
                        "hotidle.transmission..",
                        "java..",
                        "org.snakeyaml..",
                        "org.apache.commons.csv..")
                .check(CIRCUITS);
    }

    @Test
    void yamlStaysInTextAndFilesInTheLibrary() {
        noClasses()
                .that()
                .resideOutsideOfPackage("hotidle.circuits.text")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.snakeyaml..")
                .check(CIRCUITS);
        noClasses()
                .that()
                .resideOutsideOfPackage("hotidle.circuits.sheet")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.apache.commons.csv..")
                .check(CIRCUITS);
        noClasses()
                .that()
                .doNotHaveSimpleName("Library")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("java.nio.file..")
                .check(CIRCUITS);
    }

    @Test
    void textKnowsNothingOfHydraulics() {
        noClasses()
                .that()
                .resideInAnyPackage("hotidle.circuits.text", "hotidle.circuits.shape")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("hotidle.part..", "hotidle.network..", "hotidle.transmission..")
                .check(CIRCUITS);
    }

    @Test
    void packagesDependOnEachOtherInOneDirection() {
        slices().matching("hotidle.circuits.(*)..").should().beFreeOfCycles().check(CIRCUITS);
        noClasses()
                .that()
                .resideInAnyPackage(
                        "hotidle.circuits.text",
                        "hotidle.circuits.shape",
                        "hotidle.circuits.kind",
                        "hotidle.circuits.check",
                        "hotidle.circuits.section",
                        "hotidle.circuits.sheet",
                        "hotidle.circuits.assemble")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("hotidle.circuits")
                .check(CIRCUITS);
    }
}
