package hotidle.circuits.shape;

import hotidle.circuits.text.Fault;
import hotidle.circuits.text.Place;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Remedy;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** The values of one part or section as read: numbers in SI, names known to be good. Work space of one reading. */
public final class Attributes {

    /**
     * A size that wears [m].
     *
     * @param inUse    what the build has
     * @param fresh    new
     * @param limit    wear limit
     * @param measured as measured
     * @param changed  whether a build says what it is
     */
    public record Sizes(double inUse, double fresh, OptionalDouble limit, OptionalDouble measured, boolean changed) {

        /** A size of which no build says anything: in use as new. */
        static Sizes written(double fresh, OptionalDouble limit, OptionalDouble measured) {
            return new Sizes(fresh, fresh, limit, measured, false);
        }

        /** The same as a build has it. */
        Sizes changedTo(double other) {
            return new Sizes(other, fresh, limit, measured, true);
        }

        /** The measured value, or the new one where nothing was measured. */
        public double measuredOrNew() {
            return measured.orElse(fresh);
        }
    }

    /** A row of a table, or a quantity at a temperature. */
    public record TableRow(double x, double y, Place place) {}

    private static final List<String> ENDS = List.of("from", "to");

    private final String name;
    private final String label;
    private final Place place;
    private final Problems problems;
    private final Map<String, Item.PlacedItem> items = new HashMap<>();
    private final Set<String> written = new HashSet<>();
    private boolean untold;
    private boolean broken;
    private boolean nodesKnown = true;

    Attributes(String name, String label, Place place, Problems problems) {
        this.name = name;
        this.label = label;
        this.place = place;
        this.problems = problems;
    }

    /** Notes that a key stands in the file, well or badly written. */
    void written(String key) {
        written.add(key);
    }

    /** Notes that it is like a part which is not there, so that it cannot be said what it lacks. */
    void untold() {
        untold = true;
    }

    /** Whether a key has no value, nor a bad one that was told already. */
    public boolean lacks(String key) {
        return !untold && !items.containsKey(key) && !written.contains(key);
    }

    void put(String key, Item item, Place at) {
        items.put(key, new Item.PlacedItem(item, at));
    }

    /** The same to change, with all groups in it, telling what is wrong to others; what it is copied from stays as it is. */
    public Attributes copy(Problems others) {
        Attributes copy = new Attributes(name, label, place, others);
        copy.written.addAll(written);
        copy.untold = untold;
        copy.broken = broken;
        copy.nodesKnown = nodesKnown;
        items.forEach((key, placed) -> copy.items.put(key, placed.copy(others)));
        return copy;
    }

    /** Puts a number in the place of another, or of the value in use of a size; one that was not written is new as well. */
    void change(String key, double value) {
        Item item = new Item.Scalar(value);
        if (items.get(key).item() instanceof Item.WearingSize old) {
            Sizes before = old.sizes();
            item = new Item.WearingSize(
                    written.contains(key)
                            ? before.changedTo(value)
                            : Sizes.written(value, OptionalDouble.empty(), OptionalDouble.empty()));
        }
        put(key, item, Place.START);
    }

    /** Takes a value away that has become impossible. */
    void take(Key key) {
        items.remove(key.name());
        breakAt(key);
    }

    /** Marks it as unusable because something that it needs is. */
    public void breakIt() {
        broken = true;
    }

    /** Marks it as unusable because a key has no good value. */
    void breakAt(Key key) {
        broken = true;
        boolean holdsNodes = key.type() instanceof Type.Ports
                || key.type() instanceof Type.NamedGroups
                || (key.type() instanceof Type.Name name && name.of() == Names.NODE);
        nodesKnown &= !holdsNodes;
    }

    /** Whether every node that it names is known. */
    public boolean nodesKnown() {
        return nodesKnown
                && items.values().stream()
                        .map(Item.PlacedItem::item)
                        .allMatch(item -> !(item instanceof Item.KeyGroups groups)
                                || groups.groups().values().stream().allMatch(Attributes::nodesKnown));
    }

    /** The name it has in the file. */
    public String name() {
        return name;
    }

    /** For messages, for example "orifice 'cooler-feed'". */
    public String label() {
        return label;
    }

    /** Where its name stands. */
    public Place place() {
        return place;
    }

    /** Where the value of a key stands; that of the name where it is not written. */
    public Place place(String key) {
        return items.containsKey(key) ? items.get(key).place() : place;
    }

    /** File, line and column of the value of a key, to name it in a message that stands elsewhere. */
    public String at(String key) {
        return problems.at(place(key));
    }

    /** Whether an error was found in it, so that nothing can be made of it. */
    public boolean broken() {
        return broken || items.values().stream().anyMatch(placed -> broken(placed.item()));
    }

    private static boolean broken(Item item) {
        if (item instanceof Item.KeyGroup group) {
            return group.given().broken();
        }
        return item instanceof Item.KeyGroups groups
                && groups.groups().values().stream().anyMatch(Attributes::broken);
    }

    /** Notes an error at the value of a key. */
    public void error(ProblemCode code, String key, String says, String why, String mend) {
        error(code, key, says, why, Remedy.words(mend));
    }

    /** The same with a remedy that names keys. */
    public void error(ProblemCode code, String key, String says, String why, Remedy remedy) {
        broken = true;
        nodesKnown &= !ENDS.contains(key);
        problems.error(place(key), fault(code, key, says, why, remedy));
    }

    /** A fault of it that stands elsewhere than at the value of the key. */
    Fault fault(ProblemCode code, String key, String says, String why, String mend) {
        return fault(code, key, says, why, Remedy.words(mend));
    }

    /** The same with a remedy that names keys. */
    Fault fault(ProblemCode code, String key, String says, String why, Remedy remedy) {
        return new Fault(code, label, key, says, why, remedy);
    }

    /** Notes that a key which may be left out elsewhere is needed here; nothing where it is there but wrong. */
    public void missing(String key, String why, String mend) {
        if (!broken) {
            error(ProblemCode.MISSING_KEY, key, "has no " + key, why, Remedy.words(mend));
        }
    }

    /** Notes a warning at the value of a key. */
    public void warning(ProblemCode code, String key, String says, String why, String mend) {
        problems.warning(place(key), fault(code, key, says, why, Remedy.words(mend)));
    }

    /** Whether a key stands in the file, well or badly written. */
    public boolean stands(String key) {
        return written.contains(key);
    }

    /** Whether a key has a value, written or by default. */
    public boolean has(String key) {
        return items.containsKey(key);
    }

    /** A number, or the value in use of a size [SI]. */
    public double number(String key) {
        return numberIf(key).orElseThrow(() -> new IllegalStateException(label + " has no number " + key));
    }

    /** The same, empty where nothing is written and there is no default. */
    public OptionalDouble numberIf(String key) {
        return items.containsKey(key) ? items.get(key).item().number() : OptionalDouble.empty();
    }

    /** A whole number. */
    public int count(String key) {
        return (int) Math.round(number(key));
    }

    /** A word or a name. */
    public String word(String key) {
        return wordIf(key).orElseThrow(() -> new IllegalStateException(label + " has no word " + key));
    }

    /** The same, empty where nothing is written and there is no default. */
    public Optional<String> wordIf(String key) {
        return has(key) && items.get(key).item() instanceof Item.Word word
                ? Optional.of(word.word())
                : Optional.empty();
    }

    /** A text, empty where nothing is written. */
    public String text(String key) {
        return wordIf(key).orElse("");
    }

    /** A list of names, empty where nothing is written. */
    public List<String> words(String key) {
        return has(key) && items.get(key).item() instanceof Item.WordList words ? words.words() : List.of();
    }

    /** A size that wears. */
    public Optional<Sizes> sizes(String key) {
        return has(key) && items.get(key).item() instanceof Item.WearingSize size
                ? Optional.of(size.sizes())
                : Optional.empty();
    }

    /** A group of keys. */
    public Optional<Attributes> group(String key) {
        return has(key) && items.get(key).item() instanceof Item.KeyGroup group
                ? Optional.of(group.given())
                : Optional.empty();
    }

    /** Named groups, empty where nothing is written. */
    public Map<String, Attributes> groups(String key) {
        return has(key) && items.get(key).item() instanceof Item.KeyGroups groups ? groups.groups() : Map.of();
    }

    /** Ports and their nodes. */
    public Map<String, String> nodes(String key) {
        return has(key) && items.get(key).item() instanceof Item.Nodes nodes ? nodes.nodes() : Map.of();
    }

    /** Numbers by name [SI]. */
    public Map<String, Double> numbers(String key) {
        return has(key) && items.get(key).item() instanceof Item.Numbers numbers ? numbers.numbers() : Map.of();
    }

    /** Rows of a table, ends of a pair (as x), points of a viscosity line (x temperature, y viscosity). */
    public List<TableRow> rows(String key) {
        return has(key) && items.get(key).item() instanceof Item.Rows rows ? rows.rows() : List.of();
    }
}
