package hotidle.cli;

import hotidle.answer.report.MadeOf;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;

/** Remembers the files that a circuit was read from; checksums are worked out for who asks. */
final class ReadInputs {

    private final Map<String, byte[]> contents = new LinkedHashMap<>();

    /** These, to which others can be added. */
    ReadInputs copy() {
        ReadInputs copy = new ReadInputs();
        contents.forEach(copy::add);
        return copy;
    }

    /** A file and what stands in it. */
    void add(String name, byte[] content) {
        contents.put(name, content);
    }

    /** A text file. */
    void add(String name, String content) {
        add(name, content.getBytes(StandardCharsets.UTF_8));
    }

    /** All of them, in the order in which they were read. */
    private List<MadeOf.InputFile> files() {
        List<MadeOf.InputFile> files = new ArrayList<>();
        contents.forEach((name, content) -> files.add(new MadeOf.InputFile(name, sha256(content))));
        return files;
    }

    /** What a page was made of: the program, its command as it was typed, words with blanks in quotes, and these files. */
    MadeOf made(CommandSpec program) {
        String command = program.commandLine().getParseResult().originalArgs().stream()
                .map(word -> word.contains(" ") ? '"' + word + '"' : word)
                .collect(Collectors.joining(" ", "hotidle ", ""));
        String[] version = program.version();
        return new MadeOf(version[0] + ", " + version[1], command, files());
    }

    private static String sha256(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
