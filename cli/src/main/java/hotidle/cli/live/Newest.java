package hotidle.cli.live;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.LongSupplier;

/** Of the questions of a page the newest one is answered: an older one of the same kind that is still being worked at is given up. */
final class Newest {

    /** Kinds of question times pages that are remembered: far more than anybody has open (chosen). */
    private static final int MOST = 1000;

    /** No question takes longer, or it is given up (chosen) [ns]. */
    private static final long LONGEST = 30_000_000_000L;

    private final LongSupplier clock;
    private final Map<String, Long> numbers = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Long> eldest) {
            return size() > MOST;
        }
    };

    Newest() {
        this(System::nanoTime);
    }

    /** By a clock [ns] of one's own. */
    Newest(LongSupplier clock) {
        this.clock = clock;
    }

    /** Nobody waits so long. */
    static final class TooLongException extends RuntimeException {
        private static final long serialVersionUID = 1;

        TooLongException() {
            super("this takes longer than 30 seconds", null, false, false);
        }
    }

    /** A newer question has come. */
    static final class GivenUpException extends RuntimeException {
        private static final long serialVersionUID = 1;

        GivenUpException(String why) {
            super(why, null, false, false);
        }
    }

    /**
     * Notes a question.
     *
     * @param page   that asks
     * @param kind   of question
     * @param number of the question; those of a page rise
     * @param after  another kind of question that makes an older one of this kind idle; may be the same
     * @return to be run between the steps of the work: it throws once a newer question has come, or it takes too long
     * @throws GivenUpException where a newer one has come already
     */
    Runnable begin(String page, String kind, long number, String after) {
        String key = kind + " " + page;
        String other = after + " " + page;
        long until = clock.getAsLong() + LONGEST;
        synchronized (numbers) {
            if (numbers.getOrDefault(key, Long.MIN_VALUE) > number) {
                throw new GivenUpException("a newer question has come");
            }
            numbers.put(key, number);
        }
        return () -> {
            if (newer(key, number) || newer(other, number)) {
                throw new GivenUpException("a newer question has come");
            }
            if (clock.getAsLong() - until > 0) {
                throw new TooLongException();
            }
        };
    }

    private boolean newer(String key, long number) {
        synchronized (numbers) {
            return numbers.getOrDefault(key, number) > number;
        }
    }
}
