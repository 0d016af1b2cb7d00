package hotidle.circuits.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.newton.SteadySolver;
import hotidle.result.Solution;
import hotidle.transmission.Transmission;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The bench against sums by hand, as training-rig.md writes them down. Every restriction loses b·q + a·q²; the reading of the
 * first gauge is chosen, and all else follows without trying: flow through the row, both other gauges, what slips back in the
 * pump, and the speed that the pump must have.
 */
class TrainingRigTest {

    private static final DescribedCircuit RIG = CircuitReader.read(
                    Library.text("training-rig").orElseThrow(), "training-rig.yaml")
            .circuit()
            .orElseThrow();

    private static final double RHO = 850;
    private static final double MU = 10e-6 * RHO;
    private static final double CD = 0.611;
    private static final double SHARP = Math.PI / (Math.PI + 2);

    /** A loss b·q + a·q². */
    private record Loss(double b, double a) {
        double drop(double q) {
            return b * q + a * q * q;
        }

        double flow(double drop) {
            return (Math.sqrt(b * b + 4 * a * drop) - b) / (2 * a);
        }
    }

    /** Sampson 1891 creeping and the coefficient of the file at speed: n equal holes of diameter d side by side. */
    private static Loss holes(double d, int n) {
        double area = Math.PI * d * d / 4;
        return new Loss(24 * MU / (d * d * d) / n, RHO / (2 * CD * CD * area * area) / (n * n));
    }

    /** Radial flow under the faces of the gears, in the middle of the pocket: Massey, Mechanics of Fluids, Ex. 6.2. */
    private static Loss faces(double clearance) {
        double h = clearance / 2;
        double sector = 0.5;
        double area = 2 * Math.PI * 0.008 * sector * h;
        double one = 6 * MU * Math.log(13.0 / 8) / (Math.PI * h * h * h * sector);
        return new Loss(one / 4, 1.686 * RHO / (2 * area * area) / 16);
    }

    /** Five lands in a row, two gears of 10 mm side by side: plane flow, Merritt 1967 section 2-5. */
    private static Loss tips(double h) {
        double w = 0.020;
        return new Loss(5 * 12 * MU * 0.0012 / (w * h * h * h), 5 * 1.686 * RHO / (2 * w * w * h * h));
    }

    private static Loss mesh() {
        double area = 0.2e-6;
        double d = Math.sqrt(4 * area / Math.PI);
        return new Loss(24 * MU / (d * d * d), RHO / (2 * SHARP * SHARP * area * area));
    }

    /** Of q in a row and slip, of which the tips keep back the lesser of what passes them and what they drag in a turn. */
    private static double speed(double pumped, double past, double dragged) {
        double speed = pumped / 12e-6;
        for (int i = 0; i < 100; i++) {
            double drag = dragged * speed;
            speed = (pumped - past * drag / Math.pow(Math.pow(past, 4) + Math.pow(drag, 4), 0.25)) / 12e-6;
        }
        return speed;
    }

    @ParameterizedTest
    @CsvSource({
        "one-hole, 2, 1, 0.030e-3, 0.050e-3",
        "one-hole, 5, 1, 0.030e-3, 0.050e-3",
        "one-hole, 10, 1, 0.030e-3, 0.050e-3",
        "three-holes, 5, 3, 0.030e-3, 0.050e-3",
        "three-holes, 10, 3, 0.030e-3, 0.050e-3",
        "worn, 5, 1, 0.060e-3, 0.090e-3",
        "worn, 10, 1, 0.060e-3, 0.090e-3"
    })
    void everyGaugeAgreesWithTheSumsByHand(String build, double bar, int open, double face, double tip)
            throws IOException {
        double line = bar * 1e5;
        Loss first = holes(0.0022, 1);
        Loss second = holes(0.0026, 1);
        Loss last = holes(0.0016, 1 + open);
        Loss row = new Loss(first.b + second.b + last.b, first.a + second.a + last.a);
        double q = row.flow(line);
        double past = tips(tip).flow(line);
        double slip = faces(face).flow(line) + past + mesh().flow(line);
        double speed = speed(q + slip, past, Math.PI * 0.040 * tip * 0.020 / 2);

        Transmission unit = RIG.unit(build);
        Solution state = new SteadySolver(unit.network())
                .solve(unit.conditions(unit.duties().get(0)).atSpeed(speed), Optional.empty())
                .state()
                .orElseThrow();
        assertEquals(line, state.pressure("line"), 1e-9 * line);
        assertEquals(line - first.drop(q), state.pressure("middle"), 1e-9 * line);
        assertEquals(last.drop(q), state.pressure("last"), 1e-9 * line);
        assertEquals(q, state.flow("first"), 1e-9 * q);
        assertEquals(q / (1 + open), state.flow("third"), 1e-9 * q);

        String printed = String.format(
                Locale.ROOT,
                "| `%s` | %.0f | %.2f | %.2f | %.3f | %.3f | %.1f |",
                build,
                bar,
                (line - first.drop(q)) / 1e5,
                last.drop(q) / 1e5,
                q * 6e4,
                slip * 6e4,
                speed * 60);
        assertTrue(Files.readString(Path.of("library/training-rig.md")).contains(printed), printed);
    }
}
