package hotidle.cli.page;

import com.github.mustachejava.DefaultMustacheFactory;
import hotidle.answer.page.Page;
import hotidle.answer.page.Section;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A page as one HTML file that needs nothing from outside. Text is escaped by the template engine; pictures are elements of the page.
 * It is well-formed as XML too.
 */
public final class HtmlPage {

    /** Of the templates, beside this class. */
    private static final String FOLDER = "hotidle/cli/page";

    /** A page of fewer sections needs no list of them. */
    private static final int CONTENTS = 8;

    private HtmlPage() {}

    /**
     * What the template is given.
     *
     * @param contents once where the sections are listed, else nothing
     */
    public record View(
            String title, String question, List<String> letterhead, List<Contents> contents, List<Section> sections) {}

    /** The list of sections. */
    public record Contents(List<Section> sections) {}

    /** The file's bytes, UTF-8. */
    public static byte[] of(Page page) {
        View view = new View(
                page.title(),
                page.question(),
                page.letterhead(),
                page.sections().size() < CONTENTS ? List.of() : List.of(new Contents(page.sections())),
                page.sections());
        StringWriter text = new StringWriter();
        try {
            new DefaultMustacheFactory(FOLDER)
                    .compile("page.html")
                    .execute(text, view)
                    .flush();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }
}
