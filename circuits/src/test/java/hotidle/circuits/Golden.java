package hotidle.circuits;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Texts that are compared with what is committed, and rewritten only with -Dhotidle.rewrite=true, never by a build server. */
final class Golden {

    private Golden() {}

    static void check(Path file, String now) throws IOException {
        if (Boolean.getBoolean("hotidle.rewrite") && System.getenv("CI") == null) {
            Files.writeString(file, now);
        }
        assertEquals(
                Files.readString(file),
                now,
                file + " differs; rewrite it with -Dhotidle.rewrite=true and read the diff");
    }

    static String resource(String name) throws IOException {
        return Files.readString(Path.of("src/test/resources/hotidle/circuits", name));
    }
}
