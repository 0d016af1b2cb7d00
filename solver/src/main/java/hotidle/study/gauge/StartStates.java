package hotidle.study.gauge;

import hotidle.newton.SolvedState;
import java.util.Map;
import java.util.Optional;

/**
 * States from which a chain of units starts, at each test point.
 *
 * @param near      those of a unit near the first
 * @param otherwise those of a unit at the other side, from which Newton starts where it fails from the former; may be of no test point
 */
record StartStates(Map<TestPoint, SolvedState> near, Map<TestPoint, SolvedState> otherwise) {

    StartStates {
        near = Map.copyOf(near);
        otherwise = Map.copyOf(otherwise);
    }

    static StartStates of(Map<TestPoint, SolvedState> near) {
        return new StartStates(near, Map.of());
    }

    Start at(TestPoint point) {
        return new Start(near.get(point), Optional.ofNullable(otherwise.get(point)));
    }

    /** Those of one test point. A state is equal to itself alone, so that no chain is taken for one that started elsewhere. */
    record Start(SolvedState state, Optional<SolvedState> otherwise) {}
}
