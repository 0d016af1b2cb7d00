package hotidle.cli;

import hotidle.answer.phrase.ReportPhrase;
import hotidle.answer.report.PageHead;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** Options of what stands above all else on a page. */
final class Letterhead {

    @Option(names = "--shop", paramLabel = "NAME", description = "who made it, above all else")
    private String shop;

    @Option(names = "--tag", paramLabel = "TEXT", description = "which unit on the bench it is about, above all else")
    private String tag;

    @Option(
            names = "--letterhead",
            paramLabel = "FILE.csv",
            description =
                    "a small file with rows 'shop,NAME', 'unit,TEXT' and up to six 'photograph,FILE.jpg,CAPTION', which"
                            + " are made smaller and go into the page; --shop and --tag come first")
    private Path file;

    /**
     * What stands there; {@code inputs} gets every file that was read.
     *
     * @throws WrongInputException where a file is not there or cannot be read
     */
    PageHead read(ReadInputs inputs) {
        LetterheadFile written = file == null ? LetterheadFile.NONE : LetterheadFile.read(file, inputs);
        String maker = shop == null ? written.shop() : shop;
        String unit = tag == null ? written.unit() : tag;
        List<String> lines = new ArrayList<>();
        if (!maker.isEmpty()) {
            lines.add(maker);
        }
        if (!unit.isEmpty()) {
            lines.add(ReportPhrase.tag(unit));
        }
        return new PageHead(lines, written.photographs());
    }
}
