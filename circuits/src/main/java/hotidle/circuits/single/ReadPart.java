package hotidle.circuits.single;

import hotidle.circuits.text.Problem;
import java.util.List;
import java.util.Optional;

/**
 * What reading a part on its own gives.
 *
 * @param part     the part; empty where there is an error
 * @param problems errors and warnings in the order in which they stand
 */
public record ReadPart(Optional<OnePart> part, List<Problem> problems) {
    public ReadPart {
        problems = List.copyOf(problems);
    }
}
