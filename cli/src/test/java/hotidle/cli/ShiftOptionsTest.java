package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.ReadyCircuits;
import hotidle.study.ShiftHeat;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class ShiftOptionsTest {

    private static final Transmission UNIT = ReadyCircuits.read("crescent-four").unit();

    @Test
    void withoutATorqueTheHighestOfTheEngineIsTaken() {
        ShiftHeat.AskedShift asked =
                Options.of(new ShiftOptions(), "--inertia", "0.6kg.m2").of(UNIT);
        assertEquals(
                UNIT.duties().stream()
                        .mapToDouble(DutyPoint::engineTorque)
                        .max()
                        .orElseThrow(),
                asked.torque());
        assertEquals(2800 / 60.0, asked.speed(), 1e-9);
        assertEquals(2e-3, asked.plate(), 1e-12);
        assertEquals(0.6, asked.inertia(), 1e-12);
    }

    @Test
    void whatIsGivenIsTakenInPlaceOfTheUsual() {
        ShiftOptions given = Options.of(
                new ShiftOptions(),
                "--inertia",
                "14lb.ft2",
                "--torque",
                "300N.m",
                "--speed",
                "3000rpm",
                "--plate",
                "1.8mm",
                "--lockup-time",
                "0.5s");
        ShiftHeat.AskedShift asked = given.of(UNIT);
        assertEquals(300, asked.torque(), 1e-9);
        assertEquals(50, asked.speed(), 1e-9);
        assertEquals(1.8e-3, asked.plate(), 1e-12);
        assertEquals(14 * 0.45359237 * 0.3048 * 0.3048, asked.inertia(), 1e-9);
        assertEquals(0.5, given.lockupTime(), 1e-12);
    }

    @Test
    void withoutAnInertiaNothingCanBeAsked() {
        assertThrows(CommandLine.MissingParameterException.class, () -> Options.of(new ShiftOptions()));
    }

    @Test
    void whatIsNotAboveZeroIsRefusedByItsOption() {
        for (List<String> wrong : List.of(
                List.of("--inertia", "0kg.m2"),
                List.of("--inertia", "1kg.m2", "--speed", "0rpm"),
                List.of("--inertia", "1kg.m2", "--torque", "-5N.m"),
                List.of("--inertia", "1kg.m2", "--plate", "0mm"))) {
            ShiftOptions options = Options.of(new ShiftOptions(), wrong.toArray(String[]::new));
            String message = assertThrows(WrongInputException.class, () -> options.of(UNIT))
                    .getMessage();
            String option = wrong.get(wrong.size() - 2);
            assertEquals("hotidle: " + option + " " + wrong.get(wrong.size() - 1) + ": must be above zero", message);
        }
        ShiftOptions instant = Options.of(new ShiftOptions(), "--inertia", "1kg.m2", "--lockup-time", "0s");
        assertTrue(assertThrows(WrongInputException.class, instant::lockupTime)
                .getMessage()
                .startsWith("hotidle: --lockup-time 0s"));
    }
}
