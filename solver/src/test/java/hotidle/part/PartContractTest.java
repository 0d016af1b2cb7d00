package hotidle.part;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The contract of every kind of part on a few draws: what the property tests ask in seconds, in a blink for mutation testing. */
class PartContractTest {

    private final PartContractPropertyTest contract = new PartContractPropertyTest();

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void whatEntersLeavesAndStreamsAreTheFlowsSolved(long seed) {
        contract.whatEntersAPartLeavesIt(seed);
        contract.streamsAreTheFlowsThatTheSolverSees(seed);
        contract.plainRestrictionsFlowBothWaysAlike(seed);
        contract.answersAreFiniteAtRestReversedAndExtreme(seed);
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18})
    void slopesAreTheDifferencesOfValues(long seed) {
        contract.slopesAreTheDifferencesOfValues(seed);
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23})
    void aLawTakenToAnotherSpeedIsTheLawSettledThere(long seed) {
        new SpeedContractPropertyTest().aLawTakenToAnotherSpeedIsTheLawSettledThere(seed);
    }
}
