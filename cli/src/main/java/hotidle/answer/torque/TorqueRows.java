package hotidle.answer.torque;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.phrase.TorquePhrase;
import hotidle.answer.torque.TorqueAnswer.BuildTorque;
import hotidle.study.TorqueHeld;
import hotidle.study.TorqueHeld.Carrier;
import hotidle.study.TorqueHeld.Held;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** What builds hold, as rows. */
record TorqueRows(Quantity.UnitSystem units, List<BuildTorque> builds) {

    private TorquePhrase phrase() {
        return new TorquePhrase(units);
    }

    /** Ranges down, builds across. */
    TextTable sideBySide() {
        List<String> head = new ArrayList<>(List.of("range", "ratio"));
        builds.forEach(one -> head.add(one.build()));
        TextTable table = new TextTable(head);
        List<TorqueHeld> first = builds.get(0).ranges();
        for (int i = 0; i < first.size(); i++) {
            List<String> row = new ArrayList<>(
                    List.of(first.get(i).range(), ratio(first.get(i).ratio())));
            for (BuildTorque one : builds) {
                row.add(one.ranges().get(i).held().map(this::cell).orElse(TorqueAnswer.NONE));
            }
            table.add(row);
        }
        return table;
    }

    private String cell(Held held) {
        return held.links().isEmpty()
                ? "-"
                : TorquePhrase.cell(
                        phrase().torque(held.torque(), held.beyond(), bare(held)),
                        held.links().get(0).name(),
                        held.links().get(0).shared());
    }

    /** Whether what gives first has a rating and no factor in hand. */
    static boolean bare(Held held) {
        return !held.links().isEmpty() && !held.links().get(0).clutch();
    }

    /**
     * A row a build and range.
     *
     * @param marked whether bare ratings are marked, for readers; numbers of a spreadsheet stay numbers
     */
    TextTable each(boolean marked) {
        String torque = Quantity.TORQUE.in(units).unit();
        String pressure = Quantity.PRESSURE.in(units).unit();
        TextTable table = new TextTable(List.of(
                "build",
                "range",
                "ratio",
                "engine " + torque,
                "line " + pressure,
                "commanded " + pressure,
                "from rpm",
                "first",
                "second",
                "factor"));
        for (BuildTorque one : builds) {
            one.ranges().forEach(range -> table.add(row(one, range, marked)));
        }
        return table;
    }

    private List<String> row(BuildTorque build, TorqueHeld range, boolean marked) {
        List<String> row = new ArrayList<>(List.of(build.build(), range.range(), ratio(range.ratio())));
        if (range.held().isEmpty()) {
            row.addAll(List.of(TorqueAnswer.NONE, "-", "-", "-", "-", "-", "-"));
            return row;
        }
        Held held = range.held().get();
        boolean second = held.links().size() > 1;
        row.addAll(List.of(
                phrase().torque(held.torque(), held.beyond(), marked && bare(held)),
                Quantity.PRESSURE.number(units, held.line()),
                held.commanded().isPresent()
                        ? Quantity.PRESSURE.number(units, held.commanded().getAsDouble())
                        : "-",
                phrase().from(held.from()),
                held.links().isEmpty() ? "-" : named(held.links().get(0)),
                second ? named(held.links().get(1)) : "-",
                second ? TorquePhrase.factor(held.links().get(1).torque() / held.torque()) : "-"));
        return row;
    }

    private static String named(Carrier carrier) {
        return carrier.name() + (carrier.shared() ? TorquePhrase.SHARED : "");
    }

    private static String ratio(OptionalDouble ratio) {
        return ratio.isPresent() ? String.format(Locale.ROOT, "%.3f", ratio.getAsDouble()) : "-";
    }

    /** The range that holds least, in a sentence; that of the first build says what is asked too. */
    String least(BuildTorque build, TorqueHeld range, boolean first) {
        Held held = range.held().orElseThrow();
        return phrase().least(
                        first
                                ? phrase().held(build.build(), held.torque(), build.hardest())
                                : phrase().heldToo(build.build(), held.torque()),
                        range.range(),
                        held.links().get(0).name(),
                        held.line(),
                        held.commanded().isPresent()
                                ? phrase().commanded(held.commanded().getAsDouble(), build.set())
                                : "",
                        build.next()
                                .map(next -> TorquePhrase.second(
                                        next.link().name(),
                                        next.range(),
                                        next.link().torque() / held.torque()))
                                .orElse(""));
    }

    /** Under what it was found. */
    String conditions() {
        List<TorqueHeld> ranges = builds.get(0).ranges();
        List<String> multiplied = ranges.stream()
                .filter(range -> range.at().torqueRatio() != 1)
                .map(TorqueHeld::range)
                .toList();
        double ratio = ranges.stream()
                .mapToDouble(range -> range.at().torqueRatio())
                .max()
                .orElse(1);
        return phrase().conditions(ranges.get(0).at().hottest().name(), ratio, multiplied);
    }

    /** Of each build the ranges that hold less below a speed, since its pump does not bring the pressure. */
    List<String> slow() {
        List<String> lines = new ArrayList<>();
        for (BuildTorque one : builds) {
            List<String> ranges = new ArrayList<>();
            for (TorqueHeld range : one.ranges()) {
                range.held()
                        .filter(held -> held.from().isPresent())
                        .ifPresent(held -> ranges.add(
                                phrase().below(range.range(), held.from().getAsDouble())));
            }
            if (!ranges.isEmpty()) {
                lines.add(TorquePhrase.slow(one.build(), ranges));
            }
        }
        return lines;
    }

    /** What the signs behind torques mean; empty where there is none. */
    String signs() {
        boolean beyond = held().anyMatch(Held::beyond);
        boolean shared = held().flatMap(one -> one.links().stream().limit(2)).anyMatch(Carrier::shared);
        return TorquePhrase.signs(beyond, shared);
    }

    private Stream<Held> held() {
        return builds.stream().flatMap(one -> one.ranges().stream()).flatMap(range -> range.held().stream());
    }
}
