package hotidle.answer.wear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.format.Json;
import hotidle.assess.Margin;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.study.Judgement;
import hotidle.study.Wear;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WearAnswerTest {

    private static final List<WearSize> WEARING =
            Wear.fits(CircuitReader.read(Library.text("crescent-four").orElseThrow(), "crescent-four.yaml")
                    .circuit()
                    .orElseThrow()
                    .adjustable("worn"));
    private static final Judgement.Key COOLER = new Judgement.Key("hot-idle", Margin.Kind.COOLER, "cooler");
    private static final WearSize FIRST = WEARING.get(0);

    private static WearAnswer answer(int held, List<Wear.WornFit> fits, Optional<Wear.Together> together) {
        return new WearAnswer("rig", "", "bench", WEARING, new Wear(held, List.of(), fits, together, List.of()));
    }

    private static Wear.WornFit gone(double further) {
        return new Wear.WornFit(FIRST, Optional.of(FIRST.value() + further), List.of(COOLER), FIRST.value() + 1e-3);
    }

    @Test
    void theWearThatIsLeftIsToldInThousandthsOfAnInch() {
        String screen = answer(1, List.of(gone(50.8e-6)), Optional.empty()).screen();
        assertTrue(screen.contains("2.00  cooler (cooler), hot-idle"), screen);
    }

    @Test
    void aFitThatTakesNothingAwayIsNamedBeneathTheTable() {
        Wear.WornFit harmless = new Wear.WornFit(FIRST, Optional.empty(), List.of(), FIRST.value() + 1e-3);
        WearAnswer answer = answer(1, List.of(harmless), Optional.empty());
        assertTrue(answer.screen().contains("No fit alone takes a limit away."));
        assertTrue(answer.screen().replaceAll("\\s+", " ").contains("allowance further: " + FIRST.name()));
        assertTrue(answer.csv().contains(",none,-,-,"), answer.csv());
        assertTrue(Json.tree(answer.json()).at("/builds/0/fits/0/gone_at").isNull());
    }

    @Test
    void whereNoLimitHoldsNoWearIsSaidToTakeOneAway() {
        String screen = answer(0, List.of(gone(1e-4)), Optional.empty()).screen();
        assertTrue(screen.contains("no limit holds"), screen);
        assertFalse(screen.contains("first limit gone"), screen);
    }

    @Test
    void allTogetherStandInTheRecordOnlyWhereLimitsAreWritten() {
        JsonNode without =
                Json.tree(answer(1, List.of(), Optional.empty()).json()).at("/builds/0");
        assertFalse(without.has("together"));
        Wear.Together all = new Wear.Together(Optional.of(0.5), List.of(COOLER), List.of(), 8);
        JsonNode with = Json.tree(answer(1, List.of(), Optional.of(all)).json()).at("/builds/0/together");
        assertEquals(0.5, with.get("share_of_written_limits").doubleValue());
        assertEquals("cooler", with.at("/first_gone/0/margin").textValue());
    }
}
