package hotidle.answer.list;

import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.ListPhrase;
import hotidle.fault.FaultKind;
import hotidle.fault.UnitFault;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The faults that a circuit can have, as {@code --fault} takes them: kind by kind, with the parts that each can be at.
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
        Map<FaultKind, List<String>> parts = new EnumMap<>(FaultKind.class);
        faults.forEach(fault ->
                parts.computeIfAbsent(fault.kind(), kind -> new ArrayList<>()).add(fault.part()));
        StringBuilder text = new StringBuilder(Wrap.lines(ListPhrase.faultsOf(circuit), "", "  "));
        parts.forEach((kind, at) -> text.append(Wrap.lines(ListPhrase.faultAt(kind.word(), at), "  ", "    ")));
        return text.toString();
    }
}
