package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.circuits.kind.Kind;
import hotidle.circuits.single.LibraryMaterials;
import hotidle.plots.LineChart;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The chart of a part over one of its numbers. */
final class PartChart {

    private PartChart() {}

    /**
     * Draws it.
     *
     * @throws WrongInputException where the part cannot be had at one of the values, or the file cannot be written
     */
    static void write(
            Path file,
            Kind kind,
            List<String> words,
            PartVary vary,
            PartDuty.Options options,
            LibraryMaterials stock,
            Quantity.UnitSystem units) {
        List<LineChart.Point> points = new ArrayList<>();
        boolean film = kind.carriesLoad();
        Quantity quantity = film ? Quantity.FILM : Quantity.FLOW;
        PartAnswer last = null;
        for (BigDecimal value : vary.values()) {
            last = PartAnswer.of(
                    PartCommand.read(kind, vary.words(words, value), stock), vary.duty(options, value), stock);
            points.add(new LineChart.Point(value.doubleValue(), quantity.value(units, number(last, film))));
        }
        if (points.stream().allMatch(point -> Double.isNaN(point.y()))) {
            throw new WrongInputException("hotidle part: there is nothing to draw: "
                    + (film ? "metal touches at every value" : PartHelp.a(kind.word()) + " passes no oil"));
        }
        String what = film ? "least film" : "flow";
        LineChart chart = new LineChart(
                (film ? "Least film" : "Flow") + " of " + PartHelp.a(kind.word()) + " against " + vary.name(),
                subtitle(words, vary, last, units),
                vary.axis(),
                what + " [" + quantity.in(units).unit() + "]",
                film ? "metal contact" : "unsolved",
                points);
        PictureFile.write(List.of(chart), file);
    }

    private static double number(PartAnswer answer, boolean film) {
        if (answer.outcome().state().isEmpty()) {
            return Double.NaN;
        }
        return film ? answer.numbers().getOrDefault("film_m", Double.NaN) : answer.flow();
    }

    private static String subtitle(List<String> words, PartVary vary, PartAnswer last, Quantity.UnitSystem units) {
        String key = vary.of() == PartVary.Of.CLEARANCE ? "bore" : vary.name();
        List<String> kept =
                words.stream().filter(word -> !word.startsWith(key + "=")).toList();
        List<String> said = new ArrayList<>(kept.isEmpty() ? List.of() : List.of(String.join(" ", kept)));
        if (!vary.name().equals("drop")) {
            Double drop = last.numbersIfSolved().get("pressure_drop_pa");
            if (drop != null && drop != 0) {
                said.add("pressure drop " + Quantity.PRESSURE.with(units, drop));
            }
            last.duty().pressures().forEach((port, pressure) -> {
                if (drop == null && pressure != 0) {
                    said.add(Quantity.PRESSURE.with(units, pressure) + " at " + port);
                }
            });
        }
        String oil = last.duty().oil().name();
        said.add(
                vary.name().equals("temperature")
                        ? oil
                        : oil + " at "
                                + Quantity.TEMPERATURE.with(units, last.duty().temperature()));
        return String.join("; ", said);
    }
}
