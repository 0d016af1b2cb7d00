package hotidle.newton;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.Random;
import java.util.TreeSet;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Our factors against EJML's, on the kind of matrix that circuits have. */
class FixedLuPropertyTest {

    @SuppressWarnings("ArrayRecordComponent") // of this test alone
    private record Drawn(Pattern pattern, double[] values, BitSet waits) {}

    /** Nodes joined at random by flows, some states that nodes and they themselves depend on, and one without a diagonal. */
    private static Drawn draw(Random random) {
        int n = random.nextInt(3, 60);
        double[][] dense = new double[n][n];
        for (int link = 0; link < 3 * n; link++) {
            int one = random.nextInt(n - 1);
            int other = random.nextInt(n - 1);
            double flow = Math.pow(10, random.nextDouble(-3, 3));
            dense[one][one] += flow;
            if (one != other) {
                dense[one][other] -= flow * random.nextDouble();
                dense[other][one] -= flow;
                dense[other][other] += flow;
            }
        }
        for (int i = 0; i < n - 1; i++) {
            dense[i][i] += Math.pow(10, random.nextDouble(-3, 1));
        }
        int inlet = random.nextInt(n - 1);
        dense[n - 1][inlet] = -1;
        dense[inlet][n - 1] = 1 + random.nextDouble();
        return of(dense, n - 1);
    }

    private static Drawn of(double[][] dense, int waiting) {
        int n = dense.length;
        @SuppressWarnings({"unchecked", "rawtypes"})
        TreeSet<Integer>[] columns = new TreeSet[n];
        for (int j = 0; j < n; j++) {
            columns[j] = new TreeSet<>();
            for (int i = 0; i < n; i++) {
                if (i == j || dense[i][j] != 0) {
                    columns[j].add(i);
                }
            }
        }
        Pattern pattern = Pattern.of(columns);
        double[] values = new double[pattern.rows().length];
        for (int j = 0; j < n; j++) {
            for (int i : columns[j]) {
                values[pattern.place(i, j)] = dense[i][j];
            }
        }
        BitSet waits = new BitSet();
        waits.set(waiting);
        return new Drawn(pattern, values, waits);
    }

    @Property(tries = 300, seed = "1")
    void theSolutionIsThatOfEjml(@ForAll long seed) {
        Random random = new Random(seed);
        Drawn drawn = draw(random);
        int n = drawn.pattern.size();
        FixedLu ours = new FixedLu(drawn.pattern, drawn.waits);
        SparseLu theirs = new SparseLu(drawn.pattern);
        assertTrue(theirs.factorise(drawn.values));
        // twice, since the second time starts from what the first has left
        assertTrue(ours.factorise(drawn.values));
        assertTrue(ours.factorise(drawn.values));
        double[] right = random.doubles(n, -1, 1).toArray();
        double[] one = new double[n];
        double[] other = new double[n];
        ours.solve(right, one);
        theirs.solve(right.clone(), other);
        double largest = 0;
        for (double x : other) {
            largest = Math.max(largest, Math.abs(x));
        }
        for (int i = 0; i < n; i++) {
            assertEquals(other[i], one[i], 1e-7 * largest, "unknown " + i);
        }
    }

    @Example
    void aPivotLostInRoundingIsRefused() {
        Drawn singular = of(new double[][] {{1, 1, 0}, {1, 1 + 1e-16, 0}, {0, 0, 1}}, 2);
        assertFalse(new FixedLu(singular.pattern, singular.waits).factorise(singular.values));
    }

    @Example
    void whatIsNotANumberIsRefused() {
        Drawn broken = of(new double[][] {{1, 2}, {3, Double.NaN}}, 1);
        assertFalse(new FixedLu(broken.pattern, broken.waits).factorise(broken.values));
    }

    /** A square grid of nodes: eliminated row by row it fills to its band, by fewest neighbours to less than half of that. */
    @Example
    void theOrderKeepsTheFactorsSparse() {
        Gallery gallery = new Gallery(20, 20);
        Pattern pattern = gallery.equations().pattern();
        int ours = new FixedLu(pattern, new BitSet()).entries();
        int banded = 2 * 20 * 400;
        assertTrue(ours < banded / 2, ours + " entries");
    }
}
