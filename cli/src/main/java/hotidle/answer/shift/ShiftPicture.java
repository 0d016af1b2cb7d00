package hotidle.answer.shift;

import hotidle.answer.phrase.ShiftPhrase;
import hotidle.answer.phrase.ShiftPicturePhrase;
import hotidle.plots.Chart;
import hotidle.plots.Picture;
import hotidle.plots.RowLook;
import hotidle.plots.RowsChart;
import hotidle.study.ShiftHeat;
import hotidle.study.ShiftHeat.Closing;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;

/** Heat and power over rubbing area of each shift, beside what linings bear. */
record ShiftPicture(ShiftAnswer answer) {

    private static final double PER_MM2 = 1e6;
    private static final double ROOM = 1.15;

    /** The picture; empty where no shift has an area to count over. */
    Optional<Picture> picture() {
        if (answer.shifts().stream()
                .noneMatch(shift -> known(shift, Closing::heatOverArea).isPresent())) {
            return Optional.empty();
        }
        List<Chart> charts = List.of(
                chart(
                        Closing::heatOverArea,
                        ShiftPicturePhrase::heat,
                        ShiftPicturePhrase.HEAT_ACROSS,
                        new RowsChart.LinePlace(ShiftPhrase.LIMIT / PER_MM2, ShiftPicturePhrase.HEAT_LIMIT),
                        ShiftPhrase::overArea),
                chart(
                        Closing::powerOverArea,
                        ShiftPicturePhrase::power,
                        ShiftPicturePhrase.POWER_ACROSS,
                        new RowsChart.LinePlace(ShiftPhrase.POWER_LIMIT / PER_MM2, ShiftPicturePhrase.POWER_LIMIT),
                        ShiftPhrase::powerOverArea));
        return Optional.of(new Picture(
                charts, Picture.WIDTH, 2 * RowsChart.height(answer.shifts().size())));
    }

    /** A title of build, shift and figure. */
    private interface Titled {
        String of(String build, String shift, double figure);
    }

    private RowsChart chart(
            Function<Closing, OptionalDouble> figure,
            Titled title,
            String across,
            RowsChart.LinePlace limit,
            DoubleFunction<String> said) {
        ShiftHeat most = answer.shifts().stream()
                .max(Comparator.comparingDouble(shift -> known(shift, figure).orElse(0)))
                .orElseThrow();
        double highest = known(most, figure).orElseThrow();
        return new RowsChart(
                title.of(answer.build(), most.from() + "-" + most.to(), highest),
                ShiftPicturePhrase.under(answer.circuit()),
                across,
                0,
                ROOM * Math.max(limit.at(), highest / PER_MM2),
                answer.shifts().stream().map(shift -> row(shift, figure, said)).toList(),
                Optional.of(limit),
                Map.of(),
                "");
    }

    private static OptionalDouble known(ShiftHeat shift, Function<Closing, OptionalDouble> figure) {
        return shift.closing().map(figure).orElse(OptionalDouble.empty());
    }

    private static RowsChart.ChartRow row(
            ShiftHeat shift, Function<Closing, OptionalDouble> figure, DoubleFunction<String> said) {
        OptionalDouble value = known(shift, figure);
        return new RowsChart.ChartRow(
                ShiftPicturePhrase.shift(shift.from(), shift.to(), shift.clutch()),
                value.isPresent()
                        ? List.of(new RowsChart.RowPiece(RowLook.FULL, 0, value.getAsDouble() / PER_MM2))
                        : List.of(),
                Optional.empty(),
                value.isPresent() ? said.apply(value.getAsDouble()) : ShiftPhrase.why(shift.why()));
    }
}
