package hotidle.answer.margins;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.ReadyCircuits;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Margin;
import hotidle.study.BuildVerdict;
import hotidle.study.JudgedBuild;
import hotidle.study.LineShort;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Too little commanded is told apart from too little oil. */
class SetTooLowTest {

    private static final List<Double> SPEEDS = List.of(10.0, 60.0);

    private static JudgedBuild judged(Transmission unit) {
        return JudgedBuild.study(List.of(unit), SPEEDS, () -> {}).get(0);
    }

    @Test
    void aClutchThatLacksPressureUnderALineThatIsHeldIsNoMatterOfOil() {
        JudgedBuild low = judged(SetPressure.of(ReadyCircuits.read("vane-six").unit(), 60 * SetPressure.PSI));
        BuildVerdict.FirstLimit first = low.verdict().first().orElseThrow();
        assertEquals(Margin.Kind.APPLY, first.margin().kind());
        assertEquals(Optional.empty(), first.shortage());
        LineShort line = first.line().orElseThrow();
        assertEquals(LineShort.Why.COMMANDED_TOO_LITTLE, line.why());
        assertTrue(line.line() >= line.set() && line.line() < first.margin().needed(), line.toString());
        String said = new MarginSentences(UnitSystem.SHOP).verdict("low", low.verdict());
        assertTrue(said.endsWith("too little for this torque."), said);
    }

    @Test
    void aPumpThatLacksOilIsToldAsBeforeAndWhatHoldsHasNoReason() {
        JudgedBuild worn =
                judged(ReadyCircuits.read("shuttle-five").adjustable("worn").unit());
        BuildVerdict.FirstLimit first = worn.verdict().first().orElseThrow();
        assertEquals(Margin.Kind.REGULATION, first.margin().kind());
        assertEquals(Optional.empty(), first.line());
        JudgedBuild fresh = judged(ReadyCircuits.read("vane-six").unit());
        assertEquals(Optional.empty(), fresh.verdict().first().orElseThrow().line());
    }
}
