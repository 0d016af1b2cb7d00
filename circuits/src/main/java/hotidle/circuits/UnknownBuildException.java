package hotidle.circuits;

import hotidle.circuits.text.Problem;

/** A build was asked for that the circuit does not have; the input is wrong. */
public final class UnknownBuildException extends IllegalArgumentException {

    private final transient Problem problem;

    UnknownBuildException(Problem problem) {
        super(problem.headline());
        this.problem = problem;
    }

    /** The problem, positioned at the builds of the file. */
    public Problem problem() {
        return problem;
    }
}
