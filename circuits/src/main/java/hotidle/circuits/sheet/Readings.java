package hotidle.circuits.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;

/**
 * Several readings of one size, and the one size that leaks as much.
 * <pre>
 * Directions  c(θ) = m + d·cos 2θ for an oval bore, its two readings a and b at right angles: m = (a + b)/2, d = (a − b)/2.
 *             A gap passes oil with the cube of its clearance: mean of c³ = m³ + 1.5·m·d². Of more directions the mean of the cubes.
 * Depths      c straight between two depths, Q·∫dz/c³ = Δp: mean of 1/c³ between c1 and c2 = (c1 + c2)/(2·c1²·c2²)
 * Source      laminar flow between plates, local clearance; H. E. Merritt, Hydraulic Control Systems, 1967, §3 (from memory)
 * Range       depths evenly spread over the land. The valve is taken as centred for this: eccentric, ovality counts less.
 * </pre>
 *
 * @param depths readings [m], one list a depth, of one or more directions
 */
record Readings(List<List<Double>> depths) {

    Readings {
        depths = depths.stream().map(List::copyOf).toList();
    }

    /** Whether there is one reading alone. */
    boolean one() {
        return all().count() == 1;
    }

    /** The middle of all of them [m]. */
    double mean() {
        return all().average().orElseThrow();
    }

    double least() {
        return all().min().orElseThrow();
    }

    double most() {
        return all().max().orElseThrow();
    }

    private DoubleStream all() {
        return depths.stream().flatMap(List::stream).mapToDouble(Double::doubleValue);
    }

    /** The clearance [m] that leaks as much as the bore of these readings does round a valve that is thinner than any of them. */
    double clearanceOver(double valve) {
        List<Double> rings = new ArrayList<>();
        for (List<Double> directions : depths) {
            rings.add(round(directions.stream().map(bore -> bore - valve).toList()));
        }
        double resistance = rings.get(0) == 0 ? Double.POSITIVE_INFINITY : Math.pow(rings.get(0), -3);
        if (rings.size() > 1) {
            resistance = 0;
            for (int i = 1; i < rings.size(); i++) {
                double one = rings.get(i - 1);
                double other = rings.get(i);
                resistance += (one + other) / (2 * one * one * other * other) / (rings.size() - 1);
            }
        }
        return Math.cbrt(1 / resistance);
    }

    /** The gap [m] all along that passes as much as these do side by side. */
    double gap() {
        return Math.cbrt(all().map(one -> one * one * one).average().orElseThrow());
    }

    /** The clearance all round that leaks as much as clearances in several directions. */
    private static double round(List<Double> clearances) {
        if (clearances.size() == 2) {
            double middle = (clearances.get(0) + clearances.get(1)) / 2;
            double oval = (clearances.get(0) - clearances.get(1)) / 2;
            return Math.cbrt(middle * middle * middle + 1.5 * middle * oval * oval);
        }
        return Math.cbrt(clearances.stream()
                .mapToDouble(one -> one * one * one)
                .average()
                .orElseThrow());
    }

    /** How many they are, in words: 3 depths in 2 directions, 4 readings. */
    String counted() {
        int directions = depths.get(0).size();
        boolean even = depths.stream().allMatch(one -> one.size() == directions);
        return even && directions > 1
                ? String.format(
                        Locale.ROOT,
                        "%d depth%s in %d directions",
                        depths.size(),
                        depths.size() == 1 ? "" : "s",
                        directions)
                : all().count() + " readings";
    }
}
