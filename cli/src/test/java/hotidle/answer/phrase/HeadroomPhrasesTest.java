package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Margin;
import hotidle.transmission.WearSize;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Headroom, the limits that have it, and how a size moves it. */
class HeadroomPhrasesTest {

    @Test
    void headroomIsASignedShareAndAboveTenTimesItIsAmple() {
        assertEquals("+12 %", HeadroomPhrase.of(0.12));
        assertEquals("-35 %", HeadroomPhrase.of(-0.354));
        assertEquals("+999 %", HeadroomPhrase.of(9.99));
        assertEquals("ample", HeadroomPhrase.of(10));
    }

    @Test
    void aLimitThatOnlyJustFailsIsNotToldAsZero() {
        assertEquals("-0.3 %", HeadroomPhrase.of(-0.0031));
        assertEquals("+0.04 %", HeadroomPhrase.of(0.0004));
        assertEquals("+0 %", HeadroomPhrase.of(0));
    }

    @Test
    void headroomThatIsNotKnownIsNoNumber() {
        assertEquals("-", HeadroomPhrase.of(Double.NEGATIVE_INFINITY));
    }

    @Test
    void onlyALimitThatFailsShouts() {
        assertEquals("FAILS", HeadroomPhrase.verdict(Margin.Verdict.FAILS));
        for (Margin.Verdict verdict : Margin.Verdict.values()) {
            boolean shouts = HeadroomPhrase.verdict(verdict).matches("[A-Z ]+");
            assertEquals(verdict == Margin.Verdict.FAILS, shouts, verdict.word());
        }
    }

    @Test
    void everyLimitHasANameOfItsOwn() {
        Set<String> names = new HashSet<>();
        for (Margin.Kind kind : Margin.Kind.values()) {
            assertTrue(names.add(LimitPhrase.label(kind)), LimitPhrase.label(kind));
        }
    }

    @Test
    void aLimitIsNamedWithItsPartAndDuty() {
        assertEquals(
                "lubrication (lube-rear) at hot-idle",
                LimitPhrase.at(Margin.Kind.LUBRICATION, "lube-rear", "hot-idle"));
        assertEquals(
                "apply, slipping (low-clutch), stall",
                LimitPhrase.listed(Margin.Kind.APPLY_SLIDING, "low-clutch", "stall"));
    }

    @Test
    void aShopChangesASizeByAThousandthAndALaboratoryByAHundredth() {
        assertEquals("0.001 in", SensitivityPhrase.step(WearSize.SizeKind.LENGTH, UnitSystem.SHOP));
        assertEquals("0.0001 in2", SensitivityPhrase.step(WearSize.SizeKind.AREA, UnitSystem.SHOP));
        for (UnitSystem units : List.of(UnitSystem.METRIC, UnitSystem.SI)) {
            assertEquals("0.01 mm", SensitivityPhrase.step(WearSize.SizeKind.LENGTH, units));
            assertEquals("0.1 mm2", SensitivityPhrase.step(WearSize.SizeKind.AREA, units));
        }
    }

    @Test
    void aPointIsAPerCentOfHeadroomAndAStarMarksASlopeToOneSide() {
        assertEquals("-3.21", SensitivityPhrase.points(-0.03214, false));
        assertEquals("+0.50 *", SensitivityPhrase.points(0.005, true));
        assertTrue(SensitivityPhrase.ONE_SIDED.startsWith("*"));
    }

    @Test
    void theRankingSaysWhatItRanksByAndAtWhichSpeedThatBinds() {
        assertEquals(
                "worn: least headroom -32 %, regulation (pump) at hot-idle. A size made larger by 0.001 in (an area by"
                        + " 0.0001 in2) changes it by so many points of headroom:",
                SensitivityPhrase.ranked("worn", "-32 %", "regulation (pump) at hot-idle", "", UnitSystem.SHOP));
        assertTrue(SensitivityPhrase.ranked("worn", "+5 %", "hub film (hub) at stall", "1500 rpm", UnitSystem.METRIC)
                .contains("hub film (hub) at stall, at 1500 rpm. A size made larger by 0.01 mm"));
    }

    @Test
    void oneSizeMovesAndSeveralMove() {
        assertEquals("1 more size moves it by 0.05 points or less.", SensitivityPhrase.more(1, 5e-4));
        assertEquals("12 more sizes move it by 0.31 points or less each.", SensitivityPhrase.more(12, 0.0031));
    }

    @Test
    void whatIsLeftOutAndWhatIsUnsolvedIsSaidAndNothingElse() {
        assertEquals("", SensitivityPhrase.leftOut(List.of(), List.of()));
        assertEquals(
                " Not counted: relief valve, shut. Not known at stall, cruise: no steady state was found.",
                SensitivityPhrase.leftOut(List.of("relief valve, shut"), List.of("stall", "cruise")));
        assertEquals(
                "rig: no limit is judged or known, so nothing can be ranked.", SensitivityPhrase.nothingRanked("rig"));
    }
}
