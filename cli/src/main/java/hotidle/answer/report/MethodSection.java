package hotidle.answer.report;

import hotidle.answer.format.TextTable;
import hotidle.answer.page.Block;
import hotidle.answer.page.Section;
import hotidle.answer.phrase.ReportPhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.kind.Kinds;
import java.util.List;

/** How the numbers were found, and the law of each kind of part in the circuit, with its source. */
final class MethodSection {

    private MethodSection() {}

    static Section of(DescribedCircuit circuit) {
        TextTable laws = new TextTable(ReportPhrase.LAW_HEAD);
        Kinds.ALL.stream()
                .filter(kind ->
                        circuit.parts().stream().anyMatch(part -> part.kind().equals(kind.word())))
                .forEach(kind -> laws.add(List.of(
                        kind.word(), kind.physics().law(), kind.physics().source())));
        return new Section(
                "method",
                ReportPhrase.METHOD,
                List.of(Block.said(ReportPhrase.HOW), Block.table(ReportPhrase.LAWS, laws)));
    }
}
