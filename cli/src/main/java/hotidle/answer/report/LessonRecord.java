package hotidle.answer.report;

import com.fasterxml.jackson.annotation.JsonProperty;
import hotidle.answer.page.Page;
import hotidle.answer.page.Section;
import hotidle.answer.phrase.LessonPhrase;
import hotidle.fault.UnitFault;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A handout as JSON: what it was made of, what stands in it, and its key. */
record LessonRecord(
        String circuit,
        String file,
        @JsonProperty("for") String reader,
        String version,
        String command,
        List<ReportRecord.Input> inputs,
        List<String> sections,
        int tables,
        int pictures,
        List<String> candidates,
        List<KeyLine> key) {

    /** Which unit is which build. */
    record KeyLine(String unit, String build, Optional<String> fault, List<String> readsAs) {}

    static LessonRecord of(LessonAnswer answer) {
        Page page = answer.page();
        List<KeyLine> key = new ArrayList<>();
        for (int i = 0; i < answer.cases().size(); i++) {
            LessonUnit one = answer.cases().get(i);
            key.add(new KeyLine(
                    LessonPhrase.unit(i),
                    one.sweep().unit().build(),
                    Optional.of(one.fault()).filter(fault -> !fault.isEmpty()),
                    one.readsAs().stream().map(UnitFault::name).toList()));
        }
        return new LessonRecord(
                answer.circuit().name(),
                answer.file(),
                "learner",
                answer.made().version(),
                answer.made().command(),
                ReportRecord.inputs(answer.made()),
                page.sections().stream().map(Section::title).toList(),
                page.tables(),
                page.figures(),
                answer.candidates().stream().map(UnitFault::name).toList(),
                key);
    }
}
