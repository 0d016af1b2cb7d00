package hotidle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Runs a little of everything and says nothing: what it loads is what the launcher keeps in its archive of classes, so that a command
 * need not read and check them anew.
 */
final class Rehearsal {

    /** A small study of each command that reads and writes no file of the user's; pictures go to {@code {out}}. */
    static final List<String> COMMANDS = List.of(
            "list",
            "explain line",
            "part annular-gap bore=14.06mm valve=14.00mm length=8mm --drop 150psi",
            "check crescent-four",
            "compare crescent-four --speed 600..3600/1500rpm",
            "compare shuttle-five --build fresh --build worn --speed 600..3600/1500rpm",
            "margins crescent-four --build worn --speed 600..3600/1500rpm",
            "sensitivity vane-six --build worn --speed 600..3600/3000rpm",
            "leaks crescent-four --build worn --speed 600..3600/3000rpm --steps 1",
            "window crescent-four --try 100..200/100psi --speed 600..3600/3000rpm",
            "wear crescent-four --build worn --speed 600..3600/3000rpm --fit regulator.bore",
            "map vane-six --speed 600..3600/3000rpm --try 100..200/100psi --vary plate.gap=5..45/40um --plot {out}/map.svg",
            "spring crescent-four --set 220psi --format csv",
            "shift crescent-four --inertia 0.4kg.m2",
            "air shuttle-five manual-valve-front --blocked 25inHg --hole 1mm=5inHg --reading 14inHg",
            "spread training-rig --unmeasured worn --samples 250 --pairs 0",
            "heat crescent-four",
            "torque crescent-four",
            "sweep crescent-four --speed 600..3600/1500rpm --format json",
            "sweep crescent-four --speed 600..3600/1500rpm --plot {out}/sweep.png",
            "draw training-rig --duty fast --plot {out}/rig.svg",
            "live training-rig --no-browser --for 0s");

    private Rehearsal() {}

    /** Ends without a word whatever becomes of a command: the archive then holds less. */
    public static void main(String[] none) {
        Stop.BY_USER.listen();
        try {
            Path out = Files.createTempDirectory("hotidle");
            COMMANDS.forEach(command -> run(command, out));
            for (String file : List.of("map.svg", "sweep.png", "rig.svg")) {
                Files.deleteIfExists(out.resolve(file));
            }
            Files.deleteIfExists(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            Stop.BY_USER.printed();
        }
    }

    /** Its exit code. */
    static int run(String command, Path out) {
        String[] words = command.split(" ", -1);
        for (int i = 0; i < words.length; i++) {
            words[i] = words[i].replace("{out}", out.toString());
        }
        return HotIdle.run(silent(), silent(), words);
    }

    private static PrintWriter silent() {
        return new PrintWriter(Writer.nullWriter());
    }
}
