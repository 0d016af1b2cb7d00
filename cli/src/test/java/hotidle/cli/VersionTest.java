package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class VersionTest {

    private static String commit(String packed) {
        return Version.lines(Optional.ofNullable(packed))[1];
    }

    @Test
    void theCommitIsThatOfThePackedJar() {
        assertEquals("commit 1b8f0f3", commit("0.1.0+1b8f0f3"));
        assertEquals("commit 1b8f0f3-changed", commit("0.1.0+1b8f0f3-changed"));
    }

    @Test
    void aJarBuiltOutsideOfACheckoutSaysThatItsCommitIsNotKnown() {
        assertEquals("commit not known", commit("0.1.0+${git.commit.id.abbrev}"));
        assertEquals("commit not known", commit(null));
    }

    @Test
    void theNumberIsThatOfThePoms() throws IOException {
        assertTrue(Files.readString(Path.of("pom.xml")).contains("<version>" + Version.NUMBER + "</version>"));
        assertTrue(Run.of("--version").out().startsWith("Hot Idle " + Version.NUMBER + "\n"));
        assertTrue(Run.of("--version").out().endsWith("\nJava " + System.getProperty("java.version") + "\n"));
    }
}
