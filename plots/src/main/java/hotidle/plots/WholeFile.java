package hotidle.plots;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Writes a file whole or not at all. */
public final class WholeFile {

    private WholeFile() {}

    /** Writes to a temporary file beside the target, then moves it there, so that nothing is left half written. */
    public static void write(byte[] content, Path target) throws IOException {
        Path part = target.resolveSibling("." + target.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            Files.write(part, content, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            move(part, target);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static void move(Path part, Path target) throws IOException {
        try {
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
