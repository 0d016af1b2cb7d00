package hotidle.answer.gauge;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.GaugePhrase;
import hotidle.answer.phrase.GaugePicturePhrase;
import hotidle.fault.UnitFault;
import hotidle.plots.Chart;
import hotidle.plots.Picture;
import hotidle.plots.RowLook;
import hotidle.plots.RowsChart;
import hotidle.study.gauge.GaugeFindings;
import hotidle.study.gauge.GaugeReading;
import hotidle.study.gauge.Meter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Readings beside what a sound build reads, and the causes that explain them. */
public record GaugePicture(GaugeAnswer answer) {

    /** Causes that are shown at most (chosen). */
    private static final int MOST_CAUSES = 9;

    /** Deviations to both sides within which a sound build reads. */
    private static final double BAND = 2;

    private static final double ROOM = 0.06;

    /** All charts on one page. */
    public Picture picture() {
        List<Chart> charts =
                Stream.<Chart>concat(read().stream(), causes().stream()).toList();
        return new Picture(
                charts,
                charts.size() > 2 ? 2 * Picture.WIDTH : Picture.WIDTH,
                Math.min(charts.size(), 2)
                        * RowsChart.height(Math.max(Math.min(RowsChart.MOST_ROWS, readings()), MOST_CAUSES)));
    }

    private int readings() {
        return answer.findings().readings().size();
    }

    /** Pressures, then flows; those that there are. */
    List<RowsChart> read() {
        return Stream.of(Meter.Reads.PRESSURE, Meter.Reads.FLOW)
                .flatMap(reads -> read(reads).stream())
                .toList();
    }

    /** Causes; empty where the readings agree. */
    Optional<RowsChart> causes() {
        return answer.findings().agreement().agrees() ? Optional.empty() : Optional.of(shares());
    }

    private Optional<RowsChart> read(Meter.Reads reads) {
        GaugeFindings found = answer.findings();
        List<Integer> numbers = IntStream.range(0, readings())
                .filter(i -> found.readings().get(i).meter().reads() == reads)
                .limit(RowsChart.MOST_ROWS)
                .boxed()
                .toList();
        if (numbers.isEmpty()) {
            return Optional.empty();
        }
        boolean pressure = reads == Meter.Reads.PRESSURE;
        double[] all = numbers.stream()
                .flatMapToDouble(i -> DoubleStream.of(
                        value(pressure, found.readings().get(i).value()), end(pressure, i, -1), end(pressure, i, 1)))
                .toArray();
        double least = DoubleStream.of(all).min().orElse(0);
        double most = DoubleStream.of(all).max().orElse(1);
        double room = ROOM * Math.max(most - least, Math.abs(most) * ROOM);
        long standOut = IntStream.range(0, readings()).filter(found::standsOut).count();
        return Optional.of(new RowsChart(
                GaugePicturePhrase.title(
                        answer.build(), readings(), found.agreement().agrees(), standOut),
                GaugePicturePhrase.subtitle(answer.circuit(), answer.file()),
                new GaugePicturePhrase(answer.units()).across(pressure),
                Math.max(0, least - room),
                most + room,
                numbers.stream().map(i -> row(pressure, i)).toList(),
                Optional.empty(),
                Map.of(RowLook.HOLDS, GaugePicturePhrase.SOUND),
                GaugePicturePhrase.READ));
    }

    private double value(boolean pressure, double si) {
        return (pressure ? Quantity.PRESSURE : Quantity.FLOW).value(answer.units(), si);
    }

    /** An end of what a sound build reads; never below nothing. */
    private double end(boolean pressure, int number, int way) {
        GaugeFindings.ExpectedReading sound = answer.findings().expected().get(number);
        return value(pressure, Math.max(0, sound.mean() + way * BAND * sound.deviation()));
    }

    private RowsChart.ChartRow row(boolean pressure, int number) {
        GaugeReading reading = answer.findings().readings().get(number);
        double value = value(pressure, reading.value());
        return new RowsChart.ChartRow(
                new GaugePhrase(answer.units())
                        .place(
                                reading.meter().name(),
                                pressure,
                                reading.at().speed(),
                                reading.at().range(),
                                reading.at().temperature()),
                List.of(new RowsChart.RowPiece(RowLook.HOLDS, end(pressure, number, -1), end(pressure, number, 1))),
                Optional.of(new RowsChart.RowMark(value, value, value)),
                new GaugePicturePhrase(answer.units())
                        .reading(
                                GaugeRows.sense(reading),
                                pressure,
                                reading.value(),
                                answer.findings().standsOut(number)));
    }

    private RowsChart shares() {
        GaugeFindings found = answer.findings();
        CauseWords words = new CauseWords(answer.units());
        List<RowsChart.ChartRow> rows = new ArrayList<>();
        found.groups()
                .forEach(group -> group.causes()
                        .forEach(cause -> rows.add(share(
                                CauseWords.brief(cause),
                                cause.share(),
                                group.causes().size() > 1
                                        ? GaugePicturePhrase.ALIKE
                                        : words.size(cause.fault(), cause.size())))));
        List<GaugeFindings.Pair> pairs = CauseLines.pairs(found);
        int most = MOST_CAUSES - pairs.size();
        if (rows.size() > most) {
            rows.subList(most, rows.size()).clear();
        }
        pairs.forEach(pair -> rows.add(share(pair(pair), pair.share(), GaugePicturePhrase.TOGETHER)));
        rows.sort(Comparator.comparingDouble(
                (RowsChart.ChartRow row) -> -row.pieces().get(0).to()));
        rows.add(share(GaugePicturePhrase.NONE, found.none(), ""));
        double rest =
                100 - rows.stream().mapToDouble(row -> row.pieces().get(0).to()).sum();
        if (rest >= 1) {
            rows.add(share(GaugePicturePhrase.REST, rest / 100, ""));
        }
        return new RowsChart(
                title(pairs),
                GaugePicturePhrase.subtitle(answer.circuit(), answer.file()),
                GaugePicturePhrase.CAUSES_ACROSS,
                0,
                100,
                rows,
                Optional.empty(),
                Map.of(),
                "");
    }

    /** What leads: a group, a pair or none of these. */
    private String title(List<GaugeFindings.Pair> pairs) {
        GaugeFindings found = answer.findings();
        double group = found.first().map(GaugeFindings.Group::share).orElse(0.0);
        Optional<GaugeFindings.Pair> pair = pairs.stream().findFirst().filter(one -> one.share() > group);
        if (Math.max(group, pair.map(GaugeFindings.Pair::share).orElse(0.0)) < found.none()) {
            return GaugePicturePhrase.noCause(found.none());
        }
        String leads = pair.map(one -> GaugePicturePhrase.causes(pair(one), one.share(), 0))
                .orElseGet(() -> found.first()
                        .map(one -> GaugePicturePhrase.causes(
                                CauseWords.brief(one.leader()),
                                one.share(),
                                one.causes().size() - 1))
                        .orElseThrow());
        return found.nothingFits() ? GaugePicturePhrase.poorly(leads) : leads;
    }

    private static String pair(GaugeFindings.Pair pair) {
        return GaugePicturePhrase.pair(
                part(pair.one().fault()), part(pair.other().fault()));
    }

    /** Where a fault is; of one that is nowhere what it is. */
    private static String part(UnitFault fault) {
        return fault.part().isEmpty() ? fault.kind().about() : fault.part();
    }

    private static RowsChart.ChartRow share(String name, double share, String size) {
        return new RowsChart.ChartRow(
                name,
                List.of(new RowsChart.RowPiece(RowLook.FULL, 0, 100 * share)),
                Optional.empty(),
                GaugePicturePhrase.share(share, size));
    }
}
