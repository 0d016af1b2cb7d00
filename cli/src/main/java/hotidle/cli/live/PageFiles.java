package hotidle.cli.live;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The files of the page: a fixed table, read from the program itself. No folder is looked into. */
final class PageFiles {

    /** A file of the page. */
    @SuppressWarnings("ArrayRecordComponent") // bytes on their way out
    record PageFile(String type, byte[] content) {}

    private static final String HTML = "text/html; charset=utf-8";
    private static final String CSS = "text/css; charset=utf-8";
    private static final String SCRIPT = "text/javascript; charset=utf-8";

    /** Of the library of charts; its version is that of the pom. */
    private static final String CHARTS = "/META-INF/resources/webjars/uplot/1.6.30/dist/";

    private static final Map<String, String> OWN = Map.ofEntries(
            Map.entry("live.css", CSS),
            Map.entry("lesson.css", CSS),
            Map.entry("write.css", CSS),
            Map.entry("lesson.js", SCRIPT),
            Map.entry("lesson-end.js", SCRIPT),
            Map.entry("lesson-teacher.js", SCRIPT),
            Map.entry("write.js", SCRIPT),
            Map.entry("main.js", SCRIPT),
            Map.entry("ahead.js", SCRIPT),
            Map.entry("ask.js", SCRIPT),
            Map.entry("state.js", SCRIPT),
            Map.entry("units.js", SCRIPT),
            Map.entry("dom.js", SCRIPT),
            Map.entry("conditions.js", SCRIPT),
            Map.entry("sheet.js", SCRIPT),
            Map.entry("verdict.js", SCRIPT),
            Map.entry("oil.js", SCRIPT),
            Map.entry("work.js", SCRIPT),
            Map.entry("drawing.js", SCRIPT),
            Map.entry("download.js", SCRIPT),
            Map.entry("gauges.css", CSS),
            Map.entry("gauges.js", SCRIPT),
            Map.entry("causes.js", SCRIPT),
            Map.entry("places.js", SCRIPT),
            Map.entry("took.js", SCRIPT),
            Map.entry("scales.js", SCRIPT),
            Map.entry("readings.js", SCRIPT),
            Map.entry("test-point.js", SCRIPT),
            Map.entry("chart-look.js", SCRIPT),
            Map.entry("curve.js", SCRIPT));

    private final Map<String, PageFile> files = new LinkedHashMap<>();

    PageFiles() {
        files.put("/", read("index.html", HTML));
        OWN.forEach((name, type) -> files.put("/" + name, read(name, type)));
        files.put("/uPlot.esm.js", read(CHARTS + "uPlot.esm.js", SCRIPT));
        files.put("/uPlot.min.css", read(CHARTS + "uPlot.min.css", CSS));
    }

    /** The file at a path; empty where there is none. */
    Optional<PageFile> at(String path) {
        return Optional.ofNullable(files.get(path));
    }

    private static PageFile read(String resource, String type) {
        try (InputStream in = PageFiles.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException(resource + " is not in the program");
            }
            return new PageFile(type, in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
