package hotidle.answer.report;

import hotidle.answer.format.FirstScreen;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.page.Block;
import hotidle.answer.page.Figure;
import hotidle.answer.page.Page;
import hotidle.answer.page.PageAnswer;
import hotidle.answer.page.Section;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.ReportPhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.JudgedBuild;
import java.util.List;

/**
 * A report on some builds, and what is told of it where it was asked for.
 *
 * @param file       where it lies
 * @param reader     whom it is for
 * @param circuit    what it is about
 * @param found      what the commands answered
 * @param page       that is written; put together once, since its charts take their time
 * @param made       what it was made of
 */
public record ReportAnswer(String file, Reader reader, DescribedCircuit circuit, Findings found, Page page, MadeOf made)
        implements PageAnswer {

    /** Whom a report is for. */
    public enum Reader {
        SHOP,
        CUSTOMER
    }

    /**
     * Puts it together.
     *
     * @param units      in which it is shown
     * @param letterhead who made it, of which unit
     * @param drawing    of the circuit
     */
    public static ReportAnswer of(
            Quantity.UnitSystem units,
            String file,
            Reader reader,
            PageHead letterhead,
            DescribedCircuit circuit,
            Findings found,
            List<Figure> drawing,
            MadeOf made) {
        List<String> builds = found.margins().builds().stream()
                .map(build -> build.unit().build())
                .toList();
        boolean customer = reader == Reader.CUSTOMER;
        ReportSections sections = new ReportSections(units, circuit, found, drawing, letterhead.photographs(), made);
        Page page = new Page(
                ReportPhrase.title(circuit.name(), builds),
                customer ? ReportPhrase.CUSTOMER_QUESTION : ReportPhrase.question(builds),
                ReportPhrase.head(letterhead.lines(), HeadingPhrase.headed(circuit.name(), circuit.about())),
                customer ? new CustomerSections(sections).all() : sections.all());
        return new ReportAnswer(file, reader, circuit, found, page, made);
    }

    @Override
    public String screen() {
        FirstScreen screen = new FirstScreen(
                Caution.of(found.margins().builds().get(0).unit().commanded().isPresent(), false) + "\n");
        screen.add(written());
        List<JudgedBuild> builds = found.margins().builds();
        builds.forEach(build -> screen.addWhereRoom(Wrap.lines(found.margins().verdict(build), "", "  ")));
        return screen.text();
    }

    private String written() {
        return file + "\n"
                + Wrap.lines(ReportPhrase.written(page.sections().size(), page.tables(), page.figures()), "", "  ");
    }

    /** The headings of the page, and what it says first. */
    @Override
    public String full() {
        StringBuilder text = new StringBuilder(written());
        for (Section section : page.sections()) {
            text.append(Wrap.lines(section.title(), "", "  "));
            section.blocks().stream()
                    .flatMap(block -> block.lines().stream())
                    .limit(1)
                    .map(Block.Line::text)
                    .forEach(line -> text.append(Wrap.lines(line, "  ", "    ")));
        }
        return text.toString();
    }

    /** The limits that stand in it, as a spreadsheet gets them from {@code margins}. */
    @Override
    public TextTable table() {
        return found.margins().table();
    }

    @Override
    public Object json() {
        return ReportRecord.of(this);
    }

    @Override
    public boolean complete() {
        return found.complete();
    }
}
