package hotidle.cli;

import hotidle.circuits.text.Dimension;
import hotidle.law.AirOrifice;
import hotidle.oil.OilAt;
import hotidle.study.AirStand;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** A stand that tests with air: what calibrated it, and what it read. */
final class StandOptions {

    /** No air is pressed into a bore at more (chosen) [Pa]. */
    private static final double MOST = 2e6;

    @Option(names = "--blocked", paramLabel = "READING", description = "what the stand reads with its port blocked")
    private String blocked;

    @Option(
            names = "--hole",
            paramLabel = "DIAMETER=READING",
            description =
                    "what it reads through a known sharp-edged hole, for example 1mm=5inHg; give it again for each."
                            + " Two calibration points are needed at least, the blocked port among them")
    private List<String> known = List.of();

    @Option(
            names = "--reading",
            paramLabel = "READING",
            required = true,
            description = "what it reads of the land; give it again for each, as before and after a repair")
    private List<String> readings = List.of();

    @Option(names = "--pressure", description = "readings are pressures above the room's. Default: vacuum, below it")
    private boolean pressed;

    @Option(
            names = "--room",
            paramLabel = "TEMPERATURE",
            defaultValue = "20degC",
            description = "temperature of room, stand and part. Default: ${DEFAULT-VALUE}")
    private String room;

    List<String> readings() {
        return readings;
    }

    /** Points that calibrated it. */
    int holes() {
        return known.size() + (blocked == null ? 0 : 1);
    }

    /** The stand; the room has the standard atmosphere (assumed). */
    AirStand calibrated() {
        double temperature = OptionValues.quantity("--room", room, Dimension.TEMPERATURE);
        if (!(temperature > 200 && temperature < 350)) {
            throw new WrongInputException("hotidle: --room " + room + " is no room's temperature\nmend: write 20degC");
        }
        List<AirStand.Calibration> points = new ArrayList<>();
        if (blocked != null) {
            points.add(new AirStand.Calibration(0, absolute("--blocked", blocked)));
        }
        for (String hole : known) {
            int equals = hole.indexOf('=');
            if (equals < 0) {
                throw new WrongInputException(
                        "hotidle: --hole " + hole + " has no reading\nmend: write --hole 1mm=5inHg, for example");
            }
            double diameter = OptionValues.quantity("--hole", hole.substring(0, equals), Dimension.LENGTH);
            if (!(diameter > 0 && diameter < 0.05)) {
                throw new WrongInputException(
                        "hotidle: --hole " + hole + ": a hole is above zero and below 50 mm wide");
            }
            points.add(new AirStand.Calibration(diameter, absolute("--hole", hole.substring(equals + 1))));
        }
        try {
            return AirStand.of(OilAt.STANDARD_ATMOSPHERE, temperature, AirOrifice.SHARP_EDGE, points);
        } catch (IllegalArgumentException wrong) {
            throw new WrongInputException("hotidle: the stand's calibration: " + wrong.getMessage()
                    + "\nmend: give --blocked and --hole DIAMETER=READING, or several --hole");
        }
    }

    /** The absolute pressure of a reading [Pa]. */
    double absolute(String option, String text) {
        double read = OptionValues.quantity(option, text, Dimension.PRESSURE);
        double ambient = OilAt.STANDARD_ATMOSPHERE;
        if (!(read >= 0) || read >= (pressed ? MOST : ambient)) {
            throw new WrongInputException("hotidle: " + option + " " + text + ": "
                    + (pressed ? "allowed is 0 to 20 bar" : "a vacuum is 0 to 29.9 inHg below the room's pressure"));
        }
        return pressed ? ambient + read : ambient - read;
    }
}
