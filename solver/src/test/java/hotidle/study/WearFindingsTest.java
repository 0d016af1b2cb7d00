package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Bores of 14 mm as new with a written limit 100 µm above; made values, nothing is solved. */
class WearFindingsTest {

    private static final double NEW = 0.014;
    private static final Judgement.Key CLUTCH = new Judgement.Key("stall", Margin.Kind.APPLY, "low-clutch");

    /** A fit worn by some micrometres that takes the clutch away at others. */
    private static Wear.WornFit bore(String part, double worn, double gone, boolean written) {
        WearSize size = new WearSize(
                part,
                "bore",
                WearSize.SizeKind.LENGTH,
                NEW + worn * 1e-6,
                NEW,
                written ? OptionalDouble.of(NEW + 100e-6) : OptionalDouble.empty(),
                OptionalDouble.empty());
        return new Wear.WornFit(
                size, Optional.of(NEW + gone * 1e-6), List.of(CLUTCH), NEW + 1e-3, OptionalDouble.empty());
    }

    private static Wear.WornFit ample(String part) {
        Wear.WornFit fit = bore(part, 0, 1, true);
        return new Wear.WornFit(fit.dimension(), Optional.empty(), List.of(), NEW + 1e-3, OptionalDouble.empty());
    }

    private static WearFindings findings(List<Judgement.Key> already, Wear.WornFit... fits) {
        return WearFindings.of(new Wear(9, already, List.of(fits), Optional.empty(), List.of(), List.of(), List.of()));
    }

    private static List<String> parts(List<Wear.WornFit> fits) {
        return fits.stream().map(fit -> fit.dimension().part()).toList();
    }

    /** The primary may wear 30 µm more, the secondary 60 though its limit goes at the smaller size. */
    @Test
    void theTightestFitIsTheOneWithLeastWearLeft() {
        WearFindings found = findings(List.of(), bore("secondary", 0, 60, true), bore("primary", 60, 90, true));
        assertEquals(List.of("primary", "secondary"), parts(found.tightest()));
    }

    /** What is left of scores is an area, which is not set against a length. */
    @Test
    void scoresStandBehindBores() {
        WearSize area = new WearSize(
                "scored",
                "orifice-slip-area",
                WearSize.SizeKind.AREA,
                0,
                0,
                OptionalDouble.empty(),
                OptionalDouble.empty());
        Wear.WornFit scores = new Wear.WornFit(area, Optional.of(1e-9), List.of(CLUTCH), 1e-6, OptionalDouble.empty());
        assertEquals(
                List.of("primary", "scored"),
                parts(findings(List.of(), scores, bore("primary", 0, 90, true)).tightest()));
    }

    @Test
    void aWrittenLimitIsTooLooseWhereTheClutchGoesBeforeIt() {
        WearFindings found = findings(
                List.of(),
                bore("primary", 0, 80, true),
                bore("secondary", 0, 40, true),
                bore("manual", 0, 150, true),
                bore("no-limit", 0, 10, false));
        assertEquals(List.of("secondary", "primary"), parts(found.tooLoose()), "the earliest on its way first");
        assertEquals(3, found.written());
    }

    @Test
    void aFitThatTakesNothingAwayIsNotTightButItsLimitIsWritten() {
        WearFindings found = findings(List.of(), ample("plate"));
        assertTrue(found.tightest().isEmpty());
        assertTrue(found.tooLoose().isEmpty());
        assertEquals(1, found.written());
    }

    @Test
    void aBuildThatFailsAsItIsHasNoWearLeft() {
        assertEquals(CLUTCH, findings(List.of(CLUTCH)).fails().orElseThrow());
        assertTrue(findings(List.of()).fails().isEmpty());
    }
}
