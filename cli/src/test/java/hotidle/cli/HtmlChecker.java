package hotidle.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import nu.validator.client.EmbeddedValidator;
import org.xml.sax.SAXException;

/** The checker of the HTML standard, which reads a page as a browser does. */
final class HtmlChecker {

    /** Pages are XML too, so empty elements end in a slash, which HTML allows and the checker remarks on. */
    private static final String SLASH = "info: Trailing slash on void elements";

    private HtmlChecker() {}

    /** What it finds, a line each; none where the page is as the standard wants it. */
    static List<String> findings(Path page) throws IOException, SAXException {
        EmbeddedValidator checker = new EmbeddedValidator();
        checker.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
        try (InputStream in = Files.newInputStream(page)) {
            return checker.validate(in)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.contains(SLASH))
                    .toList();
        }
    }
}
