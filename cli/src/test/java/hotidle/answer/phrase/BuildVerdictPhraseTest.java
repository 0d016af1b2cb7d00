package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Margin;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a build comes to by its margins. */
class BuildVerdictPhraseTest {

    private static final double PSI = 6894.757293168;
    private static final double GPM = 3.785411784e-3 / 60;
    private static final Margin CLUTCH =
            Margin.of(Margin.Kind.APPLY, "low-clutch", 161 * PSI, 142 * PSI, Margin.Scale.PRESSURE);
    private static final Margin PUMP =
            Margin.of(Margin.Kind.REGULATION, "pump", 0.88 * GPM, 4.4 * GPM, Margin.Scale.FLOW);
    private static final BuildVerdictPhrase VERDICT = new BuildVerdictPhrase(UnitSystem.SHOP);

    @Test
    void aBuildHoldsIsCloseOrFails() {
        String limit = VERDICT.limit(CLUTCH, "stall");
        assertEquals(
                "restored: HOLDS. Least headroom: apply, holding (low-clutch) at stall: 161 psi, needs 142 psi (+13 %).",
                BuildVerdictPhrase.of(
                        "restored", Optional.empty(), Margin.Verdict.HOLDS, limit, Optional.empty(), false));
        assertTrue(BuildVerdictPhrase.of("x", Optional.empty(), Margin.Verdict.CLOSE, limit, Optional.empty(), false)
                .startsWith("x: NARROW. First limit: apply"));
        assertTrue(
                BuildVerdictPhrase.of("x", Optional.empty(), Margin.Verdict.FAILS, limit, Optional.of("stall"), false)
                        .endsWith(" Not known at stall: no steady state was found."));
    }

    @Test
    void aBuildWithALimitThatIsNotKnownHoldsAsFarAsIsKnownAndFailsAllTheSame() {
        String limit = VERDICT.limit(CLUTCH, "stall");
        assertTrue(BuildVerdictPhrase.of("x", Optional.empty(), Margin.Verdict.HOLDS, limit, Optional.empty(), true)
                .startsWith("x: HOLDS as far as is known. Least headroom: apply"));
        assertTrue(BuildVerdictPhrase.of("x", Optional.empty(), Margin.Verdict.CLOSE, limit, Optional.empty(), true)
                .startsWith("x: NARROW as far as is known. First limit: apply"));
        assertTrue(BuildVerdictPhrase.of("x", Optional.empty(), Margin.Verdict.FAILS, limit, Optional.empty(), true)
                .startsWith("x: FAILS. First limit: apply"));
    }

    @Test
    void aClutchThatDragsFailsABuildWhoseLimitsHold() {
        String drags = new ClutchPhrase(UnitSystem.SHOP).drags("overdrive", 50 * PSI, "stall", "first", 12 * PSI);
        String said = BuildVerdictPhrase.of(
                "x", Optional.of(drags), Margin.Verdict.HOLDS, VERDICT.limit(CLUTCH, "stall"), Optional.empty(), false);
        assertTrue(
                said.startsWith("x: FAILS. overdrive carries 50 psi at stall, though first does not apply it"), said);
        assertTrue(said.contains("drags and burns. Apart from that: HOLDS."), said);
        assertEquals("FAILS " + drags, ClutchPhrase.fails(drags));
        assertTrue(new ClutchPhrase(UnitSystem.METRIC)
                .leaks("low-clutch", 1.5e5)
                .startsWith("low-clutch is 1.50 bar below"));
    }

    @Test
    void aLineThatIsNotHeldIsToldWithWhatIsShortBecauseOfIt() {
        String said = VERDICT.pumpShort(
                PUMP, "hot-idle", 99 * PSI, 150 * PSI, false, List.of(Margin.Kind.LUBRICATION, Margin.Kind.COOLER));
        assertEquals(
                "regulation (pump) at hot-idle: line pressure is not held, 99 psi of the 150 psi commanded; with the line"
                        + " held at 150 psi the pump delivers 0.88 gpm where 4.40 gpm is needed (-80 %). Short because of"
                        + " that: lubrication, cooler.",
                said);
        String held = VERDICT.pumpShort(PUMP, "hot-idle", 150 * PSI, 150 * PSI, true, List.of());
        assertTrue(held.contains(": the pump has too little oil for all that hangs on the line; with"), held);
        assertFalse(held.contains("Short because"), held);
        String hardly = VERDICT.pumpShort(PUMP, "hot-idle", 103.6 * PSI, 104.4 * PSI, false, List.of());
        assertTrue(hardly.contains("not held, 103.6 psi of the 104.4 psi commanded"), hardly);
    }

    @Test
    void aBuildOfWhichNothingIsJudgedIsNotKnownOrHasNothingToJudge() {
        assertEquals(
                "x: NOT KNOWN. Not known at stall: no steady state was found.",
                BuildVerdictPhrase.nothingJudged("x", Optional.of("stall"), false));
        assertTrue(
                BuildVerdictPhrase.nothingJudged("x", Optional.empty(), false).contains("nothing to judge"));
        assertEquals("x: NOT KNOWN.", BuildVerdictPhrase.nothingJudged("x", Optional.empty(), true));
    }
}
