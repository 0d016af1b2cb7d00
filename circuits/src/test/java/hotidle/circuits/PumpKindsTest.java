package hotidle.circuits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.single.LibraryMaterials;
import hotidle.circuits.single.OnePart;
import hotidle.circuits.single.ReadPart;
import hotidle.circuits.text.Problem;
import hotidle.circuits.text.ProblemCode;
import hotidle.law.GearDisplacement;
import hotidle.part.Fit;
import hotidle.part.PumpChamber;
import hotidle.part.PumpSlip;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The three kinds of pump come out as the solver's one pump, each with its own displacement and gaps. */
class PumpKindsTest {

    private static final LibraryMaterials STOCK = LibraryMaterials.ofLibrary();

    private static final String[] GEARS = {"displacement=18cm3/rev", "width=12mm", "tip-diameter=84mm", "speed=1000rpm"
    };
    private static final String[] CRESCENT = {
        "module=3mm",
        "inner-teeth=23",
        "ring-teeth=31",
        "tip-diameter=75mm",
        "ring-tip-diameter=87mm",
        "ring-diameter=105mm",
        "width=12mm",
        "face-clearance=0.04mm",
        "face-inner-diameter=40mm",
        "face-outer-diameter=100mm",
        "inner-tip-clearance=0.10mm",
        "ring-tip-clearance=0.12mm",
        "body-clearance=0.08mm",
        "body-land=30mm",
        "tip-land=1.5mm",
        "sealing-teeth=3",
        "speed=1000rpm"
    };
    private static final String[] VANES = {
        "ring-diameter=78mm",
        "tip-diameter=68mm",
        "greatest-eccentricity=3mm",
        "least-eccentricity=0.5mm",
        "width=18mm",
        "control-area=6cm2",
        "spring-rate=40N/mm",
        "preload=200N",
        "face-clearance=0.03mm",
        "face-inner-diameter=40mm",
        "face-outer-diameter=78mm",
        "speed=1000rpm"
    };

    /** 2·π · 78 mm · 3 mm · 18 mm is 26.5 cm³ (M. G. Rabie, Fluid Power Engineering, 2009, p. 134, found). */
    @Test
    void aDisplacementThatIsNotThatOfItsGeometryIsTold() {
        ReadPart odd = OnePart.read(
                "vane-pump",
                Stream.concat(Stream.of(VANES), Stream.of("displacement=12cm3/rev"))
                        .toList(),
                STOCK);
        assertTrue(odd.part().isPresent(), odd.problems().toString());
        assertEquals(
                List.of(ProblemCode.DISPLACEMENT_AGAINST_GEOMETRY),
                odd.problems().stream().map(Problem::code).toList());
        ReadPart fits = OnePart.read(
                "vane-pump",
                Stream.concat(Stream.of(VANES), Stream.of("displacement=26cm3/rev"))
                        .toList(),
                STOCK);
        assertEquals(List.of(), fits.problems());
    }

    private static OnePart read(String kind, String[] words, String... more) {
        ReadPart read = OnePart.read(
                kind, Stream.concat(Stream.of(words), Stream.of(more)).toList(), STOCK);
        return read.part().orElseThrow(() -> new AssertionError(read.problems()));
    }

    private static ProblemCode fault(String kind, String[] words, String... more) {
        ReadPart read = OnePart.read(
                kind, Stream.concat(Stream.of(words), Stream.of(more)).toList(), STOCK);
        assertTrue(read.part().isEmpty());
        assertEquals(1, read.problems().size(), read.problems().toString());
        return read.problems().get(0).code();
    }

    private static PumpChamber pump(OnePart part) {
        return (PumpChamber) part.placed().part();
    }

    private static Fit pocket(double inner, double clearance) {
        return new Fit(inner + clearance, inner, 21.8e-6, 12e-6, 293.15);
    }

    private static Fit ring(double outer, double clearance) {
        return new Fit(outer, outer - clearance, 12e-6, 21.8e-6, 293.15);
    }

    @Test
    void aTestedSlipStandsInPlaceOfClearances() {
        PumpSlip slip = pump(read(
                        "pump-chamber",
                        GEARS,
                        "slip-flow=6L/min",
                        "slip-pressure=10bar",
                        "slip-viscosity=6mPa.s",
                        "slip-turbulent-share=25%",
                        "speed-slip=4%"))
                .slip();
        double turbulent = 0.25 * 0.1e-3;
        assertEquals(List.of(), slip.faces());
        assertEquals(List.of(), slip.tips());
        // the clearances are 5 % wider at that pressure than without any
        assertEquals(
                0.75 * 0.1e-3 * 0.006 / 1e6 / Math.pow(1.05, 3), slip.fitted().laminar(), 1e-24);
        assertEquals(0.05 / 1e6, slip.fitted().growth(), 1e-20);
        assertEquals(turbulent / (Math.PI / (Math.PI + 2) * Math.sqrt(2 * 1e6 / 820)), slip.orificeArea(), 1e-18);
        assertEquals(0.04, slip.lost().share());
    }

    @Test
    void aPumpNeedsItsClearancesOrATestedSlipAndNotBoth() {
        assertEquals(ProblemCode.NO_SLIP, fault("pump-chamber", GEARS));
        assertEquals(
                ProblemCode.SLIP_WITHOUT_TEST, fault("pump-chamber", GEARS, "slip-flow=6L/min", "slip-pressure=10bar"));
        assertEquals(
                ProblemCode.SLIP_GIVEN_TWICE,
                fault("vane-pump", VANES, "slip-flow=6L/min", "slip-pressure=10bar", "slip-viscosity=6mPa.s"));
    }

    @Test
    void aCrescentPumpLeaksAlongItsCrescentAndItsBody() {
        PumpChamber pump = pump(read("crescent-pump", CRESCENT));
        double width = 0.012;
        assertEquals(
                List.of(
                        new PumpSlip.Tip("inner-tip", pocket(0.075, 0.0002), 0.0015, 3, width, 0.075, Optional.empty()),
                        new PumpSlip.Tip(
                                "ring-tip",
                                ring(0.087, 0.00024),
                                0.0015,
                                3,
                                width,
                                0.087 * (23.0 / 31),
                                Optional.empty()),
                        new PumpSlip.Tip("body", pocket(0.105, 0.00016), 0.03, 1, 2 * width, 0, Optional.empty())),
                pump.slip().tips());
        assertEquals(GearDisplacement.internal(0.003, 23, 31, 0.075, 0.087, width), pump.displacement());
    }

    /** Steel outside, aluminium inside: 120 µm less the difference of what 87 mm of both grow by in 85 K, 36 µm of radius. */
    @Test
    void theRingGearsTipsCloseOnTheCrescentAsThePumpWarms() {
        Fit tips = pump(read("crescent-pump", CRESCENT)).fits().get("diametral ring-tip clearance");
        assertEquals(0.00012, tips.gap(293.15) / 2, 1e-12);
        double ring = 0.087 * 12e-6 * 85 / 2;
        double crescent = (0.087 - 0.00024) * 21.8e-6 * 85 / 2;
        assertEquals(0.00012 + ring - crescent, tips.gap(378.15) / 2, 1e-12);
    }

    /** 84 and 45 mm of aluminium over steel grow by 9.8e-6 1/K·90 K: 37 and 20 µm of radius. */
    @Test
    void theClearanceOfEachGearGrowsByItsOwnRadius() {
        PumpChamber pump = pump(read(
                "pump-chamber",
                GEARS,
                "driven-tip-diameter=45mm",
                "face-clearance=0.04mm",
                "face-inner-diameter=20mm",
                "face-outer-diameter=32mm",
                "tip-clearance=0.08mm",
                "tip-land=1.5mm",
                "sealing-teeth=4"));
        double drive = pump.fits().get("diametral tip clearance").gap(383.15) / 2;
        double driven = pump.fits().get("diametral driven-tip clearance").gap(383.15) / 2;
        double gap = 80e-6 * (1 + 21.8e-6 * 90);
        assertEquals(gap + 0.042 * 9.8e-6 * 90, drive, 1e-12);
        assertEquals(gap + 0.0225 * 9.8e-6 * 90, driven, 1e-12);
    }

    @Test
    void aRingGearHasMoreTeethThanTheGearInIt() {
        String[] wrong = CRESCENT.clone();
        wrong[2] = "ring-teeth=20";
        assertEquals(ProblemCode.TEETH_EXCHANGED, fault("crescent-pump", wrong));
    }

    @Test
    void aVanePumpHasASlideThatItsControlPressureMoves() {
        OnePart part = read("vane-pump", VANES);
        assertEquals(List.of("from", "to", "control"), part.ports());
        assertEquals(
                new PumpChamber.Slide(6e-4, 4e4, 200, 0.0005, 0.003),
                pump(part).slide().orElseThrow());
        assertEquals(2 * Math.PI * 0.078 * 0.003 * 0.018, pump(part).displacement(), 1e-18);
    }

    @Test
    void aRotorStaysClearOfItsRingAndTheSlideHasAWayToMove() {
        String[] wide = VANES.clone();
        wide[2] = "greatest-eccentricity=6mm";
        assertEquals(ProblemCode.ROTOR_IN_RING, fault("vane-pump", wide));
        String[] still = VANES.clone();
        still[3] = "least-eccentricity=3mm";
        assertEquals(ProblemCode.SLIDE_WITHOUT_WAY, fault("vane-pump", still));
    }
}
