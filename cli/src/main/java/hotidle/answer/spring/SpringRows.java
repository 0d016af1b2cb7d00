package hotidle.answer.spring;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.answer.phrase.SpringPhrase;
import hotidle.assess.Figures;
import hotidle.study.SpringStudy;
import hotidle.study.SpringStudy.ChangeEffect;
import hotidle.study.SpringStudy.DutyEffect;
import hotidle.transmission.QuotedSet;
import hotidle.transmission.SpringChange;
import hotidle.transmission.SpringChange.Lever;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The rows of {@code spring}: the changes, and what each of them moves. */
record SpringRows(UnitSystem units, SpringStudy study) {

    static final List<String> CHANGES = List.of(SpringPhrase.ALONE, "now", "needed", "difference", "coils at the stop");

    /** Less than this is no shim (chosen) [m]. */
    static final double LEAST_SHIM = 5e-6;

    /** A row of a change. */
    List<String> change(SpringChange change) {
        String name = SpringPhrase.name(change.lever(), change.signal());
        String now = change.lever() == Lever.SHIM ? SpringPhrase.AS_IT_IS : with(change.lever(), change.now());
        if (change.obstacle().isPresent()) {
            return List.of(name, now, SpringPhrase.obstacle(change.obstacle().get()), "-", "-");
        }
        return List.of(
                name,
                now,
                change.lever() == Lever.SHIM
                        ? shim(change.needed().orElseThrow())
                        : with(change.lever(), change.needed().orElseThrow()),
                change.lever() == Lever.SHIM ? "-" : more(change),
                change.lever() == Lever.BOOST ? "-" : new SpringPhrase(units).room(change.overStop()));
    }

    private String shim(double added) {
        return Math.abs(added) < LEAST_SHIM
                ? SpringPhrase.NO_SHIM
                : SpringPhrase.shim(added > 0, quantity(Lever.SHIM).with(units, Math.abs(added)));
    }

    private String more(SpringChange change) {
        double difference = shown(change.lever(), change.needed().orElseThrow()) - shown(change.lever(), change.now());
        return (difference > 0 ? "+" : "") + quantity(change.lever()).with(units, difference);
    }

    private String with(Lever lever, double value) {
        return quantity(lever).with(units, shown(lever, value));
    }

    /** A boost is told by its diameter. */
    static double shown(Lever lever, double value) {
        return lever == Lever.BOOST ? 2 * Math.sqrt(value / Math.PI) : value;
    }

    private static Quantity quantity(Lever lever) {
        return switch (lever) {
            case PRELOAD -> Quantity.SPRING_FORCE;
            case SHIM -> Quantity.SIZE;
            case RATE -> Quantity.SPRING_RATE;
            case BOOST -> Quantity.SIZE;
        };
    }

    /** What the unit does as it is, then with each change that can be made. */
    private List<ChangeEffect> effects() {
        List<ChangeEffect> all = new ArrayList<>(List.of(study.asIs()));
        study.made().forEach(way -> all.add(way.effect().orElseThrow()));
        return all;
    }

    List<String> moved() {
        List<String> head = new ArrayList<>(
                List.of(SpringPhrase.MOVES + ", " + Quantity.PRESSURE.in(units).unit(), "now"));
        study.made()
                .forEach(way -> head.add(
                        SpringPhrase.column(way.change().lever(), way.change().signal())));
        return head;
    }

    List<List<String>> rows() {
        String idle = study.asIs().idle().duty().name();
        List<List<String>> rows = new ArrayList<>();
        rows.add(row(SpringPhrase.commanded(SpringPhrase.NO_TORQUE), effect -> psi(effect.noTorque())));
        rows.add(row(SpringPhrase.commanded(idle), effect -> figures(effect.idle(), f -> psi(f.set()))));
        rows.add(row(
                SpringPhrase.reads(idle),
                effect -> figures(effect.idle(), f -> psi(f.line()) + (effect.lowAtIdle() ? SpringPhrase.LOW : ""))));
        rows.add(row(SpringPhrase.charge(idle), effect -> figures(effect.idle(), f -> psi(f.charge()))));
        rows.add(row(SpringPhrase.commanded(reverse()), effect -> psi(effect.reverse())));
        rows.add(row(
                SpringPhrase.HIGHEST,
                effect -> effect.duties().stream()
                        .flatMap(at -> at.figures().stream())
                        .max(Comparator.comparingDouble(Figures::line))
                        .map(f -> psi(f.line()))
                        .orElse("-")));
        return rows.stream()
                .filter(row -> row.stream().skip(1).anyMatch(cell -> !cell.equals("-")))
                .toList();
    }

    /** A throttle valve asks for what the driving condition says, and for more at more throttle. */
    private String reverse() {
        return SpringPhrase.reverse(study.unit().command().pilot().isPresent(), QuotedSet.reverseDuties(study.unit()));
    }

    private List<String> row(String name, Function<ChangeEffect, String> cell) {
        List<String> row = new ArrayList<>(List.of(name));
        effects().forEach(effect -> row.add(cell.apply(effect)));
        return row;
    }

    private static String figures(DutyEffect at, Function<Figures, String> cell) {
        return at.figures().map(cell).orElse("unsolved");
    }

    private String psi(OptionalDouble pressure) {
        return Quantity.PRESSURE.number(units, pressure);
    }

    private String psi(double pressure) {
        return Quantity.PRESSURE.number(units, pressure);
    }
}
