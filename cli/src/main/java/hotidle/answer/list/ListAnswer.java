package hotidle.answer.list;

import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.ListPhrase;
import hotidle.answer.phrase.MorePhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.ReadyCircuit;
import hotidle.circuits.kind.Kinds;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import hotidle.fault.FaultKind;
import hotidle.transmission.DutyPoint;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What can be asked for.
 *
 * @param shown    what was asked for
 * @param ready    the ready circuits, for the screen
 * @param circuits the same whole, for all of it
 */
public record ListAnswer(Set<Listing> shown, List<ReadyCircuit> ready, List<DescribedCircuit> circuits) {

    /** What can be listed. */
    public enum Listing {
        CIRCUITS,
        PARTS,
        FAULTS,
        UNITS
    }

    public ListAnswer {
        shown = Set.copyOf(shown);
        ready = List.copyOf(ready);
        circuits = List.copyOf(circuits);
    }

    /** What a reader gets first: circuits with their builds; of kinds and units the names. */
    public String screen() {
        StringBuilder text = new StringBuilder();
        if (shown.contains(Listing.CIRCUITS)) {
            ready.forEach(circuit -> text.append(brief(circuit)));
        }
        if (shown.contains(Listing.PARTS)) {
            String names = Kinds.ALL.stream().map(kind -> kind.word()).collect(Collectors.joining(", "));
            text.append(Wrap.lines(MorePhrase.names(ListPhrase.PARTS, names, "hotidle list parts --full"), "", "  "));
        }
        if (shown.equals(Set.of(Listing.FAULTS))) {
            text.append(ListPhrase.FAULTS).append('\n').append(faults());
            text.append(ListPhrase.FAULTS_OF).append('\n');
        }
        if (shown.equals(Set.of(Listing.UNITS))) {
            text.append(Wrap.lines(units().replaceAll("\n *", "; ").strip().replaceFirst(";$", "."), "", "  "));
        } else if (shown.contains(Listing.UNITS)) {
            text.append(ListPhrase.MORE_UNITS).append('\n');
        }
        return text.toString();
    }

    private static String brief(ReadyCircuit circuit) {
        String about = HeadingPhrase.headed(circuit.name(), circuit.about());
        return Wrap.lines(about, "", "  ") + Wrap.lines(ListPhrase.builds(circuit.builds()), "  ", "    ");
    }

    /** All of it, section by section. */
    public String full() {
        StringBuilder text = new StringBuilder();
        if (shown.contains(Listing.CIRCUITS)) {
            text.append(ListPhrase.CIRCUITS + "\n");
            circuits.forEach(circuit -> text.append(circuit(circuit)).append('\n'));
        }
        if (shown.contains(Listing.PARTS)) {
            text.append(ListPhrase.PARTS + "\n").append(kinds()).append(shown.contains(Listing.UNITS) ? "\n" : "");
        }
        if (shown.contains(Listing.FAULTS)) {
            text.append(ListPhrase.FAULTS + "\n").append(faults()).append(shown.contains(Listing.UNITS) ? "\n" : "");
        }
        if (shown.contains(Listing.UNITS)) {
            text.append(ListPhrase.UNITS + "\n").append(units());
        }
        return text.toString();
    }

    private static String circuit(DescribedCircuit circuit) {
        StringBuilder text = new StringBuilder();
        text.append("  ")
                .append(HeadingPhrase.headed(circuit.name(), circuit.about()))
                .append('\n');
        circuit.builds()
                .forEach(build -> text.append(ListPhrase.BUILD)
                        .append(HeadingPhrase.headed(build.name(), build.about()))
                        .append('\n'));
        List<String> duties =
                circuit.unit().duties().stream().map(DutyPoint::name).toList();
        text.append("    ").append(ListPhrase.duties(duties)).append('\n');
        return text.append("    ")
                .append(ListPhrase.oils(circuit.oils()))
                .append('\n')
                .toString();
    }

    private static String kinds() {
        return Kinds.ALL.stream()
                .map(kind -> "  " + HeadingPhrase.headed(kind.word(), kind.about()) + "\n")
                .collect(Collectors.joining());
    }

    private static String faults() {
        return Arrays.stream(FaultKind.values())
                .map(kind ->
                        "  " + HeadingPhrase.headed(kind.word(), ListPhrase.fault(kind.about(), kind.sizeOf())) + "\n")
                .collect(Collectors.joining());
    }

    private static String units() {
        StringBuilder text = new StringBuilder();
        for (Dimension dimension : Dimension.values()) {
            List<String> units = Units.of(dimension);
            if (!units.isEmpty()) {
                String name = dimension.name().toLowerCase(Locale.ROOT).replace('_', ' ');
                text.append("  ")
                        .append(name)
                        .append(": ")
                        .append(String.join(", ", units))
                        .append('\n');
            }
        }
        return text.toString();
    }
}
