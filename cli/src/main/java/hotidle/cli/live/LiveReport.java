package hotidle.cli.live;

import hotidle.answer.format.Quantity;
import hotidle.answer.live.LiveFileRecord;
import hotidle.answer.phrase.LivePhrase;
import hotidle.circuits.WrittenBuild;
import hotidle.circuits.sheet.GaugeReadings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The report on what a page has set: that of the build as written, or of a file with what was changed. */
record LiveReport(LiveUnit unit, LiveFiles files, LiveGauges gauges, OtherCommands commands) {

    LiveFileRecord file(LiveQuestion question, Quantity.UnitSystem units) {
        AskedState state = question.state();
        boolean changed = state.setPressurePa().isPresent()
                || !state.sizes().isEmpty()
                || !state.jobs().isEmpty();
        Optional<LiveFileRecord> file = changed ? Optional.of(files.build(state)) : Optional.empty();
        String build = changed ? WrittenBuild.NAME : unit.build(state);
        List<String> notes = new ArrayList<>(LiveFiles.notes(state));
        if (state.engineSpeedRpm().isPresent() || state.sumpTemperatureC().isPresent()) {
            notes.add(LivePhrase.DRIVEN_AS_WRITTEN);
        }
        Optional<GaugeReadings> read = gauges.readings(question);
        String text = commands.report(
                new OtherCommands.AskedReport(file, build, units, notes, read, LiveGauges.sheet(question)));
        return new LiveFileRecord(unit.circuit().name() + "-report.html", text);
    }
}
