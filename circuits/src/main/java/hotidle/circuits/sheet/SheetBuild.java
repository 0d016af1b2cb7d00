package hotidle.circuits.sheet;

import hotidle.circuits.kind.Kinds;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.AssumedMark;
import hotidle.circuits.text.Place;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Value;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts the build that a sheet makes in front of those of a file. It stands on the file as written: what is blank is new. */
public final class SheetBuild {

    /** In the reason of a change that stands for several readings, before the size that it puts in their place. */
    public static final String REDUCED = "leak as much as ";

    /** In the reason of a change that stands for equal bores of which not each was read. */
    public static final String FOR_ALL = "taken for all";

    private SheetBuild() {}

    /** What the reason of a change says of several readings, or of one that is taken for several bores; empty where it is neither. */
    public static Optional<String> counted(String because) {
        int at = because.lastIndexOf(REDUCED);
        if (at >= 0) {
            return Optional.of("its readings " + because.substring(at));
        }
        String last = because.substring(because.lastIndexOf(';') + 1).strip();
        return last.contains(FOR_ALL) ? Optional.of(last) : Optional.empty();
    }

    /** The name of the build: that of the sheet's file, in the letters that a name may have. */
    public static String name(MeasurementSheet sheet) {
        String file = sheet.fileName()
                .substring(Math.max(
                                sheet.fileName().lastIndexOf('/'),
                                sheet.fileName().lastIndexOf('\\'))
                        + 1);
        String stem = file.replaceFirst("\\.[^.]*$", "");
        String name = stem.replaceAll("[^\\p{L}\\p{N}_-]+", "-");
        return name.isEmpty() ? "sheet" : name;
    }

    /** The file with the build of a sheet. */
    public static Value.Entries add(Value.Entries file, MeasurementSheet sheet, Problems problems) {
        if (sheet.text().length() > MeasurementSheet.LONGEST) {
            int start = problems.source(sheet.fileName(), "");
            problems.error(
                    new Place(1, 1, 1, start), ProblemCode.SHEET_TOO_LONG, "the sheet is too long", "at most 1 MB", "");
            return file;
        }
        int source = problems.source(sheet.fileName(), sheet.text());
        Place top = new Place(1, 1, 1, source);
        Value.Entries parts = entries(file, "parts", top);
        Map<String, Map<String, SizeAsNew>> sizes = new LinkedHashMap<>();
        parts.entries().forEach(part -> sizes.put(part.key(), sizes(part.value())));
        SheetReader reader = new SheetReader(problems, source, sizes, parts);
        List<Value.Entry> changes = reader.read(sheet.text());
        Value.Entries builds = entries(file, "builds", top);
        String name = name(sheet);
        if (builds.entry(name).isPresent()) {
            String message = "the sheet would make a build '" + name + "', which the circuit has already";
            problems.error(
                    top,
                    ProblemCode.SHEET_OF_A_BUILD,
                    message,
                    "a sheet's build is called after its file",
                    "give the file another name");
            return file;
        }
        List<Value.Entry> keys = new ArrayList<>();
        String about = "as measured, " + changes.size() + " sizes of " + sheet.fileName() + "; all others assumed new";
        keys.add(new Value.Entry("about", top, new Value.Text(about, top)));
        if (!changes.isEmpty()) {
            keys.add(new Value.Entry("changes", top, new Value.Entries(changes, top)));
        }
        List<Value.Entry> all = new ArrayList<>();
        all.add(new Value.Entry(name, top, new Value.Entries(keys, top)));
        all.addAll(builds.entries());
        return file.with(new Value.Entry(
                "builds",
                file.entry("builds").map(Value.Entry::keyPlace).orElse(top),
                new Value.Entries(all, builds.place())));
    }

    /** In place of a build's name behind {@code on}: the build of the sheet, whatever it is called. */
    public static final String ON_SHEET = "sheet";

    /**
     * The file with builds that stand on the sheet's standing on the build of that name, or on the file as written where no sheet is
     * given: so a repair can be written once, for every unit that comes in and is measured.
     *
     * @param name of the sheet's build; empty without a sheet
     */
    public static Value.Entries standing(Value.Entries file, Optional<String> name) {
        if (!(file.entry("builds").map(Value.Entry::value).orElse(null) instanceof Value.Entries builds)
                || builds.entry(ON_SHEET).isPresent()) {
            return file;
        }
        List<Value.Entry> all =
                builds.entries().stream().map(build -> standing(build, name)).toList();
        Value.Entry section = file.entry("builds").orElseThrow();
        return file.with(new Value.Entry("builds", section.keyPlace(), new Value.Entries(all, builds.place())));
    }

    private static Value.Entry standing(Value.Entry build, Optional<String> name) {
        if (!(build.value() instanceof Value.Entries keys)
                || !(keys.entry("on").map(Value.Entry::value).orElse(null) instanceof Value.Text on)
                || !on.text().equals(ON_SHEET)) {
            return build;
        }
        Value.Entries other = name.isPresent()
                ? keys.with(new Value.Entry(
                        "on", keys.entry("on").get().keyPlace(), new Value.Text(name.get(), on.place())))
                : new Value.Entries(
                        keys.entries().stream()
                                .filter(key -> !key.key().equals("on"))
                                .toList(),
                        keys.place());
        return new Value.Entry(build.key(), build.keyPlace(), other);
    }

    private static Value.Entries entries(Value.Entries file, String section, Place otherwise) {
        return file.entry(section).map(Value.Entry::value).orElse(null) instanceof Value.Entries entries
                ? entries
                : new Value.Entries(List.of(), otherwise);
    }

    private static Map<String, SizeAsNew> sizes(Value part) {
        Map<String, SizeAsNew> found = new LinkedHashMap<>();
        if (part instanceof Value.Entries keys
                && keys.entry("kind").map(Value.Entry::value).orElse(null) instanceof Value.Text kind) {
            Kinds.of(kind.text()).ifPresent(known -> sizes(known.shape(), keys, "", count(keys), found));
        }
        return found;
    }

    /** How many equal ones a part stands for; one where it does not say, or not in digits, of which the file is told. */
    private static int count(Value.Entries keys) {
        return keys.entry("count").map(Value.Entry::value).orElse(null) instanceof Value.Text text
                        && AssumedMark.without(text.text()).matches("[1-9]\\d{0,3}")
                ? Integer.parseInt(AssumedMark.without(text.text()))
                : 1;
    }

    private static void sizes(Shape shape, Value.Entries keys, String path, int count, Map<String, SizeAsNew> found) {
        for (Key key : shape.keys()) {
            Value value = keys.entry(key.name()).map(Value.Entry::value).orElse(null);
            String here = path + key.name();
            if (key.type() instanceof Type.Wearing wearing) {
                found.put(here, SizeAsNew.of(wearing, value, count));
            } else if (key.type() instanceof Type.OneGroup group && value instanceof Value.Entries inner) {
                sizes(group.shape(), inner, here + ".", count, found);
            } else if (key.type() instanceof Type.NamedGroups groups && value instanceof Value.Entries named) {
                for (Value.Entry one : named.entries()) {
                    if (one.value() instanceof Value.Entries inner) {
                        sizes(groups.shape(), inner, here + "." + one.key() + ".", count, found);
                    }
                }
            }
        }
    }
}
