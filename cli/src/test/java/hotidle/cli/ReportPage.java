package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** A report as it was written, read back. */
record ReportPage(Document page) {

    /** Makes a report and reads it. */
    static ReportPage made(Path file, String... words) throws Exception {
        List<String> all = new ArrayList<>(List.of("report"));
        all.addAll(List.of(words));
        all.addAll(List.of("--out", file.toString()));
        Run run = Run.of(all.toArray(String[]::new));
        assertEquals(0, run.code(), run.err());
        return new ReportPage(
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile()));
    }

    static List<Element> all(Element in, String tag) {
        NodeList found = in.getElementsByTagName(tag);
        List<Element> all = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            all.add((Element) found.item(i));
        }
        return all;
    }

    Element section(String id) {
        return all(page.getDocumentElement(), "section").stream()
                .filter(section -> section.getAttribute("id").equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** The rows of a section's table whose caption begins so, cell by cell. */
    List<List<String>> table(String section, String caption) {
        Element table = all(section(section), "table").stream()
                .filter(one -> all(one, "caption").get(0).getTextContent().startsWith(caption))
                .findFirst()
                .orElseThrow();
        return all(all(table, "tbody").get(0), "tr").stream()
                .map(row -> {
                    List<String> cells = new ArrayList<>();
                    cells.add(all(row, "th").get(0).getTextContent());
                    all(row, "td").forEach(cell -> cells.add(cell.getTextContent()));
                    return cells;
                })
                .toList();
    }
}
