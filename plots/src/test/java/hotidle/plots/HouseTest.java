package hotidle.plots;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** What depends on what. */
class HouseTest {
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("hotidle");

    @Test
    void plotsAndSolverWereScanned() {
        assertTrue(CLASSES.containPackage("hotidle.plots") && CLASSES.containPackage("hotidle.part"));
        assertTrue(CLASSES.size() >= 60, CLASSES.size() + " classes");
    }

    @Test
    void plotsDoesNotKnowCircuitsOrCommands() {
        noClasses()
                .that()
                .resideInAPackage("hotidle.plots..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("hotidle.circuits..", "hotidle.cli..")
                .check(CLASSES);
    }

    @Test
    void onlyPlotsKnowsTheChartLibrary() {
        noClasses()
                .that()
                .resideOutsideOfPackage("hotidle.plots..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.jfree..")
                .check(CLASSES);
    }

    @Test
    void nobodyOutsideSeesTheChartLibraryThroughPlots() {
        DescribedPredicate<JavaClass> library = JavaClass.Predicates.resideInAPackage("org.jfree..");
        methods()
                .that()
                .arePublic()
                .and()
                .areDeclaredInClassesThat()
                .arePublic()
                .and()
                .areDeclaredInClassesThat()
                .resideInAPackage("hotidle.plots")
                .should()
                .notHaveRawReturnType(library)
                .check(CLASSES);
    }

    @Test
    void nothingPrintsOrExits() {
        noClasses()
                .that()
                .resideInAPackage("hotidle.plots..")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .callMethod(System.class, "exit", int.class)
                .check(CLASSES);
    }
}
