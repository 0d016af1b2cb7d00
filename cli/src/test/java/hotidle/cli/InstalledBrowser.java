package hotidle.cli;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The browser of this machine, where it has one. */
public final class InstalledBrowser {

    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome");

    private InstalledBrowser() {}

    /** The program; where there is none, the log says what is not tested. */
    public static Optional<Path> program(String tested) {
        return said(NAMES, tested);
    }

    /** The program that drives the browser, by the standard of WebDriver; where there is none, the log says what is not tested. */
    public static Optional<Path> driver(String tested) {
        return said(List.of("chromedriver"), tested);
    }

    private static Optional<Path> said(List<String> names, String tested) {
        Optional<Path> found = Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .flatMap(path -> names.stream().map(name -> Path.of(path, name)))
                .filter(Files::isExecutable)
                .findFirst();
        if (found.isEmpty()) {
            System.err.println("NOT TESTED: " + tested + " in a browser, for none of " + names + " is on the path");
        }
        return found;
    }
}
