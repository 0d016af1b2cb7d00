package hotidle.answer.phrase;

import hotidle.transmission.SetPressure;

/** How set pressures are reached, and what becomes of idle. */
final class SetByPhrase {

    private SetByPhrase() {}

    /** What is set, in a sentence without its full stop. */
    static String set(SetPressure.By by) {
        return switch (by) {
            case COMMAND_AND_SPRING -> "Command and spring are set together, idle with the rest";
            case SPRING -> "The spring alone is set, idle with the rest; pilot and throttle pressure stay as they are";
        };
    }
}
