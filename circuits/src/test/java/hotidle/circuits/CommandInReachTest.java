package hotidle.circuits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Figures;
import hotidle.assess.Margin;
import hotidle.circuits.text.Problem;
import hotidle.circuits.text.ProblemCode;
import hotidle.study.Judgement;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A command that relief valve, slide or regulator keep out of reach is told when the file is read, and judged when it is solved. */
class CommandInReachTest {

    private static final double PSI = 6894.757293168361;

    private static ReadCircuit read(String circuit, String old, String other) {
        String text = Library.text(circuit).orElseThrow();
        assertTrue(text.contains(old), old);
        ReadCircuit read = CircuitReader.read(text.replace(old, other), "x.yaml");
        assertTrue(read.circuit().isPresent(), read.problems().toString());
        return read;
    }

    private static List<ProblemCode> said(ReadCircuit read) {
        return read.problems().stream().map(Problem::code).toList();
    }

    @Test
    void aReliefValveThatLiftsBelowTheCommandIsTold() {
        assertEquals(
                List.of(ProblemCode.COMMAND_ABOVE_RELIEF),
                said(read("shuttle-five", "cracking-pressure: 400 psi", "cracking-pressure: 140 psi")));
    }

    /** 700 mm² at the highest command of the table push no harder than the spring that is written here holds. */
    @Test
    void aSlideThatNoCommandedPressureMovesIsTold() {
        assertEquals(
                List.of(ProblemCode.COMMAND_BEYOND_SLIDE), said(read("vane-six", "preload: 160 N", "preload: 1600 N")));
    }

    @Test
    void anOpeningBeforeTheEdgeAtWhichTheSetPressureIsCountedIsTold() {
        List<ProblemCode> said = said(read("crescent-four", "edge: converter-feed", "edge: bypass"));
        assertTrue(said.contains(ProblemCode.COMMAND_BEFORE_EDGE), said.toString());
    }

    /** The margin of the relief valve is gone exactly where the valve has lifted. */
    @Test
    void aReliefValveHoldsItsMarginAsLongAsItIsShut() {
        DescribedCircuit low = read("crescent-four", "cracking-pressure: 330 psi", "cracking-pressure: 150 psi")
                .circuit()
                .orElseThrow();
        int open = 0;
        int shut = 0;
        for (Transmission unit : low.units().values()) {
            for (DutyPoint duty : unit.duties()) {
                Judgement judged = Judgement.of(unit, duty, List.of(duty.speed()));
                Margin margin = judged.margins().stream()
                        .filter(one -> one.kind() == Margin.Kind.RELIEF)
                        .findFirst()
                        .orElseThrow();
                assertEquals(150 * PSI, margin.needed(), 1e-6 * PSI);
                boolean lifted =
                        Figures.of(unit, judged.outcome().state().orElseThrow()).reliefOpen();
                assertEquals(lifted, margin.headroom() < 0, unit.build() + " at " + duty.name());
                open += lifted ? 1 : 0;
                shut += lifted ? 0 : 1;
            }
        }
        assertTrue(open >= 3 && shut >= 3, open + " open, " + shut + " shut");
    }
}
