package hotidle.answer.compare;

import hotidle.answer.format.Quantity;
import hotidle.network.Placed;
import hotidle.part.PumpChamber;
import hotidle.part.Selector;
import hotidle.result.Solution;
import hotidle.study.Comparison;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** The lines where nothing is commanded: every gauge, what each pump delivers, and the flow on every path. */
record UncommandedRows(Comparison comparison, Quantity.UnitSystem units) {

    List<CompareRow> all() {
        Transmission any = comparison.units().get(0);
        List<CompareRow> rows = new ArrayList<>();
        any.taps().forEach(tap -> rows.add(RegulatedRows.gauge(units, tap)));
        for (Placed placed : any.network().parts()) {
            if (placed.part() instanceof PumpChamber) {
                rows.add(CompareRow.reading(
                        units,
                        placed.name() + " delivers after slip",
                        Quantity.SEEPAGE,
                        state -> state.measure(placed.name(), PumpChamber.DELIVERED)));
            }
            for (String key : paths(placed)) {
                rows.add(CompareRow.reading(units, "flow " + key, Quantity.SEEPAGE, state -> flow(state, key)));
            }
        }
        return rows;
    }

    /** The paths through a part at any duty of any build, in the order of the file; a selector opens others in each range. */
    private Set<String> paths(Placed placed) {
        Set<String> found = new LinkedHashSet<>();
        comparison.cells().stream()
                .flatMap(cell -> cell.outcome().state().stream())
                .flatMap(state -> state.streams().stream())
                .filter(stream -> stream.part().equals(placed.name()))
                .forEach(stream -> found.add(stream.key()));
        if (placed.part() instanceof Selector selector) {
            Set<String> written = new LinkedHashSet<>();
            selector.links().forEach(link -> written.add(placed.name() + "." + link.name()));
            written.retainAll(found);
            return written;
        }
        return found;
    }

    /** Not there where the path is shut at this duty. */
    private static OptionalDouble flow(Solution state, String key) {
        return state.streams().stream()
                .filter(stream -> stream.key().equals(key))
                .mapToDouble(Solution.PartStream::volume)
                .findFirst();
    }
}
