package hotidle.answer.compare;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.OnsetPhrase;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.assess.Figures;
import hotidle.result.Solution;
import hotidle.result.Unsolved;
import hotidle.study.Comparison;
import hotidle.study.SpeedSweep;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** One line of a comparison: what it is called and what it says of a build at a duty point. */
record CompareRow(String label, Function<Comparison.BuildAtDuty, String> text) {

    /** What does not settle where no steady state was found; blank where one was. */
    static final CompareRow CULPRIT = new CompareRow(
            UnsolvedPhrase.CULPRIT,
            cell -> cell.outcome().unsolved().map(Unsolved::culprit).orElse(""));

    /** A figure. */
    static CompareRow figure(
            Quantity.UnitSystem units, String label, Quantity quantity, ToDoubleFunction<Figures> figure) {
        return known(units, label, quantity, figures -> OptionalDouble.of(figure.applyAsDouble(figures)));
    }

    /** A figure that a unit may not have. */
    static CompareRow known(
            Quantity.UnitSystem units, String label, Quantity quantity, Function<Figures, OptionalDouble> figure) {
        return new CompareRow(
                headed(units, label, quantity),
                cell -> cell.figures()
                        .map(figures -> quantity.number(units, figure.apply(figures)))
                        .orElse(UnsolvedPhrase.CELL));
    }

    /** What is read from the state itself; blank where it is not there. */
    static CompareRow reading(
            Quantity.UnitSystem units, String label, Quantity quantity, Function<Solution, OptionalDouble> reading) {
        return new CompareRow(
                headed(units, label, quantity),
                cell -> cell.outcome()
                        .state()
                        .map(reading)
                        .map(value -> value.isEmpty() ? "" : quantity.number(units, value))
                        .orElse(UnsolvedPhrase.CELL));
    }

    /** A word that the figures say. */
    static CompareRow word(String label, Function<Figures, String> word) {
        return new CompareRow(label, cell -> cell.figures().map(word).orElse(UnsolvedPhrase.CELL));
    }

    /** A speed from which something holds. */
    static CompareRow speed(Quantity.UnitSystem units, String label, Function<SpeedSweep, OptionalDouble> speed) {
        return new CompareRow(
                label + " [rpm]", cell -> new OnsetPhrase(units).cell(speed.apply(cell.sweep()), lowest(cell.sweep())));
    }

    /** The lowest speed searched [rev/s]. */
    static double lowest(SpeedSweep sweep) {
        return sweep.rising().get(0).conditions().speed();
    }

    static String headed(Quantity.UnitSystem units, String label, Quantity quantity) {
        return label + " [" + quantity.in(units).unit() + "]";
    }
}
