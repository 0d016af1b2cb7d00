package hotidle.cli.live;

import hotidle.answer.format.Quantity;
import hotidle.answer.live.LiveFileRecord;
import hotidle.answer.phrase.LivePhrase;
import hotidle.circuits.WrittenBuild;
import hotidle.circuits.sheet.SheetWriter;
import hotidle.transmission.Adjustable;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a page has set, as files that the commands read. */
record LiveFiles(LiveUnit unit) {

    /** A measurement sheet with every size that is not as new; what it leaves blank is new. */
    LiveFileRecord sheet(AskedState state, Quantity.UnitSystem units) {
        Map<String, Double> measured = new LinkedHashMap<>();
        for (WearSize size : unit.adjustable(state).dimensions()) {
            if (!size.isNew()) {
                measured.put(size.name(), size.value());
            }
        }
        SheetWriter.LengthUnit unitOfSheet =
                units == Quantity.UnitSystem.SHOP ? SheetWriter.LengthUnit.INCH : SheetWriter.LengthUnit.MM;
        return new LiveFileRecord(
                unit.circuit().name() + "-sheet.csv", unit.circuit().measurementSheet(unitOfSheet, measured));
    }

    /** A circuit file with one build, based on the circuit. */
    LiveFileRecord build(AskedState state) {
        Adjustable build = unit.written(state);
        Adjustable made = unit.adjustable(state.withoutFaults());
        Optional<String> on = Optional.of(build.unit().build())
                .filter(name -> unit.circuit().sheet().filter(name::equals).isEmpty());
        List<WearSize> changed = made.dimensions().stream()
                .filter(size -> on.isPresent() ? !same(build, size) : !size.isNew())
                .toList();
        String text = WrittenBuild.yaml(
                unit.circuit().name(),
                unit.source(),
                on,
                changed,
                state.setPressurePa(),
                LivePhrase.SET_HERE,
                notes(state));
        return new LiveFileRecord(unit.circuit().name() + "-changed.yaml", text);
    }

    /** What a written build does not have of a page. */
    static List<String> notes(AskedState state) {
        List<String> notes = new ArrayList<>();
        if (!state.jobs().isEmpty()) {
            notes.add(LivePhrase.jobsNotWritten(state.jobs()));
        }
        if (!state.faults().isEmpty()) {
            notes.add(LivePhrase.faultsNotWritten(state.faults()));
        }
        return notes;
    }

    private static boolean same(Adjustable build, WearSize size) {
        return build.dimension(size.name())
                .filter(before -> before.value() == size.value())
                .isPresent();
    }
}
