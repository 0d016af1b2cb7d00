package hotidle.cli;

import hotidle.circuits.text.Dimension;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.stream.Stream;

/** Set pressures to try, as written behind --try. */
final class SetPressures {

    private SetPressures() {}

    /** Those tried where none are asked for. */
    static final String USUAL = "60..400/20psi";

    /**
     * In Pa, rising.
     *
     * @throws WrongInputException where they are fewer than two, or not above zero
     */
    static List<Double> of(String tried) {
        List<Double> pressures = OptionValues.series("--try", tried, Dimension.PRESSURE);
        if (pressures.size() < 2 || pressures.get(0) <= 0) {
            throw new WrongInputException("hotidle: --try " + tried
                    + ": at least two pressures above zero are needed, since it is asked which of them hold"
                    + "\nmend: write --try " + USUAL
                    + ", for example; what a build does at one: hotidle margins CIRCUIT --set 205psi");
        }
        return pressures;
    }

    /**
     * The same, begun at the least that all of some units can be set to, in whole psi, where they were to begin below that.
     *
     * @throws WrongInputException where fewer than two are left
     */
    static List<Double> of(String tried, List<Transmission> units) {
        List<Double> pressures = of(tried);
        double least = Math.ceil(units.stream()
                                .mapToDouble(unit -> SetPressure.lowest(unit, SetPressure.By.COMMAND_AND_SPRING))
                                .max()
                                .orElseThrow()
                        / SetPressure.PSI)
                * SetPressure.PSI;
        if (least <= pressures.get(0)) {
            return pressures;
        }
        List<Double> left = Stream.concat(Stream.of(least), pressures.stream().filter(pressure -> pressure > least))
                .toList();
        if (left.size() < 2) {
            throw new WrongInputException(
                    "hotidle: --try " + tried + ": " + units.get(0).circuit()
                            + " cannot be set so low\nwhy:  throttle pressure alone holds " + SetPressure.told(least)
                            + " without a spring\nmend: write --try with a highest pressure above that");
        }
        return left;
    }
}
