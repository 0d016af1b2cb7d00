package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shop's letterhead with a photograph of a pump cover, on a report with gauge readings. */
class LetterheadTest {

    @TempDir
    Path folder;

    private Path letterhead(String text) throws IOException {
        return Files.writeString(folder.resolve("shop.csv"), text);
    }

    private void photograph(String name) throws IOException {
        BufferedImage image = new BufferedImage(3000, 2000, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setPaint(Color.ORANGE);
        g.fillRect(0, 0, 3000, 2000);
        g.dispose();
        ImageIO.write(image, "jpg", folder.resolve(name).toFile());
    }

    private Run report(Path head, String... more) {
        java.util.List<String> words = new java.util.ArrayList<>(java.util.List.of(
                "report",
                "training-rig",
                "--letterhead",
                head.toString(),
                "--out",
                folder.resolve("r.html").toString()));
        words.addAll(java.util.Arrays.asList(more));
        return Run.of(words.toArray(String[]::new));
    }

    @Test
    void shopUnitAndPhotographsComeFromItsFile() throws Exception {
        photograph("cover.jpg");
        Run run = report(
                letterhead("shop;Bench & Sons <3>\nunit;4711\nphotograph;cover.jpg;Pump cover, scored\n"),
                "--tag",
                "4712",
                "--readings",
                "src/test/golden/files/readings-rig.csv");
        assertEquals(0, run.code(), run.err());
        String html = Files.readString(folder.resolve("r.html"));
        DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(folder.resolve("r.html").toFile());
        assertEquals(java.util.List.of(), HtmlChecker.findings(folder.resolve("r.html")));
        assertTrue(html.contains("<p>Bench &amp; Sons &lt;3&gt;</p>"), "the shop");
        assertTrue(html.contains("<p>Unit 4712</p>"), "the option comes before the file");
        Matcher photo = Pattern.compile("<img alt=\"Pump cover, scored\" src=\"data:image/jpeg;base64,([^\"]*)\"/>")
                .matcher(html);
        assertTrue(photo.find(), "the photograph");
        BufferedImage shown = ImageIO.read(
                new java.io.ByteArrayInputStream(Base64.getDecoder().decode(photo.group(1))));
        assertEquals(1000, shown.getWidth());
        assertTrue(Files.size(folder.resolve("r.html")) < 3_000_000);
        assertTrue(html.contains("cover.jpg</th>"), "its checksum");
        assertTrue(html.contains("readings-rig.csv</th>"), "that of the readings");
    }

    /** In the words of gauge, with the numbers of its answer. */
    @Test
    void gaugeReadingsAreToldAsGaugeTellsThem() throws IOException {
        Run run = report(letterhead("shop,Bench\n"), "--readings", "src/test/golden/files/readings-rig.csv");
        assertEquals(0, run.code(), run.err());
        String html = Files.readString(folder.resolve("r.html"));
        String full = Run.of("gauge", "training-rig", "--readings", "src/test/golden/files/readings-rig.csv", "--full")
                .out()
                .replaceAll("\\s+", " ");
        String section = html.substring(html.indexOf("<section id=\"gauge\""));
        section = section.substring(0, section.indexOf("</section>"));
        Matcher lines = Pattern.compile("<p class=\"[^\"]*\">([^<]*)</p>").matcher(section);
        int said = 0;
        while (lines.find()) {
            said++;
            String line =
                    lines.group(1).replace("&gt;", ">").replace("&lt;", "<").replace("&#61;", "=");
            assertTrue(full.contains(line.replace("&amp;", "&").replace("&#39;", "'")), line);
        }
        assertTrue(said >= 5, section);
        Matcher cells =
                Pattern.compile("<td class=\"[^\"]*\"[^>]*>([^<]+)</td>").matcher(section);
        int numbers = 0;
        while (cells.find()) {
            numbers++;
            String cell = cells.group(1).strip().replace("&lt;", "<").replace("&gt;", ">");
            assertTrue(full.contains(cell), cell);
        }
        assertTrue(numbers > 20, section);
    }

    /** The readings are of the unit, the verdicts of a build: whether the one is the other stands first. */
    @Test
    void whetherReadingsAgreeStandsAboveTheVerdictsOnBuilds() throws IOException {
        String rig = "src/test/golden/files/readings-rig.csv";
        assertEquals(0, report(letterhead("shop,Bench\n"), "--readings", rig).code());
        String html = Files.readString(folder.resolve("r.html"));
        String answer = html.substring(html.indexOf("<section id=\"answer\""));
        answer = answer.substring(0, answer.indexOf("</section>"));
        assertTrue(answer.indexOf("THEY DO NOT AGREE") > 0, answer);
        assertTrue(answer.indexOf("THEY DO NOT AGREE") < answer.indexOf("class=\"verdict"), answer);
        assertTrue(answer.contains("is not said of the unit that was read"), answer);
        assertEquals(
                0,
                report(letterhead("shop,Bench\n"), "--readings", rig, "--for", "customer")
                        .code());
        String customer = Files.readString(folder.resolve("r.html"));
        assertTrue(customer.indexOf("do NOT fit the build shown here") < customer.indexOf("class=\"verdict"), customer);
        assertTrue(customer.contains("do NOT fit the build shown here"), customer);
    }

    @Test
    void whatIsWrongWithItIsSaidBeforeAnythingIsSolved() throws IOException {
        photograph("a.jpg");
        Files.writeString(folder.resolve("text.jpg"), "no picture");
        for (String[] wrong : new String[][] {
            {"shop,Bench\nfoto,a.jpg\n", "row 2: unknown word 'foto'"},
            {"shop\n", "row 1: shop has nothing behind it"},
            {"photograph,text.jpg\n", "is no picture that can be read"},
            {"photograph,none.jpg\n", "there is no such file"},
            {"photograph,a.jpg\n".repeat(7), "has 7 photographs"},
            {"shop,\"Bench\n", "cannot be read"},
        }) {
            Run run = report(letterhead(wrong[0]));
            assertEquals(2, run.code(), wrong[0]);
            assertTrue(run.err().contains(wrong[1]), run.err());
            assertFalse(Files.exists(folder.resolve("r.html")));
        }
    }
}
