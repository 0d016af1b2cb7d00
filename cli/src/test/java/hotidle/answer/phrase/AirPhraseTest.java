package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class AirPhraseTest {

    @Test
    void whatIsAskedNamesLandDropAndOil() {
        String said = AirPhrase.asked("bore-1", "vane-six", "100 psi", "6.02", "hot-idle", 3);
        assertTrue(said.startsWith("bore-1 of vane-six, tested with air on a stand that 3 holes calibrated"), said);
        assertTrue(said.contains("under 100 psi at 6.02 mPa.s (hot-idle)"), said);
        assertTrue(AirPhrase.hot("0.49 thou").contains("stand 0.49 thou further apart"));
        assertTrue(AirPhrase.past("0.5551 in").startsWith("* past its wear limit of 0.5551 in"));
        assertTrue(AirPhrase.onTheSheet("bore-1", "0.5512 in").contains("measured bore of bore-1"));
    }
}
