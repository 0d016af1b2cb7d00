package hotidle.cli;

import static hotidle.cli.ReportPage.all;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** The report of a worn unit as its reader gets it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ReportCommandTest {

    @TempDir
    static Path folder;

    private Path file;
    private String html;
    private ReportPage read;
    private Document page;

    @BeforeAll
    void report() throws Exception {
        file = folder.resolve("worn.html");
        read = ReportPage.made(
                file,
                "crescent-four",
                "--build",
                "worn",
                "--build",
                "restored",
                "--shop",
                "Bench & Sons <3>",
                "--tag",
                "4711");
        page = read.page();
        html = Files.readString(file);
    }

    private Element section(String id) {
        return read.section(id);
    }

    private List<List<String>> table(String section, String caption) {
        return read.table(section, caption);
    }

    @Test
    void itOpensFromDiskWithoutANetwork() throws IOException {
        assertTrue(Files.size(file) < 3_000_000, Files.size(file) + " bytes");
        String without = html.replaceAll("xmlns(:\\w+)?=\"[^\"]*\"", "");
        for (String outside :
                List.of(" src=", "<link", "<script", "@import", "url(http", "href=\"http", "xlink:href")) {
            assertFalse(without.contains(outside), outside);
        }
        Pattern.compile("href=\"([^\"]*)\"")
                .matcher(without)
                .results()
                .forEach(
                        link -> assertTrue(html.contains("id=\"" + link.group(1).substring(1) + "\""), link.group()));
    }

    @Test
    void itIsAsTheHtmlStandardWantsIt() throws Exception {
        assertEquals(List.of(), HtmlChecker.findings(file));
        Path broken = Files.writeString(folder.resolve("broken.html"), html.replaceFirst("</section>", "</div>"));
        assertFalse(HtmlChecker.findings(broken).isEmpty(), "a page that is not");
    }

    @Test
    void noTwoElementsShareAnId() {
        List<String> ids = Pattern.compile(" id=\"([^\"]*)\"")
                .matcher(html)
                .results()
                .map(id -> id.group(1))
                .toList();
        assertTrue(ids.size() > 20, ids.toString());
        assertEquals(ids.stream().distinct().count(), ids.size());
    }

    @Test
    void questionAndVerdictComeFirstInTheWordsOfMargins() {
        Element main = all(page.getDocumentElement(), "main").get(0);
        Element first = all(main, "section").get(0);
        assertEquals("answer", first.getAttribute("id"));
        assertTrue(all(page.getDocumentElement(), "h1").get(0).getTextContent().endsWith("?"));
        String said = Run.of("margins", "crescent-four", "--build", "worn", "--build", "restored", "--format", "json")
                .out();
        List<String> verdicts = Pattern.compile("\"summary\" ?: \"([^\"]*)\"")
                .matcher(said)
                .results()
                .map(found -> found.group(1))
                .toList();
        assertEquals(2, verdicts.size());
        verdicts.forEach(verdict -> assertTrue(
                all(first, "p").stream().anyMatch(line -> line.getTextContent().equals(verdict)), verdict));
    }

    @Test
    void everyFailingLimitStandsInItWithTheNumbersOfMargins() {
        List<List<String>> shown = table("limits", "worn: ");
        String csv = Run.of("margins", "crescent-four", "--build", "worn", "--format", "csv")
                .out();
        List<String[]> failing = csv.lines()
                .map(line -> line.split(",", -1))
                .filter(cells -> cells.length > 8 && cells[8].equals("fails"))
                .toList();
        assertFalse(failing.isEmpty());
        for (String[] limit : failing) {
            assertTrue(
                    shown.stream()
                            .anyMatch(row -> row.get(1).equals(limit[1])
                                    && row.get(2).endsWith("(" + limit[3] + ")")
                                    && row.get(3).startsWith(limit[4] + " of ")
                                    && row.get(3).contains(limit[5])),
                    String.join(" ", limit));
        }
    }

    @Test
    void flowsOfTheOilBudgetAreThoseOfLeaks() {
        List<List<String>> shown = table("oil", "Where the oil goes");
        String full =
                Run.of("leaks", "crescent-four", "--build", "worn", "--full").out();
        assertTrue(shown.size() > 10, shown.toString());
        for (List<String> row : shown) {
            assertTrue(
                    full.lines()
                            .map(String::strip)
                            .anyMatch(line -> line.startsWith(row.get(0))
                                    && line.endsWith(row.get(2))
                                    && line.contains(" " + row.get(1) + " ")),
                    row.toString());
        }
    }

    @Test
    void theChartSaysFromWhichSpeedTheLineIsHeld() {
        String json = Run.of("compare", "crescent-four", "--build", "worn", "--format", "json")
                .out();
        double onset = Double.parseDouble(
                json.replaceAll("(?s).*\"onset_rpm\" ?: \\{[^}]*?\"hot-idle\" ?: ([0-9.]+).*", "$1"));
        String title = all(section("compared"), "svg")
                .get(0)
                .getElementsByTagName("title")
                .item(0)
                .getTextContent();
        assertTrue(title.contains("worn: nothing under " + Math.round(onset) + " rpm holds "), title + " " + onset);
    }

    @Test
    void pressuresOfTheDrawingAreThoseOfTheState() {
        String json = Run.of("compare", "crescent-four", "--build", "worn", "--units", "si", "--format", "csv")
                .out();
        assertFalse(json.isEmpty());
        Element drawing = all(section("circuit"), "svg").get(0);
        assertTrue(
                all(drawing, "title").stream()
                        .anyMatch(title -> title.getTextContent().matches("line, \\d+ psi.*")),
                "the line's gauge");
    }

    @Test
    void whoMadeItAndWhichUnitStandAboveAllElse() {
        Element head = all(page.getDocumentElement(), "header").get(0);
        assertTrue(head.getTextContent().contains("Bench & Sons <3>"));
        assertTrue(head.getTextContent().contains("4711"));
    }

    @Test
    void itCanBeMadeAgain() throws Exception {
        String made = section("made").getTextContent();
        assertTrue(made.contains(
                "hotidle report crescent-four --build worn --build restored --shop \"Bench & Sons <3>\""));
        String sum = HexFormat.of()
                .formatHex(MessageDigest.getInstance("SHA-256")
                        .digest(hotidle.circuits.Library.text("crescent-four")
                                .orElseThrow()
                                .getBytes(java.nio.charset.StandardCharsets.UTF_8)));
        assertTrue(table("made", "Files").contains(List.of("crescent-four.yaml", sum)));
    }

    @Test
    void everyValueLeftToTheProgramIsNamed() {
        String check = Run.of("check", "crescent-four", "--full").out();
        String each = check.substring(check.indexOf("each value once\n"), check.indexOf("\nleft to the program\n"));
        long values = each.lines()
                .filter(line -> line.startsWith("    ") && !line.startsWith("      "))
                .count();
        assertEquals(values, table("assumptions", "Values that").size());
    }

    @Test
    void aCustomerGetsThePlainPartOfIt() throws Exception {
        Path plain = folder.resolve("customer.html");
        Run run = Run.of("report", "crescent-four", "--build", "worn", "--for", "customer", "--out", plain.toString());
        assertEquals(0, run.code(), run.err());
        String text = Files.readString(plain);
        assertTrue(text.contains("The unit as it is (worn) DOES NOT HOLD: "), text);
        assertTrue(
                text.contains("As it is it may be set: NOTHING. No pressure from 83 to 400 psi makes it hold."), text);
        assertTrue(
                Pattern.compile("After these repairs it may be set: \\d+ to \\d+ psi")
                        .matcher(text)
                        .find(),
                "what may be set then is that of the repaired unit");
        String answer = text.substring(text.indexOf("<section id=\"answer\""), text.indexOf("<section id=\"repair\""));
        assertTrue(answer.contains("As it is, its oil pressure at idle is LOW"), answer);
        String jobs = Run.of("leaks", "crescent-four", "--build", "worn", "--by", "job", "--format", "json")
                .out();
        String chosen = new ObjectMapper().readTree(jobs).at("/chosen/jobs/0").textValue();
        assertTrue(text.contains("Must be repaired: " + chosen + ". After these repairs it holds"), chosen);
        assertFalse(text.substring(text.indexOf("<main>")).contains(" --"), "a customer types nothing");
        assertFalse(text.contains("SHA-256"));
        String said = text.substring(text.indexOf("<main>")).replaceAll("(?s)<svg.*?</svg>", "");
        for (String trade : List.of("hot-idle", "stall", "first build named")) {
            assertFalse(said.contains(trade), trade);
        }
        assertTrue(text.split("as far as is known", -1).length <= 2, "said once, with what is not known");
        for (String trade :
                List.of("shop's words", ", repaired", "holds every limit", "fails first", "apply, holding")) {
            assertFalse(text.substring(text.indexOf("<main>")).contains(trade), trade);
        }
        assertTrue(text.length() < html.length() / 3);
        assertEquals(List.of(), HtmlChecker.findings(plain));
    }

    @Test
    void anOldReportStaysWhereANewOneCannotBeMade() throws IOException {
        Path old = Files.writeString(folder.resolve("old.html"), "old");
        assertEquals(
                2,
                Run.of("report", "training-rig", "--build", "nosuch", "--out", old.toString())
                        .code());
        assertEquals("old", Files.readString(old));
        assertEquals(
                0, Run.of("report", "training-rig", "--out", old.toString()).code());
        assertTrue(Files.readString(old).endsWith("</html>\n"));
    }

    @Test
    void aBenchSaysWhatItsReportLeavesOut() throws IOException {
        Path bench = folder.resolve("bench.html");
        assertEquals(
                0, Run.of("report", "training-rig", "--out", bench.toString()).code());
        String text = Files.readString(bench);
        assertTrue(text.contains("Not in it: pressures that may be set"), "no command");
        assertTrue(text.contains("Not in it: wear limits"));
    }
}
