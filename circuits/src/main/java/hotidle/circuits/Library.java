package hotidle.circuits;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

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
                names.addAll(names(folder.toURI()));
            }
        } catch (URISyntaxException | IOException fault) {
            throw new IllegalStateException("the library of circuits cannot be read", fault);
        }
        return List.copyOf(names);
    }

    private static List<String> names(URI folder) throws IOException {
        if (!folder.getScheme().equals("jar")) {
            return names(Path.of(folder));
        }
        try (FileSystem jar = FileSystems.newFileSystem(folder, Map.of())) {
            return names(jar.getPath(FOLDER));
        }
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(ENDING))
                    .map(name -> name.substring(0, name.length() - ENDING.length()))
                    .toList();
        }
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
