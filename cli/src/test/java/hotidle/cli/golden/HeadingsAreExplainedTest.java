package hotidle.cli.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.AfterWorkPhrase;
import hotidle.answer.phrase.CompareScreenPhrase;
import hotidle.answer.phrase.FaultPhrase;
import hotidle.answer.phrase.HeadroomPhrase;
import hotidle.answer.phrase.HubFilmPhrase;
import hotidle.answer.phrase.LimitPhrase;
import hotidle.answer.phrase.RegulatorPhrase;
import hotidle.answer.phrase.SecondaryPhrase;
import hotidle.answer.phrase.TermPhrase;
import hotidle.answer.phrase.WearLimitPhrase;
import hotidle.assess.Figures;
import hotidle.assess.Margin;
import hotidle.assess.StateFault;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every heading of a column and every verdict of a first screen is a word that {@code hotidle explain} knows. */
class HeadingsAreExplainedTest {

    private static final Pattern RULE = Pattern.compile("-{10,}");

    private static final Set<String> NO_FIRST_SCREEN =
            Set.of("--full", "--help", "--version", "csv", "json", "sheet", "list", "part");

    /** Names of the ready circuits, which mean what their files say: builds, driving conditions, gauges, parts. */
    private static Set<String> names() {
        Set<String> names = new TreeSet<>();
        for (String library : Library.names()) {
            DescribedCircuit circuit = CircuitReader.read(Library.text(library).orElseThrow(), library)
                    .circuit()
                    .orElseThrow();
            names.add(library);
            circuit.units().forEach((build, unit) -> {
                names.add(build);
                names.add(AfterWorkPhrase.after(build));
                List.of("150psi", "200psi", "240psi").forEach(set -> names.add(AfterWorkPhrase.setTo(build, set)));
                unit.duties().forEach(duty -> names.add(duty.name()));
                unit.taps().forEach(tap -> names.add(tap.name()));
            });
        }
        return names;
    }

    private static List<String> headings() throws IOException {
        List<String> found = new ArrayList<>();
        for (Case one : Case.recorded()) {
            if (one.words().stream().noneMatch(NO_FIRST_SCREEN::contains)) {
                String recorded =
                        GoldenFiles.read(GoldenFiles.ROOT.resolve("text").resolve(one.name() + ".txt"));
                int out = recorded.indexOf(GoldenFiles.OUTPUT) + GoldenFiles.OUTPUT.length();
                tables(recorded.substring(out).lines().toList(), found);
            }
        }
        return found;
    }

    /** The heads of all tables, tables that stand side by side each on its own. */
    private static void tables(List<String> lines, List<String> found) {
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isBlank() && lines.get(i).matches("[- ]+")) {
                Matcher rule = RULE.matcher(lines.get(i));
                while (rule.find()) {
                    table(lines, i, rule.start(), rule.end(), found);
                }
            }
        }
    }

    private static void table(List<String> lines, int rule, int from, int to, List<String> found) {
        boolean alone = lines.get(rule).matches("-+");
        int last = rule + 1;
        while (last < lines.size() && columns(lines.get(last), alone, from, to)) {
            last++;
        }
        List<String> body = lines.subList(rule + 1, last);
        int first = rule - 1;
        while (first > 0 && columns(lines.get(first - 1), alone, from, to)) {
            first--;
        }
        List<String> head = lines.subList(first, rule);
        boolean[] gap = gaps(Stream.concat(head.stream(), body.stream())
                .map(line -> cut(line, from, to))
                .toList());
        int start = 0;
        for (int c = 0; c <= to - from; c++) {
            if (c == to - from || gap[c]) {
                int begin = start;
                int end = c;
                String word = String.join(
                                " ",
                                head.stream()
                                        .map(line -> cut(line, from, to)
                                                .substring(begin, end)
                                                .strip())
                                        .toList())
                        .replaceAll("\\s+", " ")
                        .strip();
                if (!word.isEmpty()) {
                    found.add(word);
                }
                start = c;
            }
        }
    }

    /** Whether a line keeps to columns and is no sentence, which has no two blanks within it and may be longer. */
    private static boolean columns(String line, boolean alone, int from, int to) {
        String part = cut(line, from, to).stripTrailing();
        return (!alone || line.length() <= to) && part.matches(".*\\S {2,}\\S.*|    .*\\S");
    }

    private static String cut(String line, int from, int to) {
        String padded = line + " ".repeat(Math.max(0, to - line.length()));
        return padded.substring(from, to);
    }

    /** Where a column begins: behind two blanks in every line. */
    private static boolean[] gaps(List<String> lines) {
        int width = lines.get(0).length();
        boolean[] gap = new boolean[width];
        for (int c = 2; c < width; c++) {
            int at = c;
            boolean blank = lines.stream().allMatch(line -> line.charAt(at - 1) == ' ' && line.charAt(at - 2) == ' ');
            boolean begins = lines.stream().anyMatch(line -> line.charAt(at) != ' ');
            gap[c] = blank && begins;
        }
        return gap;
    }

    private static boolean known(String heading, Set<String> names) {
        if (heading.matches("[-+~0-9. %<>=]+") || heading.matches("[a-z0-9-]+\\.[a-z0-9.-]+(,? .*)?")) {
            return true; // a value of a map, or a size by its name
        }
        String bare = heading.replaceAll("\\[.*?]", "").strip();
        return bare.isEmpty() || TermPhrase.of(heading).isPresent() || isName(bare, names);
    }

    /** A unit alone, under a heading that stands above it, and a name, with the unit behind its comma. */
    private static boolean isName(String heading, Set<String> names) {
        return names.contains(heading.replaceAll(",.*", ""))
                || names.contains(heading.replaceAll(" [^ ]+$", ""))
                || Arrays.stream(Quantity.values())
                        .flatMap(quantity -> Arrays.stream(Quantity.UnitSystem.values())
                                .map(units -> quantity.in(units).unit()))
                        .anyMatch(heading::equals);
    }

    @Test
    void everyHeadingOfAColumnIsExplained() throws IOException {
        Set<String> names = names();
        List<String> headings = headings();
        assertEquals(
                List.of(),
                headings.stream().distinct().filter(word -> !known(word, names)).toList());
        assertTrue(
                headings.stream().distinct().count() > 60,
                headings.stream().distinct().toList().toString());
        assertTrue(
                headings.containsAll(
                        List.of("gone at [in]", "else fails at", "points there", "limits failing anywhere")),
                "read");
    }

    @Test
    void everyVerdictIsExplained() {
        FaultPhrase faults = new FaultPhrase(Quantity.UnitSystem.SHOP);
        Stream<String> verdicts = Stream.of(
                        Arrays.stream(Figures.Regulator.values()).map(word -> RegulatorPhrase.of(word, false)),
                        Arrays.stream(Figures.Secondary.values())
                                .filter(word -> word != Figures.Secondary.NONE)
                                .map(SecondaryPhrase::of),
                        Arrays.stream(StateFault.Kind.values())
                                .map(kind -> faults.cell(new StateFault(kind, "part", 1, 2)))
                                .map(cell -> cell.replaceAll(" [-0-9.]+$", "")),
                        Arrays.stream(Margin.Kind.values()).map(LimitPhrase::label),
                        Arrays.stream(Margin.Verdict.values()).map(HeadroomPhrase::verdict),
                        Stream.of(
                                CompareScreenPhrase.LOW,
                                CompareScreenPhrase.HIGH,
                                CompareScreenPhrase.SHORT,
                                CompareScreenPhrase.THIN,
                                CompareScreenPhrase.OPEN,
                                HeadroomPhrase.OK,
                                HubFilmPhrase.CONTACT_SHORT,
                                WearLimitPhrase.AMPLE))
                .flatMap(words -> words);
        assertEquals(
                List.of(),
                verdicts.filter(word -> TermPhrase.of(word).isEmpty()).toList());
    }

    /** Words in capitals that are none: names of standards and of formats, and those that only stress the sentence they stand in. */
    private static final Set<String> NO_VERDICT = Set.of(
            "JSON", "CSV", "ISO", "ASTM", "NADCA", "NIST", "LESS", "URL", "PORT", "TOKEN", "HOTIDLE", "UTF", "WORD");

    private static final Pattern CAPITALS = Pattern.compile("(?<![\\w\"'.=/-])[A-Z][A-Z]+(?: [A-Z]{2,})*(?![\\w=-])");

    @Test
    void everyVerdictInCapitalsOfAFirstScreenIsExplained() throws IOException {
        Set<String> found = new TreeSet<>();
        for (Case one : Case.recorded()) {
            if (one.words().stream().noneMatch(NO_FIRST_SCREEN::contains)) {
                String recorded =
                        GoldenFiles.read(GoldenFiles.ROOT.resolve("text").resolve(one.name() + ".txt"));
                Matcher words = CAPITALS.matcher(
                        recorded.substring(recorded.indexOf(GoldenFiles.OUTPUT)).replaceAll("\\s+", " "));
                while (words.find()) {
                    found.add(words.group());
                }
            }
        }
        found.removeAll(NO_VERDICT);
        assertTrue(
                found.containsAll(List.of("IDLE PRESSURE IS LOW", "NONE LEFT", "THEY DO NOT AGREE")), found.toString());
        assertEquals(
                List.of(),
                found.stream().filter(word -> TermPhrase.of(word).isEmpty()).toList());
    }

    @Test
    void everyRowOfACompareScreenIsExplained() throws IOException {
        String recorded = GoldenFiles.read(GoldenFiles.ROOT.resolve("text").resolve("compare-table.txt"));
        List<String> rows = recorded.lines()
                .dropWhile(line -> !line.matches("-{10,}"))
                .skip(1)
                .takeWhile(line -> !line.startsWith("at ") && !line.startsWith("FAILS"))
                .map(line -> line.split("  ", 2)[0])
                .toList();
        assertTrue(rows.size() >= 9, rows.toString());
        assertEquals(
                List.of(), rows.stream().filter(row -> !known(row, Set.of())).toList());
    }
}
