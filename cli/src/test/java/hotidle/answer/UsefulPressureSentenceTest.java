package hotidle.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Margin;
import hotidle.study.Judgement;
import hotidle.study.TorqueHeld.Carrier;
import hotidle.study.UsefulPressure;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is said of the highest set pressure that still buys torque, and of limits that are not known. */
class UsefulPressureSentenceTest {

    private static final Carrier SHAFT = new Carrier("input-shaft", false, 600, false);

    private static UsefulPressure crossing(OptionalDouble pressure, String... unsolved) {
        return new UsefulPressure(Optional.of(SHAFT), "first", pressure, 4e5, 28e5, List.of(unsolved));
    }

    private static final UsefulPressure UNRATED =
            new UsefulPressure(Optional.empty(), "", OptionalDouble.empty(), 4e5, 28e5, List.of());

    private static String said(UsefulPressure useful) {
        return UsefulPressureSentence.of(UnitSystem.METRIC, "worn", useful).orElseThrow();
    }

    private static String brief(UsefulPressure useful) {
        return UsefulPressureSentence.brief(UnitSystem.METRIC, "worn", useful).orElseThrow();
    }

    @Test
    void whereNothingHasARatingNothingIsSaid() {
        assertTrue(UsefulPressureSentence.of(UnitSystem.SHOP, "worn", UNRATED).isEmpty());
        assertTrue(
                UsefulPressureSentence.brief(UnitSystem.SHOP, "worn", UNRATED).isEmpty());
    }

    @Test
    void fromTheCrossingOnTheShaftGivesFirst() {
        UsefulPressure useful = crossing(OptionalDouble.of(16e5));
        assertTrue(
                said(useful)
                        .startsWith("worn: more torque is held up to 16.00 bar set pressure; from there input-shaft"
                                + " gives first, in first at 600 N.m"),
                said(useful));
        assertEquals("worn: above 16.00 bar set pressure input-shaft gives first; more buys no torque.", brief(useful));
    }

    @Test
    void whereClutchesGiveFirstAtEveryPressureTriedTheHighestIsTold() {
        UsefulPressure useful = crossing(OptionalDouble.empty());
        assertTrue(
                said(useful).contains("28.00 bar, the highest set pressure tried: clutches give first"), said(useful));
        assertEquals("worn: clutches give first up to 28.00 bar, the highest set pressure tried.", brief(useful));
    }

    @Test
    void whereTheShaftGivesFirstAtTheLowestPressureAllIsLost() {
        UsefulPressure useful = crossing(OptionalDouble.of(4e5));
        assertFalse(useful.crosses(), "there is no crossing within what was tried");
        assertTrue(said(useful).contains("from 4.00 bar set pressure, the lowest tried, on input-shaft"), said(useful));
        assertEquals("worn: input-shaft gives first at every set pressure tried.", brief(useful));
    }

    @Test
    void aStateThatWasNotFoundIsSaidToCountAsNotHolding() {
        assertTrue(said(crossing(OptionalDouble.of(16e5), "third"))
                .endsWith("No steady state was found at some pressures in third, which counts as not holding."));
    }

    @Test
    void jsonHasTheCrossingAndWhatWasTried() {
        JsonNode json = Json.tree(UsefulPressureRecord.of(crossing(OptionalDouble.of(16e5))));
        assertEquals("input-shaft", json.get("link").textValue());
        assertEquals(16e5, json.get("first_from_pa").doubleValue(), 1e-9);
        JsonNode none = Json.tree(UsefulPressureRecord.of(UNRATED));
        assertTrue(none.get("link").isNull());
        assertTrue(none.get("engine_torque_n_m").isNull());
        assertEquals(28e5, none.get("highest_tried_pa").doubleValue(), 1e-9);
    }

    @Test
    void aLimitIsNamedByDutyMarginAndPart() {
        Judgement.Key film = new Judgement.Key("stall", Margin.Kind.FILM, "hub");
        assertEquals(new LimitRecord("stall", Margin.Kind.FILM.word(), "hub"), LimitRecord.of(film));
        assertEquals(2, LimitRecord.of(List.of(film, film)).size());
        assertEquals("", NotKnown.said(List.of()));
        assertTrue(NotKnown.said(List.of(film)).contains("stall"));
        assertTrue(NotKnown.brief(List.of(film)).length()
                <= NotKnown.said(List.of(film)).length());
    }
}
