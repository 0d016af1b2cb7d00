package hotidle.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.newton.SteadySolver;
import hotidle.part.Bushing;
import hotidle.part.PumpChamber;
import hotidle.part.PumpSlip;
import hotidle.result.Solution;
import hotidle.study.TenNodes;
import hotidle.transmission.Transmission;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What the figures of a state say of its line. */
class FiguresTest {

    private static final double BAR = 1e5;

    private static Figures held(double line, boolean offSeat) {
        return MadeFigures.of(OptionalDouble.of(10 * BAR), line, offSeat, 1, false);
    }

    @Test
    void aLineIsRegulatedOnlyAtItsSetPressureWithTheRegulatorOffItsSeat() {
        assertTrue(held(10 * BAR, true).regulated());
        assertFalse(held(9.9 * BAR, true).regulated());
        assertFalse(held(10 * BAR, false).regulated());
        assertEquals(Figures.Regulator.REGULATING, held(10 * BAR, true).regulator());
        assertEquals(
                Figures.Regulator.OFF_ITS_SEAT_BUT_LOW, held(9.9 * BAR, true).regulator());
        assertEquals(Figures.Regulator.ON_ITS_SEAT, held(7 * BAR, false).regulator());
    }

    @Test
    void aLineAQuarterAboveItsSetPressureIsFarAboveIt() {
        assertFalse(held(12.4 * BAR, true).farAboveSet());
        assertTrue(held(12.5 * BAR, true).farAboveSet());
        assertEquals(2.5 * BAR, held(12.5 * BAR, true).override().orElseThrow(), 1e-9 * BAR);
    }

    @Test
    void withoutACommandThereIsNoOverrideAndNothingIsHeld() {
        Figures free = MadeFigures.of(OptionalDouble.empty(), 10 * BAR, true, 1, false);
        assertEquals(Figures.Regulator.NOT_COMMANDED, free.regulator());
        assertEquals(OptionalDouble.empty(), free.override());
        assertFalse(free.regulated() || free.farAboveSet());
    }

    @Test
    void aLiftedReliefValveIsGraverThanWhatTheRegulatorDoes() {
        Figures lifted = MadeFigures.of(OptionalDouble.of(10 * BAR), 11 * BAR, true, 0.9, true);
        assertEquals(Figures.Regulator.RELIEF_OPEN, lifted.regulator());
        assertTrue(lifted.inletStarved());
    }

    /** Each shears oil of its own: the pinions' faces in their chamber, the drive gear's in the gap beside it, the hub in its film. */
    @Test
    void pumpPowerIsThatOfChambersOfFacesBesideThemAndOfTheFilmEachOnce() {
        Transmission unit = TenNodes.worn(1);
        Solution state = new SteadySolver(unit.network())
                .solve(unit.conditions(unit.duties().get(0)))
                .state()
                .orElseThrow();
        double face = state.measure("hub-face", PumpSlip.FACE_DRAG).orElseThrow();
        double film = state.measure("hub", Bushing.FRICTION_POWER).orElseThrow();
        double chambers = state.measure("primary", PumpChamber.POWER).orElseThrow()
                + state.measure("secondary", PumpChamber.POWER).orElseThrow();
        assertTrue(face > 1 && film > 1, face + " and " + film + " W");
        double power = Figures.of(unit, state).pumpPower();
        assertEquals(chambers + face + film, power, 1e-12 * power);
    }

    @Test
    void aHubWithoutAKnownFilmTouches() {
        assertTrue(new Figures.Hub(900, OptionalDouble.empty()).metalContact());
        assertFalse(new Figures.Hub(900, OptionalDouble.of(3e-6)).metalContact());
    }

    /** What the file says is stuck regulates nothing, wherever the line happens to stand. */
    @Test
    void aStuckRegulatorIsNeverCalledRegulating() {
        for (double line : new double[] {7, 10, 10.4, 20}) {
            Figures stuck = MadeFigures.of(OptionalDouble.of(10 * BAR), line * BAR, true, 1, false, true);
            assertEquals(Figures.Regulator.STUCK, stuck.regulator(), line + " bar");
        }
        Figures seated = MadeFigures.of(OptionalDouble.of(10 * BAR), 7 * BAR, false, 1, false, true);
        assertEquals(Figures.Regulator.STUCK, seated.regulator());
        Figures lifted = MadeFigures.of(OptionalDouble.of(10 * BAR), 20 * BAR, true, 1, true, true);
        assertEquals(Figures.Regulator.RELIEF_OPEN, lifted.regulator());
    }

    @Test
    void aRegulatorThatCannotLetGoOfTheOilIsNotCalledRegulating() {
        assertEquals(Figures.Regulator.REGULATING, held(12.4 * BAR, true).regulator());
        assertEquals(Figures.Regulator.FAR_ABOVE, held(12.5 * BAR, true).regulator());
    }

    /** Of 20 L/min that a pump takes in, filled by half, 5 slip back: 15 are delivered, and the band is of those. */
    @Test
    void theBandOfAStarvedPumpIsThatOfWhatItTakesIn() {
        Figures starved = MadeFigures.pumping(20 / 6e4, 5 / 6e4, 0.5);
        assertEquals(SlipBand.of(20 / 6e4, 5 / 6e4), starved.slipBand());
        assertEquals(5 / 6e4, starved.lost(), 1e-18, "no leaks outside it");
    }
}
