package hotidle.cli;

import hotidle.circuits.text.Dimension;
import hotidle.oil.Oil;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import picocli.CommandLine.Option;

/** Options that say at which duty, temperatures and set pressure a unit is swept. */
final class SweptDuty {

    /** Limits of the option, those of a circuit file and a hair: sump temperature [K]. */
    private static final double COLDEST = Oil.ZERO_CELSIUS - 60.001;

    private static final double HOTTEST = Oil.ZERO_CELSIUS + 250.001;

    @Option(
            names = "--temperature",
            paramLabel = "TEMPERATURE",
            description = "sump temperature, for example 95degC; other regions keep their distance from it."
                    + " Give it again for more. Default: the duty's own")
    private List<String> temperatures = List.of();

    @Option(
            names = "--duty",
            paramLabel = "CONDITION",
            description = "driving condition whose temperatures, torque and lockup state are used. Default: the first")
    private String duty;

    @Option(names = "--range", paramLabel = "RANGE", description = "range engaged. Default: the duty's own")
    private String range;

    /** Whether several temperatures are asked for. */
    boolean warm() {
        return temperatures().size() > 1;
    }

    /** The duty asked for, at each temperature asked for. */
    List<DutyPoint> duties(Transmission unit) {
        DutyPoint named = duty == null ? unit.duties().get(0) : OptionValues.duty(unit, duty);
        DutyPoint base = range == null ? named : OptionValues.inRange(unit, named, range);
        List<Double> asked = temperatures();
        return asked.isEmpty()
                ? List.of(base)
                : asked.stream().map(sump -> base.withSump(sump)).toList();
    }

    /** The temperatures asked for [K], each once. */
    private List<Double> temperatures() {
        return temperatures.stream().map(SweptDuty::temperature).distinct().toList();
    }

    private static double temperature(String text) {
        double asked = OptionValues.quantity("--temperature", text, Dimension.TEMPERATURE);
        if (asked < COLDEST) {
            throw new WrongInputException(
                    "hotidle: --temperature " + text + ": a temperature must lie between -60 and 250 degC");
        }
        return OptionValues.within("--temperature", text, asked, HOTTEST, "-60 to 250 degC");
    }
}
