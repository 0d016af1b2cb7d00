package hotidle.answer.phrase;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What the words mean that the program uses: trade words, and the keys and values of JSON. */
public final class TermPhrase {

    /**
     * A word.
     *
     * @param word    of the trade
     * @param meaning in one line
     * @param seen    which commands show it
     * @param json    its key, or key and value
     * @param others  names by which it is known too
     */
    public record Term(String word, String meaning, String seen, String json, List<String> others) {

        private Term(String word, String meaning, String seen, String json, String... others) {
            this(word, meaning, seen, json, List.of(others));
        }

        /** All names that it is found by. */
        public List<String> names() {
            String key = json.contains(": ") ? json.substring(json.indexOf(": ") + 2) : json;
            return Stream.concat(Stream.of(word, key), others.stream())
                    .distinct()
                    .toList();
        }

        /** Three lines: what it means, where it is seen, and its JSON key. */
        public String said() {
            return word + ": " + meaning + ".\nseen in: " + seen + "\nJSON: " + json + "\n";
        }
    }

    /** All of them. */
    public static final List<Term> ALL = List.of(
            new Term(
                    "holds from",
                    "the engine speed from which on the line stands at its set pressure or above",
                    "compare, sweep",
                    "onset_rpm",
                    "onset of regulation",
                    "onset"),
            new Term(
                    "rise over set",
                    "line pressure less set pressure: what spring and flow add at the regulator",
                    "compare --full",
                    "override_pa",
                    "override"),
            new Term(
                    "set pressure",
                    "the line pressure that spring and pilot pressure ask of the regulator",
                    "compare, window",
                    "set_pressure_pa",
                    "set to"),
            new Term(
                    "line pressure",
                    "the pressure behind the pump that presses clutches and feeds all else",
                    "compare, sweep",
                    "pressures_pa",
                    "line",
                    "gauge reads"),
            new Term(
                    "both chambers feeding",
                    "both chambers of a double pump deliver into the line",
                    "compare --full, sweep",
                    "secondary: joined",
                    "joined",
                    "both feeding"),
            new Term(
                    "unloading",
                    "the second chamber begins to give its oil back and still carries pressure",
                    "compare --full, sweep",
                    "secondary: unloading"),
            new Term(
                    "unloaded",
                    "the second chamber gives all its oil back and balances no side load any more",
                    "compare --full, sweep",
                    "secondary: unloaded"),
            new Term(
                    "pump slip",
                    "oil that slips back inside the pump past faces, tips and mesh; slip alone is a clutch's",
                    "compare, leaks",
                    "pump_slip_m3_s",
                    "slip in the pump"),
            new Term("leaks", "oil lost past worn fits outside the pump", "compare, leaks", "leak_m3_s", "leak"),
            new Term(
                    "narrow",
                    "a limit that holds with up to 10 % to spare (assumed)",
                    "margins",
                    "verdict: close",
                    "close"),
            new Term(
                    "fails",
                    "a limit that is not kept, or of which no state was found",
                    "margins, window",
                    "verdict: fails",
                    "fails at"),
            new Term("holds", "a limit that is kept with more than 10 % to spare", "margins", "verdict: holds"),
            new Term(
                    "not known",
                    "a limit that neither fails nor is sure to hold (no failure), or a state not found",
                    "everywhere",
                    "null",
                    "unsolved"),
            new Term(
                    "headroom", "what is to spare, as a share of what is needed", "margins, map", "headroom", "margin"),
            new Term(
                    "driving condition",
                    "speed, range, torque and temperatures at which a unit is judged",
                    "everywhere",
                    "duty",
                    "duty",
                    "duty point"),
            new Term(
                    "build",
                    "one state of a unit: fresh, worn, restored; a list of changes on another build",
                    "everywhere",
                    "build"),
            new Term(
                    "regulation",
                    "whether the pump holds the set pressure with all else served",
                    "margins",
                    "margin: regulation"),
            new Term(
                    "apply",
                    "whether a clutch's pressure carries its torque times its capacity factor, holding",
                    "margins",
                    "margin: apply",
                    "weakest clutch"),
            new Term(
                    "apply-sliding",
                    "the same while it slips, with the friction of a slipping clutch",
                    "margins",
                    "margin: apply-sliding"),
            new Term(
                    "lockup",
                    "whether apply less release pressure carries the engine's torque through the lockup clutch",
                    "margins, compare",
                    "margin: lockup"),
            new Term(
                    "lubrication",
                    "whether each lube branch gets the oil that it needs",
                    "margins, compare",
                    "margin: lubrication",
                    "lube flow",
                    "lube"),
            new Term("cooler", "whether the cooler gets the oil that it needs", "margins", "margin: cooler"),
            new Term(
                    "converter charge",
                    "the pressure that keeps the converter from cavitating",
                    "margins",
                    "margin: converter-charge",
                    "converter-charge"),
            new Term(
                    "hub film",
                    "the least oil film in the pump's hub bushing, over engine speed",
                    "margins, compare",
                    "least_film_m",
                    "film"),
            new Term(
                    "hub unit load",
                    "load over the hub bushing's length and width, against what it bears",
                    "margins",
                    "margin: unit-load",
                    "unit-load"),
            new Term(
                    "pump inlet",
                    "the pressure at the pump's inlet against that at which air comes out of the oil",
                    "margins",
                    "margin: pump-inlet",
                    "pump-inlet"),
            new Term(
                    "relief valve",
                    "whether the relief valve stays shut while the regulator holds the line",
                    "margins",
                    "margin: relief-valve",
                    "relief-valve"),
            new Term(
                    "pump power",
                    "what all chambers and the hub's film take from the engine; all of it ends as heat",
                    "compare, sweep",
                    "power_w"));

    private TermPhrase() {}

    /** The term of a name, whatever its capitals, and with hyphens, underscores or blanks. */
    public static Optional<Term> of(String name) {
        String asked = plain(name);
        return ALL.stream()
                .filter(term -> term.names().stream().anyMatch(one -> plain(one).equals(asked)))
                .findFirst();
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[-_\\s]+", " ").strip();
    }
}
