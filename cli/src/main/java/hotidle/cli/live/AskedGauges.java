package hotidle.cli.live;

import hotidle.circuits.sheet.WrittenReadings;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Gauges as a page asks for them: what is set while they are read, and what was read.
 *
 * @param range            engaged; none: that of the driving condition looked at
 * @param engineSpeedRpm   empty: that of the driving condition, as the page has it
 * @param sumpTemperatureC the same
 * @param commandedPa      line pressure commanded; empty: what the driving condition without load commands
 * @param readings         as written, by the columns of a sheet of readings
 * @param file             name of the sheet that they come from; none where they were typed in
 * @param sheet            text of a sheet that is to be taken over; none where there is none
 */
record AskedGauges(
        String range,
        OptionalDouble engineSpeedRpm,
        OptionalDouble sumpTemperatureC,
        OptionalDouble commandedPa,
        List<Map<String, String>> readings,
        String file,
        String sheet) {

    private static final int LONGEST_NAME = 200;

    AskedGauges {
        engineSpeedRpm = engineSpeedRpm == null ? OptionalDouble.empty() : engineSpeedRpm;
        sumpTemperatureC = sumpTemperatureC == null ? OptionalDouble.empty() : sumpTemperatureC;
        commandedPa = commandedPa == null ? OptionalDouble.empty() : commandedPa;
        readings = readings == null ? List.of() : new WrittenReadings(readings).rows();
        if (file != null && file.length() > LONGEST_NAME) {
            throw new IllegalArgumentException("a file's name has at most " + LONGEST_NAME + " letters");
        }
    }

    /** As in the driving condition, nothing read yet. */
    static AskedGauges asDriven() {
        return new AskedGauges(
                null, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), List.of(), null, null);
    }

    WrittenReadings written() {
        return new WrittenReadings(readings);
    }
}
