package hotidle.circuits.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Equal bores, gaps or rings side by side that a row stands for, and the one size that leaks as much as those that were read.
 * <pre>
 * Formula   Q = Σ Qi, each with the cube of its own clearance: c = (Σ ci³/n)^⅓, of the n that were read
 * Source    laminar flow between plates, as {@link Readings}
 * Range     those not read leak as much as the mean of those that were, which nothing but a reading tells
 * </pre>
 *
 * @param count how many the row stands for
 * @param read  readings of each that was read
 */
record EqualBores(int count, List<Readings> read) {

    EqualBores {
        read = List.copyOf(read);
    }

    /** Those of a measured size. */
    static EqualBores of(Measured one, SizeAsNew size) {
        return new EqualBores(size.count(), one.cell().each(one.unit(), size.count()));
    }

    /** Whether the row stands for one alone. */
    boolean single() {
        return count == 1;
    }

    /** Whether one alone was read, and once. */
    boolean once() {
        return read.size() == 1 && read.get(0).one();
    }

    /**
     * The clearance [m] with which all leak as much as those that were read: each over its own valve where as many valves were
     * read as bores, or over one valve.
     *
     * @param valves that were read
     * @param fresh  a valve of which none was read [m]
     * @return empty where a valve fills its bore, or none is known
     */
    OptionalDouble clearance(List<Readings> valves, OptionalDouble fresh) {
        List<Double> cubes = new ArrayList<>();
        int pairs = valves.size() == read.size() || read.size() == 1 ? Math.max(valves.size(), 1) : 1;
        for (int i = 0; i < Math.max(pairs, read.size()); i++) {
            OptionalDouble valve = valves.isEmpty()
                    ? fresh
                    : OptionalDouble.of(
                            pairs == 1 ? mean(valves) : valves.get(i).mean());
            Readings bore = read.get(read.size() == 1 ? 0 : i);
            if (valve.isEmpty() || bore.least() <= valve.getAsDouble()) {
                return OptionalDouble.empty();
            }
            double clearance = bore.clearanceOver(valve.getAsDouble());
            cubes.add(clearance * clearance * clearance);
        }
        return OptionalDouble.of(mean3(cubes));
    }

    /** The gap [m] of each with which all pass as much as those that were read. */
    double gap() {
        return mean3(
                read.stream().map(Readings::gap).map(gap -> gap * gap * gap).toList());
    }

    private static double mean3(List<Double> cubes) {
        return Math.cbrt(
                cubes.stream().mapToDouble(Double::doubleValue).average().orElseThrow());
    }

    private static double mean(List<Readings> some) {
        return some.stream().mapToDouble(Readings::mean).average().orElseThrow();
    }

    /** How many were read, in words. */
    String counted() {
        if (read.size() == count) {
            return "each of " + count + " alike read";
        }
        return (read.size() > 1
                ? read.size() + " of " + count + " alike read, and " + SheetBuild.FOR_ALL + " " + count
                : (read.get(0).one() ? "one reading" : read.get(0).counted() + " of one") + ", " + SheetBuild.FOR_ALL
                        + " " + count + " alike");
    }
}
