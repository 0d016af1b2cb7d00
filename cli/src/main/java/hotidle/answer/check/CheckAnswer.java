package hotidle.answer.check;

import hotidle.answer.format.FirstScreen;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.Wrap;
import hotidle.answer.page.Block;
import hotidle.answer.phrase.AssumedPhrase;
import hotidle.answer.phrase.CircuitHoldsPhrase;
import hotidle.answer.phrase.DefaultsPhrase;
import hotidle.answer.phrase.DisplacementPhrase;
import hotidle.answer.phrase.MorePhrase;
import hotidle.answer.phrase.NotJudgedPhrase;
import hotidle.answer.phrase.OilPhrase;
import hotidle.answer.phrase.SheetPhrase;
import hotidle.answer.phrase.WearPhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.oil.Oil;
import hotidle.part.PumpChamber;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a circuit without faults holds, and what it leaves to the program.
 *
 * @param circuit  as it was read
 * @param warnings how many there are of it
 * @param unjudged clutches and bands of which nothing is judged, with the ranges that apply them
 */
public record CheckAnswer(
        DescribedCircuit circuit, int warnings, Map<String, List<String>> unjudged, Quantity.UnitSystem units) {

    /** What a reader gets first. */
    public String screen() {
        FirstScreen screen =
                new FirstScreen(MorePhrase.defaults(circuit.defaults().size()));
        screen.add(head(false));
        if (!circuit.sizes().isEmpty() && circuit.sheet().isEmpty()) {
            screen.add(Wrap.lines(MorePhrase.measured(sizes(true).size(), sizes(false)), "", "  "));
        }
        List<String> past = SizeTable.past(circuit, units);
        int most = Math.min(past.size(), MOST_PAST);
        if (most > 0) {
            screen.add(Wrap.lines(
                    MorePhrase.past(String.join(", ", past.subList(0, most)), past.size() - most), "", "  "));
        }
        if (!unjudged.isEmpty()) {
            screen.add(Wrap.lines(NotJudgedPhrase.of(unjudged), "", "  "));
        }
        return screen.text();
    }

    /** Sizes past their limit that the first screen names (chosen). */
    private static final int MOST_PAST = 12;

    /** Sizes with several readings that it names (chosen). */
    private static final int MOST_REDUCED = 4;

    /** Without sizes and values left to the program. */
    private String head(boolean all) {
        StringBuilder text = new StringBuilder();
        text.append(holds()).append('\n');
        text.append(oil(circuit.unit().oil(), units)).append('\n');
        displacements().ifPresent(line -> text.append(Wrap.lines(line, "", "  ")));
        sheet().ifPresent(line -> text.append(Wrap.lines(line, "", "  ")));
        reduced(all).forEach(line -> text.append(Wrap.lines(line, "", "  ")));
        List<String> assumed = circuit.unit().assumed();
        if (!assumed.isEmpty()) {
            text.append(Wrap.lines(AssumedPhrase.counted(assumed, all), "", "  "));
        }
        return text.toString();
    }

    /** Every size, and every value left to the program: each sort once, then each of them. */
    public String full() {
        StringBuilder text = new StringBuilder(head(true));
        if (!circuit.sizes().isEmpty()) {
            text.append('\n').append(SizeTable.of(circuit, units)).append('\n');
            for (boolean measured : new boolean[] {true, false}) {
                text.append(Wrap.lines(MorePhrase.each(measured, sizes(measured)), "", "  "));
            }
        }
        if (!unjudged.isEmpty()) {
            text.append('\n').append(Wrap.lines(NotJudgedPhrase.of(unjudged), "", "  "));
        }
        text.append("\n" + DefaultsPhrase.ONCE + "\n").append(DefaultsByOwner.of(circuit));
        return text.append("\n" + DefaultsPhrase.HEADING + "\n")
                .append(eachDefault())
                .toString();
    }

    /** What it leaves to the program, measured or assumed, on a page. */
    public List<Block> page() {
        List<String> said = new ArrayList<>(List.of(oil(circuit.unit().oil(), units)));
        displacements().ifPresent(said::add);
        sheet().ifPresent(said::add);
        List<String> assumed = circuit.unit().assumed();
        if (!assumed.isEmpty()) {
            said.add(AssumedPhrase.counted(assumed, true));
        }
        if (!unjudged.isEmpty()) {
            said.add(NotJudgedPhrase.of(unjudged));
        }
        List<Block> blocks = new ArrayList<>(List.of(Block.said(said)));
        if (!circuit.sizes().isEmpty()) {
            SizeTable sizes = new SizeTable(circuit, units);
            blocks.add(Block.table(WearPhrase.SIZES, sizes.table()));
            blocks.add(Block.said(sizes.pastLimit()));
        }
        if (!circuit.defaults().isEmpty()) {
            blocks.add(Block.table(AssumedPhrase.DEFAULTS, DefaultsByOwner.table(circuit)));
        }
        return blocks;
    }

    /** Names of the sizes that were measured, or of those that were not. */
    private List<String> sizes(boolean measured) {
        return circuit.sizes().stream()
                .filter(size -> circuit.measured(size).isPresent() == measured)
                .map(DescribedCircuit.SizeLine::name)
                .toList();
    }

    private String holds() {
        return CircuitHoldsPhrase.of(
                circuit.name(),
                circuit.nodes().size(),
                circuit.parts().size(),
                circuit.builds().size(),
                circuit.sizes().size(),
                warnings);
    }

    /** An oil of one viscosity has no temperatures at which it was measured. */
    private static String oil(Oil oil, Quantity.UnitSystem units) {
        return oil.line().isConstant()
                ? OilPhrase.constant(oil.name(), oil.viscosityIndex())
                : OilPhrase.measured(
                        oil.name(), oil.line().coldest(), oil.line().hottest(), oil.viscosityIndex(), units);
    }

    private Optional<String> displacements() {
        List<String> each = circuit.unit().network().parts().stream()
                .filter(placed -> placed.part() instanceof PumpChamber)
                .map(placed ->
                        DisplacementPhrase.of(placed.name(), ((PumpChamber) placed.part()).displacement(), units))
                .toList();
        return each.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", each));
    }

    private Optional<String> sheet() {
        return circuit.sheet()
                .map(build -> SheetPhrase.filled(
                        build, circuit.measured(build), circuit.sizes().size()));
    }

    /** Sizes with several readings; on the first screen the first of them. */
    private List<String> reduced(boolean all) {
        List<String> each = circuit.reduced();
        return all || each.size() <= MOST_REDUCED
                ? each
                : Stream.concat(
                                each.stream().limit(MOST_REDUCED),
                                Stream.of(MorePhrase.lines(each.size() - MOST_REDUCED, "such size")))
                        .toList();
    }

    private String eachDefault() {
        return circuit.defaults().stream()
                .map(line -> "  " + DefaultsPhrase.each(line.where(), line.value(), line.source()) + "\n")
                .collect(Collectors.joining());
    }
}
