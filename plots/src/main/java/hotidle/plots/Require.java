package hotidle.plots;

import java.util.List;

/** Rules that all charts hold their numbers to. */
final class Require {
    private Require() {}

    static void that(boolean holds, String message) {
        if (!holds) {
            throw new IllegalArgumentException(message);
        }
    }

    /** Speeds must be finite and rise, and there must be two to make an axis. */
    static void speeds(String owner, List<Double> speeds) {
        that(speeds.size() >= 2, owner + " has " + speeds.size() + " speeds [rpm]; a chart needs at least 2");
        for (int i = 0; i < speeds.size(); i++) {
            that(Double.isFinite(speeds.get(i)), owner + " has speed " + speeds.get(i) + " rpm; it must be finite");
            that(
                    i == 0 || speeds.get(i) > speeds.get(i - 1),
                    owner + " has speed " + speeds.get(i) + " rpm after " + (i == 0 ? "" : speeds.get(i - 1))
                            + " rpm; speeds must rise");
        }
    }

    static void distinct(String what, List<String> names) {
        that(names.stream().distinct().count() == names.size(), what + " must have different names, but are " + names);
    }
}
