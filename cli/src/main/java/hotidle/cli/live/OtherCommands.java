package hotidle.cli.live;

import hotidle.answer.format.Quantity;
import hotidle.answer.live.LiveFileRecord;
import hotidle.circuits.sheet.GaugeReadings;
import hotidle.study.Window;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;

/** What other commands do, where a page asks for it. */
public interface OtherCommands {

    /** Speeds over which a hub is searched, those of {@code margins} [rev/s]. */
    List<Double> searched(Transmission unit);

    /** The window of a build at the set pressures and speeds of {@code window}; {@code step} is run while it is searched. */
    Window window(Transmission unit, Window.Raised raised, Runnable step);

    /**
     * What {@code report} writes, a whole HTML file.
     *
     * @throws IllegalArgumentException where there can be none, with the reason
     */
    String report(AskedReport asked);

    /**
     * A report that a page asks for.
     *
     * @param changed  a circuit file with the build, where it is none of the circuit's
     * @param build    its name
     * @param units    in which it is written
     * @param notes    what it does not tell of the page
     * @param readings of the build; empty where nothing was read
     * @param sheet    name of the sheet of the readings
     */
    record AskedReport(
            Optional<LiveFileRecord> changed,
            String build,
            Quantity.UnitSystem units,
            List<String> notes,
            Optional<GaugeReadings> readings,
            String sheet) {
        public AskedReport {
            notes = List.copyOf(notes);
        }
    }
}
