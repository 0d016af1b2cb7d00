package hotidle.newton;

import hotidle.network.Conditions;
import java.util.Arrays;
import java.util.Locale;

/**
 * The gallery's work, timed: 200 states from speed 0.2 to 2.0, each from those before it, on one thread. Prints one JSON line.
 *
 * <p>Passes run untimed until {@code SECONDS} have gone, so that the machine code is there; then one pass is timed.
 */
final class GalleryRun {

    private static final int STATES = 200;
    private static final double SECONDS = 3;

    private final Series series;
    private final Conditions[] conditions = new Conditions[STATES];
    private final int[] numbers;
    private long steps;
    private int failed;

    GalleryRun(Gallery gallery) {
        series = new Series(gallery.equations(), Newton.TOLERANCE);
        numbers = new int[gallery.nodes()];
        for (int id = 0; id < numbers.length; id++) {
            numbers[id] = series.number(Gallery.name(id));
        }
        Conditions first = Gallery.at(0.2);
        for (int k = 0; k < STATES; k++) {
            conditions[k] = first.atSpeed(0.2 + 1.8 * k / (STATES - 1));
        }
    }

    /** One pass; the sum of the pressures at its last state comes back [Pa]. */
    double pass() {
        series.restart();
        steps = 0;
        failed = 0;
        for (Conditions one : conditions) {
            if (!series.solve(one)) {
                failed++;
            }
            steps += series.steps();
        }
        return Arrays.stream(numbers).mapToDouble(series::value).sum();
    }

    int failed() {
        return failed;
    }

    public static void main(String[] arguments) {
        Gallery gallery = new Gallery(Integer.parseInt(arguments[0]), Integer.parseInt(arguments[1]));
        GalleryRun run = new GalleryRun(gallery);
        long begin = System.nanoTime();
        run.pass();
        long first = System.nanoTime() - begin;
        while (System.nanoTime() - begin < SECONDS * 1e9) {
            run.pass();
        }
        long start = System.nanoTime();
        double sum = run.pass();
        long taken = System.nanoTime() - start;
        System.out.printf(
                Locale.ROOT,
                "{\"nodes\":%d,\"links\":%d,\"us_per_state\":%.3f,\"us_per_state_first_pass\":%.3f,\"failed\":%d,"
                        + "\"factorisations_per_state\":%.2f,\"pressure_sum_pa\":%.9e}%n",
                gallery.nodes(),
                gallery.links(),
                taken / 1e3 / STATES,
                first / 1e3 / STATES,
                run.failed,
                (double) run.steps / STATES,
                sum);
    }
}
