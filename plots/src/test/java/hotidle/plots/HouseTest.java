package hotidle.plots;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
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
    void allChartsWereScanned() {
        assertTrue(CLASSES.size() >= 45, CLASSES.size() + " classes");
    }

    @Test
    void plotsKnowsPlainValuesAndItsTwoLibrariesOnly() {
        classes()
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        "hotidle.plots..",
                        "java..",
                        "javax.imageio..",
                        "javax.xml..",
                        "org.w3c.dom..",
                        "org.jfree..",
                        "org.eclipse.elk..",
                        "org.eclipse.emf..",
                        "org.apache.pdfbox..",
                        "de.rototor.pdfbox..",
                        "org.apache.batik..")
                .check(CLASSES);
    }

    @Test
    void nobodyOutsideSeesTheLibrariesThroughPlots() {
        DescribedPredicate<JavaClass> library =
                JavaClass.Predicates.resideInAnyPackage("org.jfree..", "org.apache.batik..");
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
