package hotidle.answer.report;

import hotidle.answer.format.TextTable;
import hotidle.answer.page.Block;
import hotidle.answer.page.PageTable;
import hotidle.answer.phrase.ReportPhrase;
import java.util.List;

/** How a page was made: program, command, and every file with its checksum. */
record MadeSection(MadeOf made) {

    List<Block> blocks() {
        TextTable inputs = new TextTable(ReportPhrase.INPUT_HEAD);
        made.inputs().forEach(input -> inputs.add(List.of(input.file(), input.sha256())));
        return List.of(new Block(
                List.of(
                        new Block.Line(ReportPhrase.VERSION + made.version(), ""),
                        new Block.Line(ReportPhrase.COMMAND + made.command(), "command")),
                List.of(PageTable.of(ReportPhrase.INPUTS, inputs)),
                List.of()));
    }
}
