package hotidle.answer.list;

import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.ListPhrase;
import hotidle.circuits.WrittenFault;
import hotidle.fault.FaultKind;
import hotidle.fault.UnitFault;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The faults that a circuit can have, as {@code --fault} takes them: kind by kind, with the parts that each can be at and a size to
 * begin with.
 *
 * @param circuit its name
 * @param faults  of its first build; others differ in sizes alone
 */
public record FaultListing(String circuit, List<UnitFault> faults) {

    public FaultListing {
        faults = List.copyOf(faults);
    }

    /** A line a kind. */
    public String text() {
        Map<FaultKind, List<UnitFault>> kinds = new EnumMap<>(FaultKind.class);
        faults.forEach(fault ->
                kinds.computeIfAbsent(fault.kind(), kind -> new ArrayList<>()).add(fault));
        StringBuilder text = new StringBuilder(Wrap.lines(ListPhrase.faultsOf(circuit), "", "  "));
        kinds.forEach((kind, at) -> text.append(Wrap.lines(line(kind, at), "  ", "    ")));
        return text.toString();
    }

    /** Where all parts have one example, it stands behind them; otherwise each has its own. */
    private static String line(FaultKind kind, List<UnitFault> at) {
        List<String> sizes = at.stream().map(FaultListing::size).toList();
        List<String> parts = at.stream().map(UnitFault::part).toList();
        return sizes.stream().distinct().count() == 1
                ? ListPhrase.faultAt(kind.word(), parts, sizes.get(0))
                : ListPhrase.faultAt(
                        kind.word(),
                        IntStream.range(0, parts.size())
                                .mapToObj(i -> parts.get(i) + sizes.get(i))
                                .toList(),
                        "");
    }

    /** An example with its colon; empty where the fault takes no size. */
    private static String size(UnitFault fault) {
        return WrittenFault.example(fault).substring(fault.name().length());
    }
}
