package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reports as a browser shows and prints them; without a browser nothing is tested, and the log says so. */
class ReportInBrowserTest {

    @TempDir
    static Path folder;

    private static String browser;
    private static Path shop;
    private static Path customer;
    private static Path lesson;

    @BeforeAll
    static void reports() {
        Optional<Path> found = InstalledBrowser.program("reports");
        Assumptions.assumeTrue(found.isPresent(), "no browser on the path");
        browser = found.get().toString();
        shop = report("shop.html");
        customer = report("customer.html", "--for", "customer");
        lesson = report("lesson.html", "--lesson");
    }

    private static Path report(String name, String... more) {
        Path file = folder.resolve(name);
        List<String> words =
                new ArrayList<>(List.of("report", "crescent-four", "--build", "worn", "--out", file.toString()));
        words.addAll(Arrays.asList(more));
        assertEquals(0, Run.of(words.toArray(String[]::new)).code());
        return file;
    }

    private static String run(String... options) throws IOException, InterruptedException {
        List<String> words = new ArrayList<>(List.of(
                browser,
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--user-data-dir=" + folder.resolve("profile")));
        words.addAll(Arrays.asList(options));
        Path out = Files.createTempFile(folder, "out", ".txt");
        Process process = new ProcessBuilder(words)
                .redirectOutput(out.toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        assertTrue(process.waitFor(60, TimeUnit.SECONDS), "the browser did not end");
        return Files.readString(out, StandardCharsets.UTF_8);
    }

    /**
     * What a page says of itself in windows of some widths [px], by a page around them that asks: an answer each, in the order of the
     * questions; {@code of} is its document. One start of the browser for all of them, since starts are what takes time.
     */
    private static List<String> asked(Path page, List<Question> questions) throws IOException, InterruptedException {
        String inner = Files.readString(page).replace("&", "&amp;").replace("\"", "&quot;");
        StringBuilder frames = new StringBuilder("<!DOCTYPE html><meta charset=\"UTF-8\">");
        for (int i = 0; i < questions.size(); i++) {
            Question question = questions.get(i);
            frames.append(
                    "<iframe width=\"" + question.window + "\" height=\"800\" style=\"border:0\" srcdoc=\"" + inner
                            + "\" onload=\"const of = this.contentDocument; document.body.append(' said " + i + " ' + ("
                            + question.asks
                            + ") + ' so.')\"></iframe>");
        }
        Path around = Files.writeString(folder.resolve("around.html"), frames);
        String dom = run("--dump-dom", around.toUri().toString());
        String said = dom.substring(dom.lastIndexOf("</iframe>"));
        List<String> answers = new ArrayList<>();
        for (int i = 0; i < questions.size(); i++) {
            answers.add(said.replaceAll("(?s).* said " + i + " (.*?) so\\..*", "$1"));
        }
        return answers;
    }

    /** Of a page in a window of a width [px]: a script's expression. */
    private record Question(int window, String asks) {}

    /** Sheets of a paper [as CSS calls it] that a page takes in print. */
    private static long sheets(Path page, String paper) throws IOException, InterruptedException {
        Path on = Files.writeString(
                folder.resolve(paper + "-" + page.getFileName()),
                Files.readString(page).replace("</head>", "<style>@page{size:" + paper + "}</style></head>"));
        Path pdf = folder.resolve(on.getFileName() + ".pdf");
        run("--no-pdf-header-footer", "--print-to-pdf=" + pdf, on.toUri().toString());
        String raw = Files.readString(pdf, StandardCharsets.ISO_8859_1);
        String height = paper.equals("A4") ? "84[12]" : "792";
        assertTrue(raw.matches("(?s).*/MediaBox \\[0 0 [0-9.]+ " + height + ".*"), paper + " was not printed on");
        return Pattern.compile("/Type\\s*/Page\\b(?!s)").matcher(raw).results().count();
    }

    /** What axe-core says of a page in the browser: its rules broken, and how many are kept. */
    private static String accessibility(Path page) throws IOException, InterruptedException {
        String axe = AxeCore.script();
        Path with = Files.writeString(
                folder.resolve("axe.html"),
                Files.readString(page)
                        .replace(
                                "</body>",
                                "<script>" + axe + "</script><script>axe.run().then(found => { document.title ="
                                        + " 'broken ' + found.violations.map(one => one.id + ': '"
                                        + " + one.nodes[0].html).join('; ') + ' kept ' + found.passes.length; });"
                                        + "</script></body>"));
        String dom =
                run("--virtual-time-budget=60000", "--dump-dom", with.toUri().toString());
        return dom.replaceAll("(?s).*?<title>(.*?)</title>.*", "$1");
    }

    @Test
    void whoListensOrUsesKeysGetsAllOfIt() throws Exception {
        for (Path page : List.of(shop, customer, lesson)) {
            String found = accessibility(page);
            assertTrue(found.matches("broken  kept [1-9]\\d+"), page.getFileName() + ": " + found);
        }
    }

    @Test
    void noPageIsWiderThanItsWindow() throws Exception {
        List<Integer> windows = List.of(360, 800, 1280);
        List<String> widths = asked(
                shop,
                windows.stream()
                        .map(window -> new Question(window, "of.documentElement.scrollWidth"))
                        .toList());
        for (int i = 0; i < windows.size(); i++) {
            int width = Integer.parseInt(widths.get(i));
            assertTrue(width <= windows.get(i), "at " + windows.get(i) + " px it is " + width + " wide");
        }
    }

    /** On a telephone a picture is whole, its title too; whoever taps it reads it larger. The reason of a limit has the page's width. */
    @Test
    void aTelephoneShowsPicturesWholeAndReasonsInFull() throws Exception {
        String pictures =
                "const all = [...of.querySelectorAll('.picture')], one = all[0], wide = () => one.querySelector('svg')"
                        + ".getBoundingClientRect().width;"
                        + " const whole = all.every((picture) => picture.scrollWidth <= picture.clientWidth); const before = wide();"
                        + " one.focus(); return whole + ' ' + (before <= 360) + ' ' + (wide() > 500)";
        assertEquals(
                List.of("true true true", "true", "false"),
                asked(
                        shop,
                        List.of(
                                new Question(360, "(() => {" + pictures + "})()"),
                                new Question(
                                        360,
                                        "[...of.querySelectorAll('#limits tbody td:last-child')].every((why) => why.clientWidth > 300)"),
                                new Question(
                                        1000, "getComputedStyle(of.querySelector('#limits tr')).display === 'grid'"))));
    }

    /** Builds side by side: each is read on a telephone without sliding, under the heading of the row, and no cell is cut. */
    @Test
    void aTelephoneShowsEveryBuildOfATable() throws Exception {
        Path four = report("four.html", "--build", "fresh", "--build", "restored", "--build", "worn-raised");
        String cut = "[...of.querySelectorAll('.table')].filter((one) => one.scrollWidth > one.clientWidth + 1)"
                + ".map((one) => one.getAttribute('aria-label')).join('; ')";
        String cells = "(() => { const row = of.querySelector('#compared tbody tr');"
                + " return [...row.querySelectorAll('td')].map((cell) => cell.dataset.of).join(' ') + ' '"
                + " + (getComputedStyle(row).display === 'grid'); })()";
        assertEquals(
                List.of("", "worn fresh restored worn-raised true", "worn fresh restored worn-raised false"),
                asked(four, List.of(new Question(360, cut), new Question(360, cells), new Question(1280, cells))));
    }

    @Test
    void theCustomersReportIsTwoPages() throws Exception {
        for (String paper : List.of("A4", "Letter")) {
            long sheets = sheets(customer, paper);
            assertTrue(sheets >= 1 && sheets <= 2, sheets + " sheets of " + paper);
        }
    }

    @Test
    void threeBuildsFitACustomersTwoPagesToo() throws Exception {
        Path three = report("three.html", "--build", "worn-raised", "--build", "restored", "--for", "customer");
        for (String paper : List.of("A4", "Letter")) {
            assertEquals(2, sheets(three, paper), paper);
        }
    }

    /** Tables that begin ever nearer to the end of a page: none leaves its heading and its head behind there. */
    @Test
    void aTablesHeadingStandsOnNoPageWithoutItsRows() throws Exception {
        String whole = Files.readString(shop);
        StringBuilder body = new StringBuilder();
        for (int above = 200; above < 264; above += 2) {
            body.append("<section style='break-before: page'><div style='height: ")
                    .append(above)
                    .append("mm'>above</div><div class='table'><table><caption>CAPTION</caption>")
                    .append("<thead><tr><th>HEAD</th></tr></thead><tbody>")
                    .append("<tr><th>row</th></tr>".repeat(12))
                    .append("</tbody></table></div></section>");
        }
        Path page = Files.writeString(
                folder.resolve("tables.html"),
                whole.substring(0, whole.indexOf("<body>")) + "<body><main>" + body + "</main></body></html>");
        sheets(page, "A4");
        int split = 0;
        try (PDDocument printed =
                Loader.loadPDF(folder.resolve("A4-tables.html.pdf").toFile())) {
            for (int i = 1; i <= printed.getNumberOfPages(); i++) {
                PDFTextStripper text = new PDFTextStripper();
                text.setStartPage(i);
                text.setEndPage(i);
                List<String> lines = text.getText(printed).lines().toList();
                assertEquals("row", lines.get(lines.size() - 1).replace("above", "row"), "page " + i + ": " + lines);
                split += lines.get(0).equals("above") && lines.size() < 15 && lines.contains("row") ? 1 : 0;
            }
        }
        assertTrue(split > 0, "some table goes over a page's end");
    }

    @Test
    void theShopsReportPrints() throws Exception {
        assertTrue(sheets(shop, "A4") > 3);
    }
}
