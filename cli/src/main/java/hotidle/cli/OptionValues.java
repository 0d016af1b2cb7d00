package hotidle.cli;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/** Reads what a user chose on the command line. */
final class OptionValues {

    private OptionValues() {}

    /** A quantity such as 240psi, in SI. */
    static double quantity(String option, String text, Dimension dimension) {
        Units.Amount amount = Units.read(text, dimension);
        if (!amount.good()) {
            throw wrong(option, text, amount);
        }
        return amount.si();
    }

    private static WrongInputException wrong(String option, String text, Units.Amount amount) {
        return new WrongInputException("hotidle: " + option + " " + text + ", " + amount.wrong() + "\nmend: "
                + amount.remedy().behind(option));
    }

    /** A value that is not above a limit. */
    static double within(String option, String text, double value, double most, String allowed) {
        if (value > most) {
            throw new WrongInputException("hotidle: " + option + " " + text + ": allowed is " + allowed);
        }
        return value;
    }

    /** A series such as 500..3500/50rpm, in SI. */
    static List<Double> series(String option, String text, Dimension dimension) {
        List<Double> values = anySeries(option, text, dimension);
        if (dimension == Dimension.SPEED && values.get(0) < 0) {
            throw new WrongInputException("hotidle: " + option + " " + text
                    + ": a speed is not below zero; an engine turns one way\nmend: write " + option
                    + " 500..3500/50rpm, for example");
        }
        return values;
    }

    private static List<Double> anySeries(String option, String text, Dimension dimension) {
        if (!text.contains("..")) {
            return List.of(quantity(option, text, dimension));
        }
        try {
            return Units.series(text, dimension);
        } catch (IllegalArgumentException e) {
            throw new WrongInputException("hotidle: " + option + " " + text + " is no series\nmend: write " + option
                    + (dimension == Dimension.SPEED ? " 500..3500/50rpm" : " " + SetPressures.USUAL)
                    + ": first and last value, then the step with its unit");
        }
    }

    /** What {@code --speed} says where the hub is searched; the step of the default follows. */
    static final String SEARCHED_SPEEDS =
            "engine speeds searched for the hub's least film and largest load, for example 600..4000/50rpm."
                    + " Default: from the slowest driving condition to 4000rpm in steps of ";

    /** No engine idles below this: 400 rpm (assumed) [rev/s]. */
    private static final double SLOWEST = 400 / 60.0;

    /** Beyond this a film only thickens: 4000 rpm (assumed) [rev/s]. */
    private static final double FASTEST = 4000 / 60.0;

    /**
     * Engine speeds over which the hub is searched: those given, or from the slowest duty point to the fastest or 4000 rpm, since a
     * film at a speed at which the unit never runs is no reason to fail it.
     *
     * @param step between them, where none are given [rev/s]
     */
    static List<Double> searched(String text, Transmission unit, double step) {
        if (text != null) {
            return series("--speed", text, Dimension.SPEED);
        }
        DoubleSummaryStatistics duties =
                unit.duties().stream().mapToDouble(DutyPoint::speed).summaryStatistics();
        double first = Math.max(duties.getMin(), SLOWEST);
        double last = Math.max(duties.getMax(), FASTEST);
        return DoubleStream.iterate(first, speed -> speed <= last, speed -> speed + step)
                .boxed()
                .toList();
    }

    /** The duty of a name. */
    static DutyPoint duty(Transmission unit, String name) {
        return unit.duty(name)
                .orElseThrow(
                        () -> new WrongInputException("hotidle: " + unit.circuit() + " has no driving condition " + name
                                + "\ndriving conditions: "
                                + unit.duties().stream().map(DutyPoint::name).collect(Collectors.joining(", "))));
    }

    /** The slowest duty. */
    static DutyPoint slowest(Transmission unit) {
        return unit.duties().stream()
                .min(Comparator.comparingDouble(DutyPoint::speed))
                .orElseThrow(() -> new WrongInputException(
                        "hotidle: " + unit.circuit() + " has no driving condition to take\nmend: add one under duty:"));
    }

    /** The duty with another range. */
    static DutyPoint inRange(Transmission unit, DutyPoint duty, String range) {
        if (unit.range(range).isEmpty()) {
            throw new WrongInputException("hotidle: " + unit.circuit() + " has no range " + range + "\nranges: "
                    + unit.ranges().stream().map(Range::name).collect(Collectors.joining(", ")));
        }
        return duty.inRange(range);
    }
}
