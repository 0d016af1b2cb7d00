package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The jar that is handed on: whose work is in it, and under which licence. Runs after it was packed. */
class PackedLicencesIT {
    private static final String FOLDER = "META-INF/licenses/";

    /** (licence) name (group:artifact:version - address). */
    private static final Pattern LINE =
            Pattern.compile("\\((?<licence>[^)]+)\\) .* \\([^:()]+:(?<name>[^:]+):(?<version>[^ ]+) - .*\\)");

    private static final Map<String, String> HEADS = Map.of(
            "Apache-2.0", "Apache License Version 2.0, January 2004",
            "EPL-2.0", "Eclipse Public License - v 2.0",
            "MIT", "The MIT License (MIT) Copyright (c)",
            "LGPL-2.1-or-later", "GNU LESSER GENERAL PUBLIC LICENSE Version 2.1, February 1999");

    private record Library(String name, String version, String licence) {
        /** Its own jar, from the class path of the tests. */
        JarFile jar() throws IOException {
            String file = name + "-" + version + ".jar";
            return new JarFile(
                    Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                            .filter(path -> path.endsWith(File.separator + file))
                            .findFirst()
                            .orElseThrow(() -> new AssertionError(file + " is listed and not used")));
        }
    }

    private static JarFile packed;
    private static List<Library> libraries;

    @BeforeAll
    static void open() throws IOException {
        packed = new JarFile("target/hotidle.jar");
        libraries = LINE.matcher(text(FOLDER + "THIRD-PARTY.txt"))
                .results()
                .map(match -> new Library(match.group(2), match.group(3), match.group(1)))
                .toList();
    }

    @AfterAll
    static void close() throws IOException {
        packed.close();
    }

    @Test
    void itsOwnLicenceIsInIt() throws IOException {
        assertTrue(plain(text("META-INF/LICENSE")).startsWith(HEADS.get("Apache-2.0")));
    }

    @Test
    void noClassComesFromALibraryThatIsNotListed() throws IOException {
        Set<String> foreign = classes(packed);
        foreign.removeIf(name -> name.startsWith("hotidle/"));
        assertTrue(foreign.size() > 1000, foreign.size() + " classes");
        for (Library library : libraries) {
            try (JarFile own = library.jar()) {
                foreign.removeAll(classes(own));
            }
        }
        assertEquals(Set.of(), foreign);
    }

    @Test
    void theTextOfEachLicenceIsInIt() throws IOException {
        assertTrue(libraries.size() >= 15, libraries.toString());
        for (Library library : libraries) {
            String head = HEADS.get(library.licence());
            assertNotNull(head, library.toString());
            assertTrue(plain(text(FOLDER + library.licence() + ".txt")).startsWith(head), library.toString());
        }
    }

    @Test
    void whatALibrarySaysItselfIsInIt() throws IOException {
        int found = 0;
        for (Library library : libraries) {
            try (JarFile own = library.jar()) {
                List<ZipEntry> texts = own.stream()
                        .filter(entry -> entry.getName().matches("META-INF/[^/]*(LICENSE|NOTICE)[^/]*"))
                        .map(ZipEntry.class::cast)
                        .toList();
                for (ZipEntry entry : texts) {
                    String name = FOLDER + library.name() + entry.getName().substring("META-INF".length());
                    try (InputStream said = own.getInputStream(entry)) {
                        assertArrayEquals(said.readAllBytes(), bytes(name), name);
                    }
                    found++;
                }
            }
        }
        assertTrue(found >= 20, found + " texts");
    }

    @Test
    void itSaysHowToPutInAnotherVersionOfAWeakCopyleftLibrary() throws IOException {
        String notice = text("META-INF/NOTICE");
        libraries.stream()
                .filter(library -> library.licence().startsWith("LGPL"))
                .forEach(library -> assertTrue(notice.contains(":" + library.name()), library.toString()));
        assertTrue(notice.contains("org.jfree:jfreechart") && notice.contains("-sources.jar"), notice);
    }

    private static Set<String> classes(JarFile jar) {
        return jar.stream()
                .map(ZipEntry::getName)
                .filter(name -> name.endsWith(".class") && !name.endsWith("module-info.class"))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String plain(String text) {
        return text.strip().replaceAll("\\s+", " ");
    }

    private static String text(String name) throws IOException {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String name) throws IOException {
        ZipEntry entry = packed.getEntry(name);
        assertNotNull(entry, name + " is not in the jar");
        try (InputStream in = packed.getInputStream(entry)) {
            return in.readAllBytes();
        }
    }
}
