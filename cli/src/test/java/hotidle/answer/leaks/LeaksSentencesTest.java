package hotidle.answer.leaks;

import static hotidle.answer.leaks.MadeRepairs.bore;
import static hotidle.answer.leaks.MadeRepairs.effect;
import static hotidle.answer.leaks.MadeRepairs.repairs;
import static hotidle.answer.leaks.MadeRepairs.step;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.OilBudget;
import hotidle.network.Group;
import hotidle.study.RepairFindings;
import hotidle.study.Repairs;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Sentences of made repairs: lines in bar under a set pressure of 10 bar, flows in L/min. */
class LeaksSentencesTest {

    private static final Repairs.Effect LOW = effect(7, 2, 15);
    private static final OilBudget BUDGET = new OilBudget(
            20 / 6e4,
            List.of(
                    new OilBudget.Path("pump", "face", Group.PUMP, OilBudget.Fate.SLIP, 10 / 6e4),
                    new OilBudget.Path("bore", "", Group.VALVE_BODY, OilBudget.Fate.LEAK, 5 / 6e4),
                    new OilBudget.Path("lube", "", Group.LUBE, OilBudget.Fate.USED, 5 / 6e4)));

    private static List<String> said(Repairs repairs, double lubeNeeded) {
        return new LeaksSentences(
                        UnitSystem.METRIC,
                        MadeRepairs.names(Map.of("pump", "first chamber")),
                        BUDGET,
                        repairs,
                        RepairFindings.of(repairs, true, 15),
                        lubeNeeded / 6e4,
                        true)
                .all();
    }

    private static final Repairs.Step FACE = step(effect(9, 2.5, 10), bore("pump", 40));
    private static final Repairs.Step REGULATOR = step(effect(8.8, 1.5, 11), bore("regulator", 60));
    private static final Repairs.Step BOTH = step(effect(10, 3, 8), bore("regulator", 60));

    @Test
    void slipAndLeaksAreWhatIsLostAndOilInUseIsNot() {
        assertEquals(
                "Of the 20.0 L/min that the pump displaces, 15.0 L/min is lost (75 %): 10.0 L/min slips back inside the"
                        + " pump, 5.0 L/min leaks outside it.",
                said(repairs(LOW, List.of(), List.of()), 0).get(0));
    }

    @Test
    void withEveryFitAsNewIsToldWhereThatWasSolved() {
        Repairs repairs = new Repairs(LOW, List.of(), List.of(), Optional.of(effect(10.2, 3, 6)));
        assertTrue(said(repairs, 0)
                .get(0)
                .endsWith("With every fit as new it would lose 6.0 L/min, with the line at 10.20 bar."));
    }

    @Test
    void lubricationIsToldOnlyWhereADutyNeedsSome() {
        assertEquals(
                "Lubrication gets 2.0 L/min; it needs 2.8 L/min here.",
                said(repairs(LOW, List.of(), List.of()), 2.8).get(1));
        assertEquals(1, said(repairs(LOW, List.of(), List.of()), 0).size());
    }

    @Test
    void theBestRepairIsAJobWithWhatItWins() {
        List<String> said = said(repairs(LOW, List.of(FACE, REGULATOR), List.of()), 0);
        assertEquals(
                "The single size that wins most: pump.bore (first chamber) back to 14.000 mm, line 7.00 bar to 9.00 bar."
                        + " Nearly as much: regulator.bore, to 8.80 bar.",
                said.get(1));
        assertTrue(said.get(2).startsWith("regulator.bore done alone leaves the lubrication LESS oil"), said.get(2));
    }

    @Test
    void onceTheLineIsHeldTheBestRepairServesWhatIsShortOrSavesOil() {
        Repairs.Effect held = effect(10, 2, 15);
        Repairs.Step more = step(served(1), bore("pump", 40));
        String lube = said(repairs(served(0.6), List.of(more), List.of()), 0).get(1);
        assertTrue(lube.endsWith("what is served least gets 60 % of its need to 100 % of its need."), lube);
        String oil = said(repairs(held, List.of(step(effect(10, 2, 12), bore("pump", 40))), List.of()), 0)
                .get(1);
        assertTrue(oil.endsWith("oil lost 15.0 L/min to 12.0 L/min."), oil);
    }

    private static Repairs.Effect served(double least) {
        return new Repairs.Effect(
                10e5, OptionalDouble.of(10e5), true, 2 / 6e4, 15 / 6e4, List.of(), least, OptionalDouble.empty());
    }

    @Test
    void theRepairsThatItTakesToHoldTheLineAreNamedInOrder() {
        List<String> said = said(repairs(LOW, List.of(), List.of(FACE, BOTH)), 0);
        assertTrue(
                said.get(1)
                        .startsWith("The set pressure is held here after 2 repairs: pump.bore (first chamber),"
                                + " regulator.bore."),
                said.get(1));
    }

    @Test
    void aLineThatNoneHoldsStandsWhereTheLastOneLeavesIt() {
        assertEquals(
                "After the one repair listed the line stands at 9.00 bar, still below the set pressure.",
                said(repairs(LOW, List.of(), List.of(FACE)), 0).get(1));
    }
}
