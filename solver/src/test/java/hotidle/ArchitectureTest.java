package hotidle;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import hotidle.part.Part;
import java.util.Arrays;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Dependencies run one way, and the solver stays a library of physics. */
class ArchitectureTest {

    private static final JavaClasses SOLVER = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("hotidle");

    @Test
    void theRulesSeeTheWholeSolver() {
        assertTrue(SOLVER.size() > 80, SOLVER.size() + " classes");
    }

    @Test
    void packagesDoNotUseEachOtherInCircles() {
        slices().matching("hotidle.(*)..").should().beFreeOfCycles().check(SOLVER);
    }

    @Test
    void theSolverKnowsNoFileNoChartAndNoConsole() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "java.io..",
                        "java.nio.file..",
                        "java.util.logging..",
                        "java.awt..",
                        "javax.swing..",
                        "org.jfree..",
                        "picocli..",
                        "hotidle.circuits..",
                        "hotidle.plots..",
                        "hotidle.cli..")
                .check(SOLVER);
    }

    @Test
    void linearAlgebraStaysWithNewtonTheFilmHeatAndGears() {
        noClasses()
                .that(not(resideInAPackage("hotidle.newton..")
                        .or(resideInAPackage("hotidle.film.."))
                        .or(resideInAPackage("hotidle.heat.."))
                        .or(resideInAPackage("hotidle.geartrain.."))))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.ejml..")
                .check(SOLVER);
    }

    /** A state is assessed from its numbers: whatever has to be solved for it is a study. */
    @Test
    void whatAStateMeansIsFoundWithoutSolving() {
        noClasses()
                .that()
                .resideInAPackage("hotidle.assess..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("hotidle.newton..", "hotidle.study..")
                .check(SOLVER);
    }

    @Test
    void partsAreRecords() {
        assertTrue(Arrays.stream(Part.class.getPermittedSubclasses()).allMatch(Class::isRecord));
    }

    /** Written anew at each evaluation, so that Newton's steps make no objects; nobody keeps them. */
    private static final Set<String> WORK_SPACE = Set.of("hotidle.law.Flow", "hotidle.part.MeteringEdge");

    @Test
    void whatIsDescribedAndWhatIsFoundNeverChanges() {
        fields().that()
                .areDeclaredInClassesThat()
                .resideInAnyPackage(
                        "hotidle.oil..",
                        "hotidle.law..",
                        "hotidle.network..",
                        "hotidle.result..",
                        "hotidle.assess..",
                        "hotidle.transmission..",
                        "hotidle.geartrain..",
                        "hotidle.part..")
                .and()
                .areDeclaredInClassesThat(new DescribedPredicate<>("are no work space of the inner loop") {
                    @Override
                    public boolean test(JavaClass type) {
                        return !WORK_SPACE.contains(type.getName());
                    }
                })
                .should()
                .beFinal()
                .check(SOLVER);
    }

    @Test
    void namesAreThoseOfTheTrade() {
        classes()
                .should()
                .haveNameNotMatching(".*(Manager|Helper|Util|Utils|Impl|Abstract|Base)")
                .check(SOLVER);
    }

    @Test
    void nothingInTheSolverIsGeneric() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.lang.RuntimeException")
                .check(SOLVER);
    }
}
