package hotidle.cli.golden;

import java.util.List;
import java.util.function.BiPredicate;
import java.util.function.ToDoubleBiFunction;

/**
 * How far a number of JSON may lie from the recorded one: the one table of it. What is not named here is a state's: 1e-9 of its scale
 * ({@link Scales}). Solving a state from another start (sweep --from cold for rising) moves it by less.
 *
 * @param keys   of the number
 * @param where  whether it holds at a place
 * @param most   allowed difference of a recorded number at its place
 * @param reason why
 */
record Tolerance(
        List<String> keys,
        BiPredicate<JsonPath, Double> where,
        ToDoubleBiFunction<JsonPath, Double> most,
        String reason) {

    static final double STATE = 1e-9;

    /** Half a revolution a minute, over the slowest speed at which hubs are searched in the cases. */
    private static final double FILM = 0.5 / 500;

    private static final List<Tolerance> TABLE = List.of(
            of(
                    (path, was) -> Double.POSITIVE_INFINITY,
                    "how the solver came to a state and what rounding left there; no answer of the unit",
                    "method",
                    "steps",
                    "largest_imbalance_m3_s",
                    "largest_force_error",
                    "imbalance",
                    "unexplained_share"),
            of(
                    (path, was) -> 0.5,
                    "SpeedSweep.CROSSING: crossings are narrowed down to half a revolution a minute",
                    "onset_rpm",
                    "secondary_unloads_from_rpm",
                    "primary_bypasses_from_rpm"),
            new Tolerance(
                    List.of("engine_speed_rpm"),
                    (path, was) -> ofHub(path),
                    (path, was) -> 0.5,
                    "HubOverSpeed.NARROW: the thinnest film's speed is narrowed down to half a revolution a minute"),
            new Tolerance(
                    List.of("value"),
                    (path, was) -> ofHub(path),
                    (path, was) -> FILM * Math.abs(was),
                    "HubOverSpeed.NARROW: film and load move no faster than in proportion to speed"),
            new Tolerance(
                    List.of("headroom"),
                    (path, was) -> ofHub(path),
                    (path, was) -> FILM * (1 + Math.abs(was)),
                    "HubOverSpeed.NARROW: as the film or load that it is a share of"),
            new Tolerance(
                    List.of("value", "headroom"),
                    (path, was) -> path.beside("margin").equals("regulation"),
                    (path, was) -> 1e-8 * (1 + Math.abs(was)),
                    "HeldLineSearch.NARROW: the held regulator is narrowed down to 1e-9 of its way, over which demand grows up to tenfold"),
            new Tolerance(
                    List.of("needed"),
                    (path, was) -> path.beside("margin").equals("regulation"),
                    (path, was) -> 1e-8 * Math.abs(was),
                    "HeldLineSearch.NARROW: the demand at that position; no other margin's need is searched"),
            of(
                    (path, was) -> 1e-6 * (1 + Math.abs(was)),
                    "Misfit: squares of what readings are off by, over deviations far below the readings themselves",
                    "chi_square",
                    "chi_square_left",
                    "probability",
                    "off_deviations",
                    "believed",
                    "none_of_these",
                    "information",
                    "hidden_up_to",
                    "best_size",
                    "low_size",
                    "high_size",
                    "other_size"),
            of((path, was) -> STATE * (1 + Math.abs(was)), "a share of its need, so that 1 is its scale", "headroom"),
            of(
                    (path, was) -> 2e-4 * Math.abs(was),
                    "Window.NARROW: boundaries are narrowed down to 2e-4 of the pressure",
                    "low_pa",
                    "high_pa"),
            of(
                    (path, was) -> 1e-3 * Math.abs(path.numberBeside("searched_to") - path.numberBeside("as_is")) / 8,
                    "Wear.NARROW: sizes are narrowed down to 1e-3 of the allowance, and searched up to eight allowances (Wear.FAR)",
                    "gone_at"),
            of(
                    (path, was) -> 1e-3,
                    "Wear.NARROW: 1e-3 of the way to the written limits",
                    "share_of_written_limits",
                    "wear_share"),
            of(
                    (path, was) -> STATE * Math.abs(was),
                    "sizes as the file or the question has them; large and small stand in one array",
                    "new",
                    "as_is",
                    "shop_limit",
                    "searched_to",
                    "from",
                    "to",
                    "now",
                    "size"));

    private static Tolerance of(ToDoubleBiFunction<JsonPath, Double> most, String reason, String... keys) {
        return new Tolerance(List.of(keys), (path, was) -> true, most, reason);
    }

    /** Margins that are searched over engine speed. */
    private static boolean ofHub(JsonPath path) {
        return List.of("film", "unit-load").contains(path.beside("margin"));
    }

    /** Whether whatever stands at a place is taken, words too. */
    static boolean anything(JsonPath path) {
        return TABLE.get(0).keys.contains(path.last());
    }

    /** Allowed difference of a recorded number. */
    static double at(JsonPath path, double was, Scales scales) {
        for (Tolerance one : TABLE) {
            if ((one.keys.contains(path.last()) || one.keys.contains(path.map())) && one.where.test(path, was)) {
                return one.most.applyAsDouble(path, was);
            }
        }
        return STATE * scales.at(path);
    }
}
