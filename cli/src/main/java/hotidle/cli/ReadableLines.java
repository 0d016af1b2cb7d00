package hotidle.cli;

import hotidle.answer.format.Wrap;
import java.io.PrintWriter;
import java.io.Writer;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where messages go that a terminal shows: a line that is longer than it is broken at blanks, behind its label where it has one. What is
 * quoted from a file, above the mark that points into it, stays as it is.
 */
final class ReadableLines extends PrintWriter {

    private static final Pattern LABEL = Pattern.compile("( *(?:why|mend): +)(.*)");

    private static final Pattern MARK = Pattern.compile(" *\\^+ *");

    ReadableLines(Writer to) {
        super(to, true);
    }

    @Override
    public void println(String text) {
        super.println(broken(text));
    }

    /** The text with no line too long, without a line feed at its end. */
    static String broken(String text) {
        List<String> lines = text.lines().toList();
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < lines.size(); i++) {
            boolean quoted =
                    i + 1 < lines.size() && MARK.matcher(lines.get(i + 1)).matches();
            boolean fits = lines.get(i).length() <= Wrap.WIDTH;
            all.append(quoted || fits ? lines.get(i) + "\n" : broken(lines.get(i), LABEL.matcher(lines.get(i))));
        }
        return all.toString().stripTrailing();
    }

    private static String broken(String line, Matcher label) {
        if (label.matches()) {
            return Wrap.lines(
                    label.group(2), label.group(1), " ".repeat(label.group(1).length()));
        }
        String before = line.substring(0, line.length() - line.stripLeading().length());
        return Wrap.lines(line, before, before + "  ");
    }
}
