package hotidle.part;

/** Guards the dimensions of parts: a broken rule here is a fault of the caller, since files are checked before. */
final class Check {

    private Check() {}

    static void positive(String what, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " is " + value + " and must be above zero (SI units)");
        }
    }

    static void notNegative(String what, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " is " + value + " and must not be below zero (SI units)");
        }
    }

    static void within(String what, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(what + " is " + value + " and must lie between " + low + " and " + high);
        }
    }
}
