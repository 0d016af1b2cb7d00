package hotidle.cli;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** The whole program, one direction: cli uses circuits and plots, both use the solver, those two do not see each other. */
class ArchitectureTest {

    private static final JavaClasses ALL = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("hotidle");

    private static final String[] SOLVER = {
        "hotidle.oil..",
        "hotidle.law..",
        "hotidle.film..",
        "hotidle.part..",
        "hotidle.network..",
        "hotidle.newton..",
        "hotidle.result..",
        "hotidle.transmission..",
        "hotidle.assess..",
        "hotidle.heat..",
        "hotidle.geartrain..",
        "hotidle.fault..",
        "hotidle.study.."
    };

    @Test
    void theRulesSeeTheWholeProgram() {
        assertTrue(ALL.size() > 180, ALL.size() + " classes");
    }

    @Test
    void dependenciesRunOneWay() {
        layeredArchitecture()
                .consideringAllDependencies()
                .layer("cli")
                .definedBy("hotidle.cli..")
                .layer("answer")
                .definedBy("hotidle.answer..")
                .layer("circuits")
                .definedBy("hotidle.circuits..")
                .layer("plots")
                .definedBy("hotidle.plots..")
                .layer("solver")
                .definedBy(SOLVER)
                .whereLayer("cli")
                .mayNotBeAccessedByAnyLayer()
                .whereLayer("answer")
                .mayOnlyBeAccessedByLayers("cli")
                .whereLayer("circuits")
                .mayOnlyBeAccessedByLayers("cli", "answer")
                .whereLayer("plots")
                .mayOnlyBeAccessedByLayers("cli", "answer")
                .whereLayer("solver")
                .mayOnlyBeAccessedByLayers("cli", "answer", "circuits", "plots")
                .check(ALL);
    }

    @Test
    void onlyTheCliPrintsAndExits() {
        noClasses()
                .that()
                .resideOutsideOfPackage("hotidle.cli..")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .callMethod(System.class, "exit", int.class)
                .check(ALL);
    }

    @Test
    void answersNeitherReadOptionsNorFilesNorSolve() {
        noClasses()
                .that()
                .resideInAPackage("hotidle.answer..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("picocli..", "java.nio.file..", "hotidle.newton..", "hotidle.cli..")
                .orShould()
                .dependOnClassesThat()
                .belongToAnyOf(
                        java.io.File.class,
                        java.io.InputStream.class,
                        java.io.OutputStream.class,
                        java.io.Reader.class,
                        java.io.Writer.class)
                .check(ALL);
    }

    /** What was solved is handed in; a study begins by a static method, the values of an enum are none. */
    @Test
    void answersBeginNoStudy() {
        noClasses()
                .that()
                .resideInAPackage("hotidle.answer..")
                .should()
                .callMethodWhere(new DescribedPredicate<JavaMethodCall>("a study is begun") {
                    @Override
                    public boolean test(JavaMethodCall call) {
                        return call.getTargetOwner().getPackageName().startsWith("hotidle.study")
                                && !call.getTargetOwner().isEnum()
                                && call.getTarget()
                                        .resolveMember()
                                        .map(method -> method.getModifiers().contains(JavaModifier.STATIC))
                                        .orElse(false);
                    }
                })
                .check(ALL);
    }

    @Test
    void aPhraseTakesValuesAndNeverAState() {
        noClasses()
                .that()
                .resideInAPackage("hotidle.answer.phrase..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("hotidle.result..", "hotidle.network..")
                .orShould()
                .dependOnClassesThat()
                .areAssignableTo(hotidle.transmission.Transmission.class)
                .check(ALL);
    }

    /** A phrase takes values: numbers, names, enums. */
    @Test
    void aPhraseNeverSeesAState() {
        noClasses()
                .that()
                .resideInAPackage("hotidle.answer.phrase..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("hotidle.result..", "hotidle.network..", "hotidle.study..")
                .orShould()
                .dependOnClassesThat()
                .belongToAnyOf(hotidle.transmission.Transmission.class, hotidle.transmission.DutyPoint.class)
                .check(ALL);
    }

    @Test
    void onlyTheSolverSolves() {
        noClasses()
                .that()
                .resideInAnyPackage("hotidle.cli..", "hotidle.answer..", "hotidle.plots..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("hotidle.newton..")
                .check(ALL);
    }

    @Test
    void picturesKnowNothingOfOil() {
        noClasses()
                .that()
                .resideInAPackage("hotidle.plots..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(SOLVER)
                .orShould()
                .dependOnClassesThat()
                .resideInAPackage("hotidle.circuits..")
                .check(ALL);
    }

    /** Layout takes long to load: no other command may. */
    @Test
    void onlyDrawAndReportLayOut() {
        noClasses()
                .that()
                .resideOutsideOfPackages("hotidle.plots.scheme..", "hotidle.answer.draw..")
                .and()
                .doNotHaveSimpleName("DrawCommand")
                .and()
                .doNotHaveSimpleName("ReportDrawing")
                .and()
                .doNotHaveSimpleName("LiveDrawing")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("hotidle.plots.scheme..")
                .check(ALL);
    }

    @Test
    void librariesStayWhereTheyBelong() {
        noClasses()
                .that()
                .resideOutsideOfPackage("hotidle.plots..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.apache.batik..")
                .check(ALL);
        noClasses()
                .that()
                .resideOutsideOfPackage("hotidle.plots..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.jfree..")
                .check(ALL);
        noClasses()
                .that()
                .resideOutsideOfPackage("hotidle.plots.scheme..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.eclipse.elk..", "org.eclipse.emf..")
                .check(ALL);
        noClasses()
                .that()
                .resideOutsideOfPackage("hotidle.plots..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.apache.pdfbox..", "de.rototor..")
                .check(ALL);
        noClasses()
                .that()
                .resideOutsideOfPackage("hotidle.cli..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("picocli..")
                .check(ALL);
        noClasses()
                .that()
                .resideOutsideOfPackages("hotidle.cli..", "hotidle.answer..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("com.fasterxml..")
                .check(ALL);
        noClasses()
                .that()
                .resideOutsideOfPackage("hotidle.cli.page..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("com.github.mustachejava..")
                .check(ALL);
        noClasses()
                .that()
                .resideOutsideOfPackage("hotidle.cli.live..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("com.sun.net.httpserver..")
                .check(ALL);
        noClasses()
                .that()
                .resideOutsideOfPackage("hotidle.circuits..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.snakeyaml..")
                .check(ALL);
    }
}
