package hotidle.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Why a file cannot be read or written, in words. */
final class FileReason {

    private FileReason() {}

    /** The reason; that of the system where it is none of the usual ones. */
    static String of(IOException wrong) {
        if (wrong instanceof AccessDeniedException) {
            return "you may not; look at its permissions and those of its folder";
        }
        if (wrong instanceof NoSuchFileException) {
            return "it, or its folder, is not there";
        }
        if (wrong instanceof FileSystemException system && system.getReason() != null) {
            return system.getReason();
        }
        return String.valueOf(wrong.getMessage());
    }
}
