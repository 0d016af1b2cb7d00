package hotidle.cli.golden;

import hotidle.circuits.kind.Kinds;
import hotidle.cli.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A command line whose output is recorded: one line of a list, {@code name | command line}. In it, {@code {files}} is the folder of
 * circuits and sheets beside the list and {@code {out}} an empty folder for what the command writes; a word with blanks stands in
 * double quotes.
 *
 * @param name    of the recorded file
 * @param command line as written
 */
record Case(String name, String command) {

    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    /** The cases of a list; blank lines and lines that begin with # are for the reader. */
    static List<Case> of(String list) throws IOException {
        List<Case> cases = new ArrayList<>();
        for (String line : Files.readAllLines(GoldenFiles.ROOT.resolve(list))) {
            if (!line.isBlank() && !line.startsWith("#")) {
                String[] halves = line.split("\\|", 2);
                if (halves.length != 2) {
                    throw new IllegalStateException(list + ": no 'name | command line': " + line);
                }
                cases.add(new Case(halves[0].strip(), halves[1].strip()));
            }
        }
        return List.copyOf(cases);
    }

    /** All cases whose output is recorded: those of cases.txt, and JSON of a part of each kind, as its declaration gives an example. */
    static List<Case> recorded() throws IOException {
        List<Case> cases = new ArrayList<>(of("cases.txt"));
        Kinds.ALL.forEach(kind -> cases.add(new Case(
                "part-" + kind.word(),
                "part " + kind.word() + " " + kind.facts().example() + " --format json")));
        return List.copyOf(cases);
    }

    /** The words of the command line, the places in it as written. */
    List<String> words() {
        List<String> words = new ArrayList<>();
        Matcher matcher = WORD.matcher(command);
        while (matcher.find()) {
            words.add(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
        }
        return List.copyOf(words);
    }

    /** Runs it; what it says names both folders as the list does, and no version of Java. */
    Run run(Path out) {
        String files = GoldenFiles.ROOT.resolve("files").toString();
        Run run = Run.of(words().stream()
                .map(word -> word.replace("{files}", files).replace("{out}", out.toString()))
                .toArray(String[]::new));
        return new Run(run.code(), placed(run.out(), files, out), placed(run.err(), files, out));
    }

    /** Checksums of inputs are those of the day, ReportCommandTest looks at one; port and token of a live page are those of the run. */
    private static String placed(String said, String files, Path out) {
        return said.replace(out.toString(), "{out}")
                .replace(files, "{files}")
                .replace("Java " + System.getProperty("java.version"), "Java {java}")
                .replaceAll("\\b[0-9a-f]{64}\\b", "0".repeat(64))
                .replaceAll("127\\.0\\.0\\.1:\\d+/\\?token=[\\w-]{32}", "127.0.0.1:PORT/?token=TOKEN");
    }
}
