package hotidle.study.spread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Shares counted in samples, with what is not known of them. */
class CountedShareTest {

    /**
     * R. G. Newcombe, Statistics in Medicine 17 (1998) 857, table I, method 3 (from memory): 81 of 263, 15 of 148, 0 of 20, 1 of 29.
     */
    @Test
    void wilsonsInterval() {
        near(81, 263, 0.2553, 0.3662);
        near(15, 148, 0.0624, 0.1605);
        near(0, 20, 0, 0.1611);
        near(1, 29, 0.0061, 0.1718);
    }

    private static void near(long count, long of, double low, double high) {
        assertEquals(low, new CountedShare(count, of).low(), 5e-5);
        assertEquals(high, new CountedShare(count, of).high(), 5e-5);
    }

    @Test
    void ofNoUnitsNoShareIsKnown() {
        assertTrue(Double.isNaN(new CountedShare(0, 0).value()));
    }
}
