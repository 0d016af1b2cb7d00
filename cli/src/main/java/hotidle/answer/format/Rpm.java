package hotidle.answer.format;

import java.util.OptionalDouble;

/** Speeds in the unit that all of the trade reads, whatever the system of units: revolutions a minute. */
public final class Rpm {

    private static final double MINUTE = 60;

    private Rpm() {}

    /** A speed [rev/s] in rpm. */
    public static double of(double speed) {
        return speed * MINUTE;
    }

    /** A speed [rev/s] in rpm, where there is one. */
    public static OptionalDouble of(OptionalDouble speed) {
        return speed.isPresent() ? OptionalDouble.of(of(speed.getAsDouble())) : speed;
    }
}
