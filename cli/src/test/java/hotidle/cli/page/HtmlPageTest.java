package hotidle.cli.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.TextTable;
import hotidle.answer.page.Block;
import hotidle.answer.page.Figure;
import hotidle.answer.page.Page;
import hotidle.answer.page.Section;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

class HtmlPageTest {

    private static final String HOSTILE = "<b>\"clutch\" & 'pump' {{title}}</b>";

    private static Page page(String text, int sections) {
        Block all = new Block(
                List.of(new Block.Line(text, "verdict fails")),
                Block.table(text, new TextTable(List.of("", text)).add(List.of(text, "107 LOW")))
                        .tables(),
                List.of(new Figure(
                        "<svg xmlns=\"http://www.w3.org/2000/svg\"><title>drawn</title></svg>", text, true)));
        return new Page(
                text,
                text,
                List.of(text),
                IntStream.range(0, sections)
                        .mapToObj(i -> new Section("s" + i, text, List.of(all)))
                        .toList());
    }

    private static String html(Page page) {
        return new String(HtmlPage.of(page), StandardCharsets.UTF_8);
    }

    private static Document parsed(Page page) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(HtmlPage.of(page)));
    }

    @Test
    void whatAFileSaysIsTextAndNeverMarkup() throws Exception {
        Document document = parsed(page(HOSTILE, 1));
        assertEquals(0, document.getElementsByTagName("b").getLength());
        for (String tag : List.of("title", "h1", "h2", "caption", "figcaption")) {
            assertEquals(HOSTILE, document.getElementsByTagName(tag).item(0).getTextContent(), tag);
        }
    }

    @Test
    void aPictureIsAnElementOfThePage() throws Exception {
        assertEquals(1, parsed(page("a", 1)).getElementsByTagName("svg").getLength());
        assertTrue(html(page("a", 1)).contains("<figure class=\"sheet\">"));
    }

    /** On paper a drawing is turned where it is wider than high, and only there: the other way it would be cut. */
    @Test
    void aDrawingThatStandsUprightIsNotTurned() {
        Page upright = new Page(
                "a",
                "a",
                List.of(),
                List.of(new Section("s", "a", List.of(Block.figure(Figure.sheet("<svg/>", "a", 210, 297))))));
        assertTrue(html(upright).contains("<figure class=\"sheet upright\">"));
        assertTrue(html(upright).contains(".sheet:not(.upright) .picture svg {"));
        assertEquals("sheet", Figure.sheet("<svg/>", "a", 297, 210).looks());
    }

    /** Letters of a drawing for A3 would be half as high on A4: each half takes a sheet, an upright one lying on its side. */
    @Test
    void aDrawingLargerThanASheetIsPrintedInTwoHalves() {
        Figure upright = Figure.sheet("<svg><title>a</title><path/></svg>", "a", 297, 420);
        assertEquals(
                List.of(
                        new Figure.Half("0 0 210.0 297.0", "translate(210.0 0) rotate(90)", "drawn"),
                        new Figure.Half("0 0 210.0 297.0", "translate(420.0 0) rotate(90)", "drawn")),
                upright.halves());
        assertEquals("<svg><title>a</title><g id=\"drawn\"><path/></g></svg>", upright.svg());
        Figure across = Figure.sheet("<svg><title>a</title></svg>", "a", 420, 297);
        assertEquals("210.0 0 210.0 297", across.halves().get(1).view());
        assertEquals(List.of(), Figure.sheet("<svg/>", "a", 297, 210).halves());
        String html =
                html(new Page("a", "a", List.of(), List.of(new Section("s", "a", List.of(Block.figure(upright))))));
        assertEquals(2, html.split("<use href=\"#drawn\"", -1).length - 1);
    }

    @Test
    void aLongPageListsItsSectionsAndAShortOneDoesNot() {
        assertTrue(html(page("a", 8)).contains("<a href=\"#s7\">"));
        assertFalse(html(page("a", 7)).contains("<nav"));
    }

    /** An empty heading would be read aloud as nothing; what only scrolls is no landmark. */
    @Test
    void whoListensHearsNoEmptyHeadingAndNoLandmarkTwice() throws Exception {
        Document document = parsed(page("a", 2));
        for (int i = 0; i < document.getElementsByTagName("th").getLength(); i++) {
            assertFalse(
                    document.getElementsByTagName("th").item(i).getTextContent().isBlank());
        }
        assertFalse(html(page("a", 2)).contains("role=\"region\""));
    }

    @Test
    void theSamePageGivesTheSameBytes() {
        assertEquals(html(page("a", 8)), html(page("a", 8)));
    }

    @Test
    void noHeadingIsSkipped() throws Exception {
        Document document = parsed(page("a", 3));
        assertEquals(1, document.getElementsByTagName("h1").getLength());
        assertEquals(3, document.getElementsByTagName("h2").getLength());
        assertEquals(0, document.getElementsByTagName("h3").getLength());
    }
}
