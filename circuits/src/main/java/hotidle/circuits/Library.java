package hotidle.circuits;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;

/** The ready circuits that come with the program. */
public final class Library {

    private static final String FOLDER = "hotidle/circuits/library";
    private static final String ENDING = ".yaml";

    private Library() {}

    /** The names of all ready circuits, in alphabetical order. */
    public static List<String> names() {
        SortedSet<String> names = new TreeSet<>();
        try {
            for (URL folder : Collections.list(Library.class.getClassLoader().getResources(FOLDER))) {
                names.addAll(names(folder));
            }
        } catch (URISyntaxException | IOException fault) {
            throw new IllegalStateException("the library of circuits cannot be read", fault);
        }
        return List.copyOf(names);
    }

    private static List<String> names(URL folder) throws IOException, URISyntaxException {
        if (folder.openConnection() instanceof JarURLConnection packed) {
            // of the jar that the classes come from, which stays open
            return packed.getJarFile().stream()
                    .map(ZipEntry::getName)
                    .filter(name -> name.startsWith(FOLDER + "/"))
                    .map(name -> name.substring(FOLDER.length() + 1))
                    .flatMap(Library::circuit)
                    .toList();
        }
        try (Stream<Path> files = Files.list(Path.of(folder.toURI()))) {
            return files.map(file -> file.getFileName().toString())
                    .flatMap(Library::circuit)
                    .toList();
        }
    }

    private static Stream<String> circuit(String file) {
        return file.endsWith(ENDING) ? Stream.of(file.substring(0, file.length() - ENDING.length())) : Stream.empty();
    }

    /** The text of a ready circuit; empty where there is none of the name. */
    public static Optional<String> text(String name) {
        if (!name.matches("[A-Za-z0-9][A-Za-z0-9-]*")) {
            return Optional.empty();
        }
        try (InputStream in = Library.class.getResourceAsStream("/" + FOLDER + "/" + name + ENDING)) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
