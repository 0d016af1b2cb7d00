package hotidle.answer.torque;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.phrase.LineNeededPhrase;
import hotidle.answer.torque.TorqueAnswer.BuildTorque;
import hotidle.assess.LineVerdict;
import hotidle.study.LineNeeded;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Line pressure that each range needs for each engine torque, as rows. */
record NeededRows(Quantity.UnitSystem units, List<BuildTorque> builds) {

    /** A row a build, range and torque. */
    TextTable table() {
        String psi = Quantity.PRESSURE.in(units).unit();
        double speed = builds.get(0).ranges().get(0).at().speed();
        TextTable table = new TextTable(List.of(
                "build",
                "range",
                "engine " + Quantity.TORQUE.in(units).unit(),
                "needs " + psi,
                "for",
                "commanded " + psi,
                "has at " + Quantity.SPEED.with(units, speed),
                "at " + Quantity.SPEED.with(units, LineNeeded.SLOW),
                "at idle",
                "says"));
        for (BuildTorque one : builds) {
            one.needed().forEach(row -> table.add(row(one.build(), row)));
        }
        return table;
    }

    private List<String> row(String build, LineNeeded row) {
        return new ArrayList<>(List.of(
                build,
                row.range(),
                Quantity.TORQUE.number(units, row.torque()),
                psi(row.needed()),
                row.clutch().isEmpty() ? "-" : row.clutch(),
                psi(row.commanded()),
                psi(row.line()),
                psi(row.slow()),
                psi(row.idle()),
                LineNeededPhrase.verdict(row.verdict())));
    }

    private String psi(OptionalDouble pressure) {
        return pressure.isPresent() ? Quantity.PRESSURE.number(units, pressure.getAsDouble()) : "-";
    }

    /** Of a build: the lowest torque of each range for which its line is short, and how many rows waste. */
    String summary(BuildTorque build) {
        List<LineNeeded> shorts = new ArrayList<>();
        for (LineNeeded row : build.needed()) {
            boolean first = shorts.stream().noneMatch(one -> one.range().equals(row.range()));
            if (row.verdict() == LineVerdict.SHORT && first) {
                shorts.add(row);
            }
        }
        LineNeededPhrase phrase = new LineNeededPhrase(units);
        long wasting = build.needed().stream()
                .filter(row -> row.verdict() == LineVerdict.WASTES)
                .count();
        return phrase.summary(
                build.build(),
                shorts.stream()
                        .map(row -> phrase.isShort(
                                row.range(),
                                row.torque(),
                                row.needed().orElseThrow(),
                                row.line().orElseThrow()))
                        .toList(),
                wasting,
                build.needed().size());
    }
}
