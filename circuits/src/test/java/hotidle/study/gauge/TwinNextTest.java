package hotidle.study.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** How surely a few twins tell what a thousand would. */
class TwinNextTest {

    @Test
    void twinsThatAreAllInOneRatioLeaveNoDoubtOfIt() {
        assertEquals("1.500 ± 0.000", TwinNext.ratio(List.of(3.0, 1.5, 6.0), List.of(2.0, 1.0, 4.0)));
    }

    /** Over ones a ratio is a mean: of 1, 1 and 4 it is 2, with √(6/2)/√3 as its standard error. */
    @Test
    void overOnesTheErrorOfARatioIsThatOfAMean() {
        assertEquals("2.000 ± 1.000", TwinNext.ratio(List.of(1.0, 1.0, 4.0), List.of(1.0, 1.0, 1.0)));
    }
}
