package hotidle.cli;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Why a file cannot be read or written, in words. */
final class FileReason {

    private FileReason() {}

    /** A name that no file can have here, with what to do about it. */
    static String noName(String name) {
        return "hotidle: the name of a file has letters that your locale cannot write: " + name
                + "\nmend: run with a UTF-8 locale, LC_ALL=C.UTF-8 before the command, or name the file in plain letters";
    }

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
        if (wrong instanceof CharacterCodingException) {
            return "its letters are not UTF-8; save it as CSV UTF-8";
        }
        return String.valueOf(wrong.getMessage());
    }
}
