package hotidle.cli;

import hotidle.circuits.text.Dimension;
import hotidle.oil.Oil;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.List;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Options that say at which duty, temperatures and set pressure a unit is swept. */
final class SweptDuty {

    /** Limits of the options, those of a circuit file and a hair: set pressure [Pa], sump temperature [K]. */
    private static final double LEAST_SET = SetPressure.PSI * (1 - 1e-7);

    private static final double MOST_SET = 5000 * SetPressure.PSI * (1 + 1e-7);
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

    @Option(
            names = "--set",
            paramLabel = "PRESSURE",
            description = "highest set pressure in the forward ranges, for example 240psi: scales the command"
                    + " and solves the regulator's spring for it. Default: as the build has it")
    private String set;

    @Mixin
    private SetBy setBy;

    /** Whether a set pressure is asked for. */
    boolean setAsked() {
        return set != null;
    }

    /** Whether several temperatures are asked for. */
    boolean warm() {
        return temperatures().size() > 1;
    }

    /** The unit with the set pressure asked for. */
    Transmission at(Transmission unit) {
        return set == null ? unit : setBy.at(unit, setPressure(), set);
    }

    private double setPressure() {
        double asked = OptionValues.quantity("--set", set, Dimension.PRESSURE);
        if (asked < LEAST_SET) {
            throw new WrongInputException("hotidle: --set " + set + ": a set pressure must lie between 1 and 5000 psi");
        }
        return OptionValues.within("--set", set, asked, MOST_SET, "1 to 5000 psi");
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
