package hotidle.circuits.check;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import java.util.List;

/** A build says why it sets a pressure, gives other tables or commands a duty point otherwise. */
final class BuildGivesItsReason implements Rule.OfBuild {

    @Override
    public void check(Attributes file, Attributes build) {
        for (String key : List.of("set-pressure", "command", "duty")) {
            if (build.has(key) && build.text("because").isEmpty()) {
                build.error(
                        ProblemCode.BUILD_WITHOUT_REASON,
                        key,
                        "gives no reason for its " + key,
                        "each change has its reason",
                        "add because: and the reason");
            }
        }
    }
}
