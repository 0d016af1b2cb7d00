package hotidle.cli.live;

import hotidle.answer.check.CheckAnswer;
import hotidle.answer.draw.DrawnState;
import hotidle.answer.format.Quantity;
import hotidle.answer.live.LiveDrawingRecord;
import hotidle.answer.live.LiveFileRecord;
import hotidle.answer.live.WritingOfferRecord;
import hotidle.answer.live.WrittenCircuitRecord;
import hotidle.answer.phrase.CountPhrase;
import hotidle.answer.phrase.WrittenCircuitPhrase;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.circuits.ReadCircuit;
import hotidle.circuits.check.NotJudged;
import hotidle.circuits.text.Problem;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A circuit file that is written on the page: checked and drawn as it comes, and kept nowhere. It can be based on ready circuits, on no
 * file of this machine: whatever is asked, none is read.
 */
final class WrittenCircuit {

    /** What the file is called in messages. */
    static final String NAME = "circuit.yaml";

    /** Longer files are for an editor and {@code hotidle check} (chosen) [characters]. */
    static final int LONGEST = 128 * 1024;

    /** What an empty field begins with: a build of one's own on a ready circuit. */
    static final String START = """
            # A circuit that stands on a ready one, with a build of its own. Any circuit file may stand here.
            circuit: my-unit
            based-on: shuttle-five

            builds:
              as-measured:
                about: new but for a worn regulator bore, set higher
                set-pressure: 165 psi
                because: to hold more torque
                changes:
                  regulator.bore: {to: measured, because: worn bore}
            """;

    private final LiveUnit unit;
    private final Layouts layouts;

    WrittenCircuit(LiveUnit unit, Layouts layouts) {
        this.unit = unit;
        this.layouts = layouts;
    }

    /** What may be asked, by name. */
    Map<String, LiveAnswers.Answerer> answerers() {
        Map<String, LiveAnswers.Answerer> all = new LinkedHashMap<>();
        all.put("write-offer", (question, step) -> new WritingOfferRecord(Library.names(), START));
        all.put("write-begin", (question, step) -> begin(question.text()));
        all.put("write-check", (question, step) -> checked(question.text(), units(question)));
        all.put("write-drawing", (question, step) -> drawing(question.text(), units(question), step));
        return all;
    }

    private Quantity.UnitSystem units(LiveQuestion question) {
        return question.system().orElse(unit.units());
    }

    /** A ready circuit to begin with. */
    private static LiveFileRecord begin(String name) {
        return Library.text(name)
                .map(text -> new LiveFileRecord(name + ".yaml", text))
                .orElseThrow(() -> new WrongStateException(WrittenCircuitPhrase.notReady(name, Library.names())));
    }

    private static ReadCircuit read(String text) {
        if (text.length() > LONGEST) {
            throw new WrongStateException(WrittenCircuitPhrase.tooLong(LONGEST / 1024));
        }
        return CircuitReader.read(text, NAME);
    }

    private static WrittenCircuitRecord checked(String text, Quantity.UnitSystem units) {
        ReadCircuit read = read(text);
        String summary = read.circuit()
                .map(circuit ->
                        new CheckAnswer(circuit, read.problems().size(), NotJudged.of(circuit.unit()), units).screen())
                .orElseGet(() -> CountPhrase.of(
                        read.problems().stream()
                                .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                                .count(),
                        "error"));
        return WrittenCircuitRecord.of(NAME, read.problems(), read.circuit().isPresent(), summary);
    }

    /** Without pressures: as it is joined. */
    private LiveDrawingRecord drawing(String text, Quantity.UnitSystem units, Runnable step) {
        DescribedCircuit circuit =
                read(text).circuit().orElseThrow(() -> new WrongStateException(WrittenCircuitPhrase.NOT_DRAWN));
        return LiveDrawingRecord.of(
                LiveDrawing.joined(layouts, units, circuit, step), DrawnState.range(circuit.unit(), Optional.empty()));
    }
}
