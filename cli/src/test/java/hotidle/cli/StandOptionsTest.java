package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.ReadyCircuits;
import hotidle.study.AirStand;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A stand as it is written: its calibration, its room, and the land on it. */
class StandOptionsTest {

    private static final double INCH_OF_MERCURY = 3386.389;
    private static final double AMBIENT = 101_325;

    private static StandOptions stand(String... words) {
        List<String> all = new ArrayList<>(List.of("--reading", "18inHg"));
        all.addAll(List.of(words));
        return Options.of(new StandOptions(), all.toArray(String[]::new));
    }

    private static String refused(String... words) {
        return assertThrows(WrongInputException.class, () -> stand(words).calibrated())
                .getMessage();
    }

    @Test
    void aVacuumIsReadBelowTheRoomsPressureAndAPressureAboveIt() {
        assertEquals(AMBIENT - 18 * INCH_OF_MERCURY, stand().absolute("--reading", "18inHg"), 1);
        assertEquals(AMBIENT + 30 * ReadyCircuits.PSI, stand("--pressure").absolute("--reading", "30psi"), 1);
    }

    @Test
    void noVacuumIsDeeperThanTheRoomsPressure() {
        String wrong = assertThrows(WrongInputException.class, () -> stand().absolute("--reading", "31inHg"))
                .getMessage();
        assertTrue(wrong.startsWith("hotidle: --reading 31inHg: a vacuum is 0 to 29.9 inHg"), wrong);
        assertThrows(WrongInputException.class, () -> stand().absolute("--reading", "-1inHg"));
        assertEquals(AMBIENT + 31 * INCH_OF_MERCURY, stand("--pressure").absolute("--reading", "31inHg"), 10);
        assertThrows(WrongInputException.class, () -> stand("--pressure").absolute("--reading", "21bar"));
    }

    @Test
    void aBlockedPortIsACalibrationPointOfNoHole() {
        StandOptions two = stand("--blocked", "25inHg", "--hole", "1mm=5inHg");
        assertEquals(2, two.holes());
        AirStand made = two.calibrated();
        assertEquals(0, made.freeAir(AMBIENT - 25 * INCH_OF_MERCURY).orElseThrow(), 1e-12);
        assertTrue(made.freeAir(AMBIENT - 10 * INCH_OF_MERCURY).orElseThrow() > 0);
        assertEquals(293.15, made.temperature(), 1e-9);
    }

    @Test
    void oneCalibrationPointIsTooFew() {
        String wrong = refused("--blocked", "25inHg");
        assertTrue(wrong.startsWith("hotidle: the stand's calibration: "), wrong);
        assertTrue(wrong.contains("mend: give --blocked and --hole"), wrong);
    }

    @Test
    void aHoleIsWrittenWithItsReading() {
        assertTrue(refused("--blocked", "25inHg", "--hole", "1mm").contains("has no reading"));
        assertTrue(refused("--blocked", "25inHg", "--hole", "0mm=5inHg").contains("above zero and below 50 mm"));
        assertTrue(refused("--blocked", "25inHg", "--hole", "60mm=5inHg").contains("above zero and below 50 mm"));
        assertTrue(refused("--blocked", "25inHg", "--hole", "1mm=5mm").startsWith("hotidle: --hole 5mm,"));
    }

    @Test
    void aRoomIsNeitherAnOvenNorAFreezer() {
        assertTrue(refused("--room", "120degC", "--blocked", "25inHg", "--hole", "1mm=5inHg")
                .contains("is no room's temperature"));
        assertTrue(refused("--room", "-90degC", "--blocked", "25inHg", "--hole", "1mm=5inHg")
                .contains("is no room's temperature"));
    }

    @Test
    void theLandOnTheStandIsFoundByNameAndOneThatIsNoneIsRefusedWithTheNearest() {
        Transmission unit = ReadyCircuits.read("shuttle-five").unit();
        assertEquals(
                "manual-valve-front", Lands.named("manual-valve-front", unit).name());
        String wrong = assertThrows(WrongInputException.class, () -> Lands.named("manual-valve-frnt", unit))
                .getMessage();
        assertTrue(wrong.contains("has no land 'manual-valve-frnt'") && wrong.contains("manual-valve-front"), wrong);
    }

    @Test
    void aPartThatIsNoLandCannotBeOnTheStand() {
        Transmission unit = ReadyCircuits.read("shuttle-five").unit();
        assertTrue(unit.network().part("regulator").isPresent(), "it is a part");
        assertThrows(WrongInputException.class, () -> Lands.named("regulator", unit));
    }
}
