package hotidle.cli;

import hotidle.answer.phrase.ReportPhrase;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** Options of what stands above all else on a page. */
final class Letterhead {

    @Option(names = "--shop", paramLabel = "NAME", description = "who made it, above all else")
    private String shop;

    @Option(names = "--tag", paramLabel = "TEXT", description = "which unit on the bench it is about, above all else")
    private String tag;

    /** Its lines; none where nothing was given. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (shop != null) {
            lines.add(shop);
        }
        if (tag != null) {
            lines.add(ReportPhrase.tag(tag));
        }
        return lines;
    }
}
