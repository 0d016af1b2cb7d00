package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.ReadyCircuits;
import hotidle.circuits.DescribedCircuit;
import hotidle.transmission.Transmission;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which builds --build names, in commands that show several and in those that look at one. */
class BuildsOptionTest {

    private static final DescribedCircuit RIG = ReadyCircuits.read("crescent-four");

    private static List<String> named(String... words) {
        return Options.of(new BuildsOption(), words).units(RIG).stream()
                .map(Transmission::build)
                .toList();
    }

    @Test
    void withoutANameTheCircuitsFirstBuildIsTaken() {
        String first = RIG.builds().get(0).name();
        assertEquals(List.of(first), named());
        assertEquals(first, Options.of(new OneBuildOption()).of(RIG).unit().build());
    }

    @Test
    void buildsStandInTheOrderInWhichTheyWereNamedAndEachOnce() {
        assertEquals(List.of("worn", "fresh"), named("--build", "worn", "--build", "fresh", "--build", "worn"));
    }

    @Test
    void theSizesOfTheSameBuildsCanBeChanged() {
        BuildsOption two = Options.of(new BuildsOption(), "--build", "worn", "--build", "fresh");
        assertEquals(
                List.of("worn", "fresh"),
                two.adjustable(RIG).stream().map(one -> one.unit().build()).toList());
        assertEquals(List.of("worn", "fresh"), two.named());
    }

    @Test
    void aBuildThatIsNotInTheCircuitIsRefusedWithTheNearestName() {
        WrongInputException several = assertThrows(WrongInputException.class, () -> named("--build", "wron"));
        assertTrue(several.getMessage().contains("worn"), several.getMessage());
        OneBuildOption one = Options.of(new OneBuildOption(), "--build", "wron");
        assertEquals(
                several.getMessage(),
                assertThrows(WrongInputException.class, () -> one.of(RIG)).getMessage());
    }

    @Test
    void moreBuildsThanStayReadableAreRefusedByWhoeverShowsThem() {
        assertDoesNotThrow(() -> BuildsOption.atMost(2, List.of(1, 2), "--plot"));
        WrongInputException wrong =
                assertThrows(WrongInputException.class, () -> BuildsOption.atMost(2, List.of(1, 2, 3), "--plot"));
        assertEquals("hotidle: --plot shows 2 builds at most\nmend: name fewer builds", wrong.getMessage());
    }
}
