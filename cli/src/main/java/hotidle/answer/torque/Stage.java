package hotidle.answer.torque;

import hotidle.study.StageJobs;
import hotidle.study.Wear;
import hotidle.study.Window;
import java.util.Optional;

/**
 * A build as a shop quotes it.
 *
 * @param held   what it holds
 * @param set    set pressure that it has [Pa]
 * @param window which set pressures its limits allow
 * @param wear   how far its fits may wear together
 * @param jobs   what is done for it; empty where the file names no jobs or the build stands on no other
 */
public record Stage(TorqueAnswer.BuildTorque held, double set, Window window, Wear wear, Optional<StageJobs> jobs) {

    String name() {
        return held.build();
    }
}
