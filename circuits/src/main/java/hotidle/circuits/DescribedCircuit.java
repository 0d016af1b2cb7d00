package hotidle.circuits;

import hotidle.circuits.kind.PartFigure;
import hotidle.circuits.sheet.HowMeasured;
import hotidle.circuits.sheet.SheetBuild;
import hotidle.circuits.sheet.SheetWriter;
import hotidle.circuits.text.Problem;
import hotidle.part.AnnularGap;
import hotidle.part.Part;
import hotidle.part.SealingRing;
import hotidle.transmission.Adjustable;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import hotidle.transmission.Workshop;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A circuit as its file describes it, every build of it known to be good. Past 300 lines, since what its builds, parts and sizes are
 * called is described with it.
 *
 * @param name     of the circuit
 * @param about    in its author's words
 * @param unitSystem in which its numbers are shown where nobody asks otherwise, as a word; empty where the file does not say
 * @param builds   in the order of the file; the first is the one meant where none is named
 * @param oils     names of the oils to choose from
 * @param nodes    names of the nodes
 * @param parts    in the order of the file
 * @param sizes    sizes that wear
 * @param defaults values that the file leaves to the program
 * @param adjustables the unit of each build, with the sizes of it that can be changed
 * @param workshops the unit of each build, with the jobs that the file names
 * @param sheet    name of the build that a measurement sheet has made, where one was given
 * @param noBuild  the problem of a build that is not there, whose name is put in for {@code %s}
 */
public record DescribedCircuit(
        String name,
        String about,
        Optional<String> unitSystem,
        List<Build> builds,
        List<String> oils,
        List<String> nodes,
        List<PartLine> parts,
        List<SizeLine> sizes,
        List<DefaultLine> defaults,
        Map<String, Adjustable> adjustables,
        Map<String, Workshop> workshops,
        Optional<String> sheet,
        NoBuild noBuild) {

    /**
     * A build.
     *
     * @param about   in its author's words
     * @param on      the build that it stands on, if any
     * @param changes its own changes, set pressure and command among them
     * @param setBy   how it brings a set pressure of its own about; empty where it has none
     */
    public record Build(
            String name, String about, Optional<String> on, List<ChangeLine> changes, Optional<SetPressure.By> setBy) {
        public Build {
            changes = List.copyOf(changes);
        }
    }

    /**
     * A change of a build.
     *
     * @param what    part.key, or set-pressure, or command
     * @param value   as written, for example "to measured"
     * @param because the reason
     */
    public record ChangeLine(String what, String value, String because) {}

    /**
     * The nearest of some builds that a build stands on, step by step; empty where it stands on none of them.
     *
     * @param among names of builds
     */
    public Optional<String> standsOn(String build, Collection<String> among) {
        Optional<String> on = on(build);
        while (on.isPresent() && !among.contains(on.get())) {
            on = on(on.get());
        }
        return on;
    }

    /**
     * The build that one is when both are set to one pressure, by command and spring: the one that it stands on where it changes nothing
     * but that pressure in this way, and so on; else itself.
     */
    public String apartFromSetPressure(String build) {
        return builds.stream()
                .filter(one -> one.name().equals(build) && one.on().isPresent())
                .filter(one ->
                        one.changes().stream().allMatch(change -> change.what().equals("set-pressure")))
                .filter(one -> one.setBy().equals(Optional.of(SetPressure.By.COMMAND_AND_SPRING)))
                .map(one -> apartFromSetPressure(one.on().get()))
                .findFirst()
                .orElse(build);
    }

    private Optional<String> on(String build) {
        return builds.stream()
                .filter(one -> one.name().equals(build))
                .findFirst()
                .flatMap(Build::on);
    }

    /**
     * A part.
     *
     * @param kind   its word
     * @param about  in its author's words
     * @param figure as it is drawn
     */
    public record PartLine(String name, String kind, String about, PartFigure figure) {}

    /**
     * A size that wears [m].
     *
     * @param part     the part
     * @param key      its key
     * @param fresh    new
     * @param limit    wear limit, where one is written
     * @param measured as measured, where it was; otherwise a worn size is an assumption
     */
    public record SizeLine(String part, String key, double fresh, OptionalDouble limit, OptionalDouble measured) {

        /** Name of part and key. */
        public String name() {
            return part + "." + key;
        }

        /** Whether a size lies beyond the wear limit, seen from the new size: above that of a bore, below that of a shaft. */
        public boolean pastLimit(double size) {
            return limit.isPresent() && (size - limit.getAsDouble()) * (limit.getAsDouble() - fresh) > 0;
        }
    }

    /**
     * A value that the file leaves to the program.
     *
     * @param where  part.key, or the path of the key in its section
     * @param value  as a user would write it
     * @param source where it comes from
     */
    public record DefaultLine(String where, String value, String source) {}

    /** Words the problem of a build that is not there. */
    public interface NoBuild {
        /** The problem, at the builds of the file. */
        Problem named(String build);
    }

    public DescribedCircuit {
        builds = List.copyOf(builds);
        oils = List.copyOf(oils);
        nodes = List.copyOf(nodes);
        parts = List.copyOf(parts);
        sizes = List.copyOf(sizes);
        defaults = List.copyOf(defaults);
        adjustables = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(adjustables));
        workshops = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(workshops));
    }

    /**
     * The same with a further build, or another one in place of that of its name.
     *
     * @param unit of the build
     * @param shop the same with its jobs; empty where the file names none
     */
    public DescribedCircuit with(Build build, Adjustable unit, Optional<Workshop> shop) {
        List<Build> all = new ArrayList<>(builds);
        all.replaceAll(one -> one.name().equals(build.name()) ? build : one);
        if (!all.contains(build)) {
            all.add(build);
        }
        Map<String, Adjustable> units = new LinkedHashMap<>(adjustables);
        units.put(build.name(), unit);
        Map<String, Workshop> shops = new LinkedHashMap<>(workshops);
        shops.remove(build.name());
        shop.ifPresent(one -> shops.put(build.name(), one));
        return with(about, all, units, shops);
    }

    /** The same with other words of what it is. */
    public DescribedCircuit about(String other) {
        return with(other, builds, adjustables, workshops);
    }

    private DescribedCircuit with(
            String words, List<Build> all, Map<String, Adjustable> units, Map<String, Workshop> shops) {
        return new DescribedCircuit(
                name, words, unitSystem, all, oils, nodes, parts, sizes, defaults, units, shops, sheet, noBuild);
    }

    /** The unit of each build, in the order of the file. */
    public Map<String, Transmission> units() {
        Map<String, Transmission> units = new LinkedHashMap<>();
        adjustables.forEach((build, adjustable) -> units.put(build, adjustable.unit()));
        return units;
    }

    /**
     * The unit of a build.
     *
     * @throws UnknownBuildException where there is none of the name
     */
    public Transmission unit(String build) {
        return adjustable(build).unit();
    }

    /**
     * The unit of a build, with the sizes of it that can be changed.
     *
     * @throws UnknownBuildException where there is none of the name
     */
    public Adjustable adjustable(String build) {
        Adjustable unit = adjustables.get(build);
        if (unit == null) {
            throw new UnknownBuildException(noBuild.named(build));
        }
        return unit;
    }

    /**
     * The unit of a build, with the jobs that the file names; empty where it names none.
     *
     * @throws UnknownBuildException where there is no build of the name
     */
    public Optional<Workshop> workshop(String build) {
        return Optional.ofNullable(workshops.get(adjustable(build).unit().build()))
                .filter(named -> !named.jobs().isEmpty());
    }

    /** A measurement sheet to fill in, as the text of a CSV file. */
    public String measurementSheet(SheetWriter.LengthUnit unit) {
        return measurementSheet(unit, Map.of());
    }

    /**
     * The same, some of it filled in.
     *
     * @param measured sizes by part and key [m]; those that no sheet has are passed over
     */
    public String measurementSheet(SheetWriter.LengthUnit unit, Map<String, Double> measured) {
        Map<String, String> about = new LinkedHashMap<>();
        Map<String, String> kinds = new LinkedHashMap<>();
        parts.forEach(part -> kinds.put(part.name(), part.kind()));
        parts.forEach(part ->
                about.put(part.name(), part.about().isEmpty() ? part.kind() : part.kind() + ": " + part.about()));
        return SheetWriter.write(
                sizes.stream()
                        .map(size -> new SheetWriter.SheetSize(
                                size.part(),
                                size.key(),
                                size.fresh(),
                                size.limit(),
                                HowMeasured.of(kinds.get(size.part()), size.key()),
                                alike(size.part())))
                        .toList(),
                about,
                unit,
                measured);
    }

    /** How many equal bores or rings a part stands for. */
    private int alike(String part) {
        Part is = unit().network().part(part).orElseThrow().part();
        return is instanceof AnnularGap gap ? gap.count() : is instanceof SealingRing rings ? rings.count() : 1;
    }

    /** A size as measured [m]: as the sheet says, where there is one, otherwise as the file does; empty where it was not measured. */
    public OptionalDouble measured(SizeLine size) {
        if (sheet.isEmpty()) {
            return size.measured();
        }
        boolean inSheet = builds.stream()
                .filter(build -> build.name().equals(sheet.get()))
                .flatMap(build -> build.changes().stream())
                .anyMatch(change -> change.what().equals(size.name()));
        return inSheet ? inUse(size, sheet.get()) : OptionalDouble.empty();
    }

    /** Sizes of the sheet that stand for several readings or several bores, each with what was put in their place. */
    public List<String> reduced() {
        return sheet.stream()
                .flatMap(name -> builds.stream().filter(build -> build.name().equals(name)))
                .flatMap(build -> build.changes().stream())
                .flatMap(change ->
                        SheetBuild.counted(change.because()).stream().map(said -> change.what() + ": " + said))
                .toList();
    }

    /** By how much a size is measured past its wear limit [m]; empty where it is not. */
    public OptionalDouble pastLimit(SizeLine size) {
        OptionalDouble measured = measured(size);
        return measured.isPresent() && size.pastLimit(measured.getAsDouble())
                ? OptionalDouble.of(
                        Math.abs(measured.getAsDouble() - size.limit().orElseThrow()))
                : OptionalDouble.empty();
    }

    private OptionalDouble inUse(SizeLine size, String build) {
        return adjustable(build).dimensions().stream()
                .filter(dimension -> dimension.name().equals(size.name()))
                .mapToDouble(WearSize::value)
                .findFirst();
    }

    /** How many sizes are measured past their wear limit. */
    public long pastLimit() {
        return sizes.stream().filter(size -> pastLimit(size).isPresent()).count();
    }

    /** What the file says of each part, by name; empty where it says nothing. */
    public Map<String, String> abouts() {
        Map<String, String> abouts = new LinkedHashMap<>();
        parts.forEach(part -> abouts.put(part.name(), part.about()));
        return abouts;
    }

    /** How many sizes a build of a name changes; for the build of a sheet, those that were measured. */
    public long measured(String build) {
        return builds.stream()
                .filter(one -> one.name().equals(build))
                .mapToLong(one -> one.changes().size())
                .sum();
    }

    /** The unit of the first build. */
    public Transmission unit() {
        return unit(builds.get(0).name());
    }
}
