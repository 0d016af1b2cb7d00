package hotidle.answer.shift;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.phrase.ShiftPhrase;
import hotidle.study.LockupHeat;
import hotidle.study.ShiftHeat;
import hotidle.study.ShiftHeat.Closing;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/** Shifts and lockup, as rows. */
record ShiftRows(Quantity.UnitSystem units, List<ShiftHeat> shifts, List<LockupHeat> lockups) {

    private static final String NONE = "-";

    TextTable table() {
        String torque = Quantity.TORQUE.in(units).unit();
        TextTable table = new TextTable(List.of(
                "shift",
                "closes",
                "at " + Quantity.PRESSURE.in(units).unit(),
                "carries " + torque,
                "asked " + torque,
                "slip rpm",
                "s",
                "kJ",
                "J/mm2",
                "W/mm2",
                "steel " + Quantity.RISE.in(units).unit(),
                "says"));
        shifts.forEach(shift -> table.add(row(shift)));
        return table;
    }

    /** The same for the screen: what asks and why stand in the other. */
    TextTable brief() {
        TextTable table = new TextTable(List.of(
                "shift",
                "closes",
                "carries " + Quantity.TORQUE.in(units).unit(),
                "slip rpm",
                "s",
                "kJ",
                "J/mm2",
                "W/mm2",
                "steel " + Quantity.RISE.in(units).unit()));
        for (ShiftHeat shift : shifts) {
            List<String> all = row(shift);
            boolean found = shift.closing().isPresent();
            List<String> row = new ArrayList<>(
                    List.of(all.get(0), found ? all.get(1) : all.get(1) + ": " + all.get(all.size() - 1), all.get(3)));
            row.addAll(all.subList(5, all.size() - 1));
            table.add(row);
        }
        return table;
    }

    private List<String> row(ShiftHeat shift) {
        List<String> row = new ArrayList<>(
                List.of(shift.from() + "-" + shift.to(), shift.clutch().isEmpty() ? NONE : shift.clutch()));
        row.addAll(shift.closing().map(this::figures).orElse(java.util.Collections.nCopies(9, NONE)));
        row.add(ShiftPhrase.why(shift.why()));
        return row;
    }

    private List<String> figures(Closing closing) {
        return List.of(
                Quantity.PRESSURE.number(units, closing.pressure()),
                Quantity.TORQUE.number(units, closing.torque()),
                Quantity.TORQUE.number(units, closing.asked()),
                Quantity.SPEED.number(units, closing.slip() / (2 * Math.PI)),
                ShiftPhrase.seconds(closing.time()),
                ShiftPhrase.kilojoule(closing.heat()),
                known(closing.heatOverArea(), ShiftPhrase::overArea),
                known(closing.powerOverArea(), ShiftPhrase::powerOverArea),
                known(closing.steel(), rise -> Quantity.RISE.number(units, rise)));
    }

    private static String known(OptionalDouble value, DoubleFunction<String> said) {
        return value.isPresent() ? said.apply(value.getAsDouble()) : NONE;
    }

    TextTable lockup() {
        TextTable table = new TextTable(List.of(
                "at",
                "engine " + Quantity.TORQUE.in(units).unit(),
                "slip rpm",
                "applied kJ",
                "held " + Quantity.POWER.in(units).unit()));
        lockups.forEach(one -> table.add(List.of(
                one.duty(),
                Quantity.TORQUE.number(units, one.torque()),
                Quantity.SPEED.number(units, one.slip() / (2 * Math.PI)),
                ShiftPhrase.kilojoule(one.applied()),
                Quantity.POWER.number(units, one.held()))));
        return table;
    }
}
