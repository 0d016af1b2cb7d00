package hotidle.cli.golden;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.extension.AnnotatedElementContext;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.io.TempDirFactory;

/** Folders for what commands write whose names are always as long: a sentence that names a file breaks its lines by that. */
final class AlwaysAsLong implements TempDirFactory {

    @Override
    public Path createTempDirectory(AnnotatedElementContext element, ExtensionContext context) throws IOException {
        long number = new Random().nextLong() >>> 1;
        return Files.createDirectory(Path.of(System.getProperty("java.io.tmpdir"))
                .resolve(String.format(Locale.ROOT, "golden-%019d", number)));
    }
}
