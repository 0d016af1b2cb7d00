package hotidle.cli;

import hotidle.circuits.text.Dimension;
import java.util.List;

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
}
