package hotidle.answer.report;

import com.fasterxml.jackson.annotation.JsonProperty;
import hotidle.answer.page.Page;
import hotidle.answer.page.Section;
import java.util.List;
import java.util.Locale;

/** A report as JSON: what it was made of, what stands in it, and what each build comes to. */
record ReportRecord(
        String circuit,
        String file,
        @JsonProperty("for") String reader,
        String version,
        String command,
        List<Input> inputs,
        List<String> sections,
        int tables,
        int pictures,
        List<BuildSummary> builds) {

    /** A file that was read. */
    record Input(String file, String sha256) {}

    /** What a build comes to. */
    record BuildSummary(String build, String summary) {}

    static List<Input> inputs(MadeOf made) {
        return made.inputs().stream()
                .map(input -> new Input(input.file(), input.sha256()))
                .toList();
    }

    static ReportRecord of(ReportAnswer answer) {
        Page page = answer.page();
        return new ReportRecord(
                answer.circuit().name(),
                answer.file(),
                answer.reader().name().toLowerCase(Locale.ROOT),
                answer.made().version(),
                answer.made().command(),
                inputs(answer.made()),
                page.sections().stream().map(Section::title).toList(),
                page.tables(),
                page.figures(),
                answer.found().margins().builds().stream()
                        .map(build -> new BuildSummary(
                                build.unit().build(), answer.found().margins().verdict(build)))
                        .toList());
    }
}
