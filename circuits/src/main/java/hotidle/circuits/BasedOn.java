package hotidle.circuits;

import hotidle.circuits.assemble.Likes;
import hotidle.circuits.section.CircuitFile;
import hotidle.circuits.shape.Misspelt;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Value;
import hotidle.circuits.text.Yaml;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lays a file over the file that it is based on, and that over its own base, so that one whole circuit comes of them. */
final class BasedOn {

    private static final String BASED_ON = "based-on";
    private static final String LEAVE_OUT = "leave-out";

    /** Most files that stand on each other. */
    private static final int MOST = 8;

    private final Problems problems;
    private final BaseFiles files;

    private BasedOn(Problems problems, BaseFiles files) {
        this.problems = problems;
        this.files = files;
    }

    /** The whole circuit; empty where a base is not there or is no YAML, which the problems then say. */
    static Optional<Value.Entries> whole(Value.Entries file, String name, Problems problems, BaseFiles files) {
        return new BasedOn(problems, files).whole(file, name, new ArrayList<>(List.of(name)));
    }

    private Optional<Value.Entries> whole(Value.Entries asWritten, String name, List<String> open) {
        Value.Entries file = Misspelt.asMeant(asWritten, CircuitFile.CIRCUIT.names());
        Optional<Value.Entry> entry = file.entry(BASED_ON);
        if (entry.isEmpty()) {
            leaveOut(file, Optional.empty());
            return Optional.of(file);
        }
        return base(entry.get(), name, open).map(base ->
                (Value.Entries) Likes.merge(leaveOut(file, Optional.of(base)), file));
    }

    private Optional<Value.Entries> base(Value.Entry entry, String name, List<String> open) {
        String wanted = entry.value() instanceof Value.Text text ? text.text() : "";
        Optional<BaseFiles.FoundFile> found = wanted.isEmpty() ? Optional.empty() : files.find(wanted, name);
        if (found.isEmpty()) {
            problems.error(
                    entry.value().place(),
                    ProblemCode.BASE_NOT_FOUND,
                    "the circuit is based on '" + wanted + "', which is neither a file nor a ready circuit",
                    "a file is looked for beside the one that names it",
                    Nearest.mend(wanted, Library.names()));
            return Optional.empty();
        }
        if (open.contains(found.get().name()) || open.size() >= MOST) {
            String circle = String.join(" on ", open) + " on " + found.get().name();
            problems.error(
                    entry.value().place(),
                    ProblemCode.BASED_ON_ITSELF,
                    "the circuit is based on itself",
                    circle,
                    "leave out one based-on");
            return Optional.empty();
        }
        int source = problems.source(found.get().name(), found.get().text());
        Optional<Value> tree = Yaml.read(found.get().text(), problems, source);
        if (!(tree.orElse(null) instanceof Value.Entries base)) {
            tree.ifPresent(value -> problems.error(
                    value.place(),
                    ProblemCode.NO_CIRCUIT,
                    "this is no circuit",
                    "a circuit file begins with keys",
                    "write circuit: first"));
            return Optional.empty();
        }
        open.add(found.get().name());
        return whole(base, found.get().name(), open);
    }

    /** The base without what the file leaves out of it. */
    private Value.Entries leaveOut(Value.Entries file, Optional<Value.Entries> base) {
        Value.Entries all = base.orElse(file);
        Optional<Value.Entry> entry = file.entry(LEAVE_OUT);
        List<Value> names = entry.map(Value.Entry::value)
                .map(value -> value instanceof Value.Items items ? items.items() : List.of(value))
                .orElse(List.of());
        for (Value name : names) {
            String path = name instanceof Value.Text text ? text.text() : "";
            Optional<Value.Entries> without = base.isEmpty() ? Optional.empty() : without(all, path);
            if (without.isEmpty()) {
                problems.error(
                        name.place(),
                        ProblemCode.LEAVES_OUT_NOTHING,
                        "the circuit leaves out '" + path + "', which its base does not have",
                        "leave-out names section.name of the file that this one is based on",
                        "write parts.bore-3, for example");
            }
            all = without.orElse(all);
        }
        return all;
    }

    private static Optional<Value.Entries> without(Value.Entries all, String path) {
        String[] halves = path.split("\\.", 2);
        Optional<Value.Entry> section = all.entry(halves[0]);
        if (halves.length < 2 || section.isEmpty() || !(section.get().value() instanceof Value.Entries names)) {
            return Optional.empty();
        }
        List<Value.Entry> rest = names.entries().stream()
                .filter(entry -> !entry.key().equals(halves[1]))
                .toList();
        return rest.size() == names.entries().size()
                ? Optional.empty()
                : Optional.of(all.with(
                        new Value.Entry(halves[0], section.get().keyPlace(), new Value.Entries(rest, names.place()))));
    }
}
