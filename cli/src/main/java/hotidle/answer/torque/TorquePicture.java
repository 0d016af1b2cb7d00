package hotidle.answer.torque;

import hotidle.answer.UsefulPressureSentence;
import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.TorquePicturePhrase;
import hotidle.assess.Margin;
import hotidle.plots.LineChart;
import hotidle.plots.LinesChart;
import hotidle.study.Judgement;
import hotidle.study.TorqueByPressure;
import hotidle.study.TorqueHeld.Carrier;
import hotidle.study.UsefulPressure;
import hotidle.study.Window;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What a build holds against set pressure, as a chart.
 *
 * @param build  its name
 * @param set    set pressure that it has [Pa]
 * @param held   at each set pressure tried
 * @param useful up to which more is held
 * @param window which set pressures its limits allow
 */
public record TorquePicture(
        Quantity.UnitSystem units,
        String build,
        double set,
        TorqueByPressure held,
        UsefulPressure useful,
        Window window) {

    /** A chart of each build of which a torque is known; a link looks the same in all of them. */
    public static List<LinesChart> charts(String circuit, List<TorquePicture> builds) {
        List<String> names = first(builds);
        return builds.stream()
                .filter(one -> one.longest() > 0)
                .map(one -> one.chart(circuit, names))
                .toList();
    }

    private LinesChart chart(String circuit, List<String> names) {
        TorquePicturePhrase phrase = new TorquePicturePhrase(units);
        List<LinesChart.AtPlace> places = new ArrayList<>(List.of(new LinesChart.AtPlace(psi(set), phrase.now(set))));
        places.addAll(ends(phrase));
        return new LinesChart(
                UsefulPressureSentence.brief(units, build, useful)
                        .map(TorquePicturePhrase::heading)
                        .orElse(TorquePicturePhrase.title(build)),
                TorquePicturePhrase.subtitle(circuit),
                TorquePicturePhrase.across(Quantity.PRESSURE.in(units).unit()),
                TorquePicturePhrase.axis(Quantity.TORQUE.in(units).unit()),
                TorquePicturePhrase.MISSING,
                names.stream()
                        .filter(this::has)
                        .map(name -> line(name, names.indexOf(name)))
                        .toList(),
                mark(phrase),
                places);
    }

    /** The links that give first at some pressure in some build, then those that are next, as many as can be told apart. */
    private static List<String> first(List<TorquePicture> builds) {
        int longest = builds.stream().mapToInt(TorquePicture::longest).max().orElse(0);
        return IntStream.range(0, longest)
                .boxed()
                .flatMap(rank -> builds.stream()
                        .flatMap(one -> one.held.points().stream())
                        .filter(point -> rank < point.links().size())
                        .map(point -> point.links().get(rank).name()))
                .distinct()
                .limit(LinesChart.MOST_LINES)
                .toList();
    }

    private boolean has(String name) {
        return held.points().stream()
                .flatMap(point -> point.links().stream())
                .anyMatch(link -> link.name().equals(name));
    }

    private int longest() {
        return held.points().stream()
                .mapToInt(point -> point.links().size())
                .max()
                .orElse(0);
    }

    private LinesChart.Line line(String name, int look) {
        return new LinesChart.Line(
                name,
                look,
                held.points().stream()
                        .map(point -> new LineChart.Point(psi(point.pressure()), torque(point, name)))
                        .toList());
    }

    private double torque(TorqueByPressure.TorqueAtPressure point, String name) {
        OptionalDouble torque = point.links().stream()
                .filter(link -> link.name().equals(name))
                .mapToDouble(Carrier::torque)
                .findFirst();
        return torque.isPresent() ? Quantity.TORQUE.value(units, torque.getAsDouble()) : Double.NaN;
    }

    private Optional<LinesChart.Marked> mark(TorquePicturePhrase phrase) {
        return useful.crosses()
                ? useful.weakest()
                        .map(link -> new LinesChart.Marked(
                                psi(useful.pressure().orElseThrow()),
                                Quantity.TORQUE.value(units, link.torque()),
                                phrase.crossing(useful.pressure().orElseThrow(), link.name())))
                : Optional.empty();
    }

    /** Where lubrication and hub film end it, and the end of the highest set pressures at which every limit holds. */
    private List<LinesChart.AtPlace> ends(TorquePicturePhrase phrase) {
        List<LinesChart.AtPlace> ends = new ArrayList<>();
        for (Margin.Kind kind : List.of(Margin.Kind.LUBRICATION, Margin.Kind.FILM)) {
            List<Window.Span> spans =
                    window.spans().stream().filter(span -> span.kind() == kind).toList();
            Optional<Judgement.Key> never = spans.stream()
                    .filter(span -> span.ranges().isEmpty())
                    .flatMap(span -> span.worst().stream())
                    .findFirst();
            if (never.isPresent()) {
                ends.add(new LinesChart.AtPlace(
                        psi(held.points().get(0).pressure()),
                        phrase.never(kind, never.get().part(), never.get().duty())));
            } else {
                spans.stream()
                        .map(span -> span.ranges().get(span.ranges().size() - 1))
                        .filter(range -> range.highBy().isPresent())
                        .min(Comparator.comparingDouble(Window.PressureRange::high))
                        .ifPresent(range -> ends.add(end(phrase, range)));
            }
        }
        if (!window.all().isEmpty()) {
            Window.PressureRange last = window.all().get(window.all().size() - 1);
            boolean said = ends.stream().anyMatch(end -> end.x() <= psi(last.high()));
            if (last.highBy().isPresent() && !said) {
                ends.add(end(phrase, last));
            }
        }
        return ends;
    }

    private LinesChart.AtPlace end(TorquePicturePhrase phrase, Window.PressureRange range) {
        Judgement.Key by = range.highBy().orElseThrow();
        return new LinesChart.AtPlace(psi(range.high()), phrase.end(range.high(), by.kind(), by.part(), by.duty()));
    }

    private double psi(double pressure) {
        return Quantity.PRESSURE.value(units, pressure);
    }
}
