package hotidle.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.law.Bow;
import hotidle.law.Channel;
import hotidle.law.Poppet;
import hotidle.law.RectangularDuct;
import hotidle.law.SeriesLoss;
import hotidle.law.SharpEdge;
import hotidle.law.ShortTube;
import hotidle.law.Slot;
import hotidle.oil.Oil;
import hotidle.oil.OilAt;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

/** Parts whose flow, wetted walls or report can be worked out by hand. */
class PartByHandTest {

    private static final double DROP = 4e5;
    private static final OilAt THICK = Oil.fixed(850, 0.2);

    private static double flow(Part part, OilAt oil, double drop) {
        return StreamSupport.stream(
                        part.law(new Setting(20, "any", Setting.Lockup.OFF, oil, 0))
                                .streams(Reading.of(part.form(), drop, 0))
                                .spliterator(),
                        false)
                .mapToDouble(Stream::volume)
                .sum();
    }

    /** A feeler of 35 µm midway between bolts and 4 µm at them leaks as 25 µm everywhere; thick oil has no head to lose. */
    @Test
    void aFaceBowedBetweenItsBoltsLeaksAsTheMeanOfTheCube() {
        double cube = Bow.BETWEEN.cube(4e-6, 31e-6);
        double expected = 0.1 * cube * DROP / (12 * 0.2 * 8e-3);
        assertEquals(
                expected, flow(new FlatGap(0.1, 4e-6, 4e-6, 31e-6, Bow.BETWEEN, 8e-3), THICK, DROP), 1e-6 * expected);
        double even = 0.1 * Math.pow(20e-6, 3) * DROP / (12 * 0.2 * 8e-3);
        assertEquals(even, flow(new FlatGap(0.1, 20e-6, 20e-6, 0, 8e-3), THICK, DROP), 1e-6 * even);
    }

    /** Thin oil through a bowed gap of no length to speak of: the head of the mean section alone. */
    @Test
    void theHeadOfABowedGapIsThatOfItsMeanSection() {
        double mean = 4e-6 + 31e-6 * 8 / 15;
        double expected = 0.1 * mean * Math.sqrt(2 * DROP / (Slot.LOSS * 850));
        double thin = flow(new FlatGap(0.1, 4e-6, 4e-6, 31e-6, Bow.BETWEEN, 1e-9), Oil.fixed(850, 1e-6), DROP);
        assertEquals(expected, thin, 1e-3 * expected);
    }

    /** Half a diameter long it flows full, less and it is an edge; a coefficient that is given replaces both. */
    @Test
    void aHoleIsATubeFromHalfItsDiameterOn() {
        OilAt oil = Oil.fixed(850, 8e-3);
        double tube = new ShortTube(2e-3, 1e-3).flow(DROP, 850, 8e-3).q();
        double edge = new SharpEdge(2e-3, 0.99e-3, 0).flow(DROP, 850, 8e-3).q();
        assertEquals(tube, flow(new Orifice(2e-3, 1e-3, OptionalDouble.empty(), 1), oil, DROP), 1e-15);
        assertEquals(edge, flow(new Orifice(2e-3, 0.99e-3, OptionalDouble.empty(), 1), oil, DROP), 1e-15);
        assertEquals(3 * edge, flow(new Orifice(2e-3, 0.99e-3, OptionalDouble.empty(), 3), oil, DROP), 1e-15);
        double channel = new ShortTube(2e-3, 1e-3, 0.5).flow(DROP, 850, 8e-3).q();
        assertEquals(channel, flow(new Orifice(2e-3, 1e-3, OptionalDouble.empty(), 1, 4e-3), oil, DROP), 1e-15);
        assertEquals(2e-3 / SharpEdge.WIDEST, new Orifice(2e-3, 0, OptionalDouble.empty(), 1, 2.5e-3).upstream());
        assertEquals(
                Channel.Geometry.PIPE,
                new Orifice(2e-3, 1e-3, OptionalDouble.empty(), 2)
                        .channels()
                        .get("")
                        .form());
        assertEquals(
                Channel.Geometry.HOLE,
                new Orifice(2e-3, 1e-3, OptionalDouble.of(0.7), 2)
                        .channels()
                        .get("")
                        .form());
        assertEquals(
                4e-3 * Math.PI, new Orifice(2e-3, 0, 0.7, 2).channels().get("").perimeter(), 1e-15);
    }

    /** Cd 0.8 of a hole of half its channel: q = Cd·A·√(2·Δp/ρ)/√(1 − β⁴), thin oil. */
    @Test
    void aGivenCoefficientCountsTheSpeedOfApproach() {
        double area = Math.PI * 1e-6;
        double expected = 0.8 * area * Math.sqrt(2 * DROP / 850) / Math.sqrt(1 - 1.0 / 16);
        Part hole = new Orifice(2e-3, 0, OptionalDouble.of(0.8), 1, 4e-3);
        assertEquals(expected, flow(hole, Oil.fixed(850, 1e-8), DROP), 1e-5 * expected);
    }

    /** Warm, the joint is a duct of end gap by clearance beside the way under the ring and past its side, whose seal has shrunk. */
    @Test
    void aSealingRingLeaksAtItsJointAndPastItsSide() {
        Fit bore = new Fit(50.3e-3, 50e-3, 24e-6, 12e-6, 293.15);
        Fit joint = new Fit(Math.PI * 50.3e-3, Math.PI * 50.3e-3 - 0.3e-3, 24e-6, 12e-6, 293.15);
        SealingRing rings = new SealingRing(bore, joint, 2e-3, 1e-6, 1.2e-3, 3);
        OilAt oil = new OilAt(373.15, 810, 0.2, 0, 0, 101_325, -3e4, Optional.empty());
        double clearance = bore.gap(373.15) / 2;
        double grown = clearance - 0.15e-3;
        double ends = RectangularDuct.loss(joint.gap(373.15), clearance, 2e-3)
                .flow(DROP, 810, 0.2)
                .q();
        double side = Slot.annular(bore.outer() - 2 * clearance, clearance, 2e-3, 0)
                .then(Slot.flat(Math.PI * bore.outer(), 1e-6, 1.2e-3 - grown))
                .flow(DROP, 810, 0.2)
                .q();
        double expected = 3 * (ends + side);
        assertEquals(expected, flow(rings, oil, DROP), 1e-12 * expected);
        assertEquals(
                List.of("clearance beside the ring", "end gap"),
                List.copyOf(rings.fits().keySet()));
    }

    private static List<Measure.Reported> face(double turns) {
        FaceGap gap = new FaceGap(0.0625, 0.1, Fit.same(0.0205, 0.02), 1, 0.3, 1, turns);
        return gap.law(new Setting(5, "any", Setting.Lockup.OFF, Oil.fixed(850, 0.0837295), 0))
                .measures(Reading.of(gap.form(), 0, 0));
    }

    /** A collar at 300 rpm, 0.5 mm from its face: 22 W; C. Schaschke, Worked Examples for Engineers, ex. 3.20 (found). */
    @Test
    void aFaceThatTurnsShearsItsOilAllRoundWhateverItsSectorUnderPressure() {
        assertEquals(22, face(1).get(0).value(), 0.01);
        assertEquals(88, face(2).get(0).value(), 0.04, "twice the speed, four times the power");
        assertEquals(List.of(), face(0), "a face that stands");
    }

    @Test
    void aFaceAtAnotherSpeedShearsBySpeedSquared() {
        FaceGap gap = new FaceGap(0.0625, 0.1, Fit.same(0.0205, 0.02), 1, 0.3, 1, 1);
        Part.Law law = gap.law(new Setting(5, "any", Setting.Lockup.OFF, Oil.fixed(850, 0.0837295), 0));
        Reading at = Reading.of(gap.form(), DROP, 0);
        assertEquals(
                9 * law.measures(at).get(0).value(),
                law.atSpeed(15).measures(at).get(0).value(),
                1e-9);
        assertEquals(
                law.streams(at).iterator().next(),
                law.atSpeed(15).streams(at).iterator().next());
    }

    /** What each part wets across the flow. */
    @Test
    void eachPartWetsItsWalls() {
        Fit fit = Fit.same(16.03e-3, 16e-3);
        Poppet poppet = new Poppet(8e-3, 4000, 20, 1e-3, 0.7, SeriesLoss.SHUT);
        Map<Part, Double> walls = Map.of(
                new AnnularGap(fit, 1e-3, 0), 2 * Math.PI * 16e-3,
                new FlatGap(0.1, 1e-5, 1e-5, 0, 1e-3), 0.2,
                new FaceGap(0.02, 0.03, fit, 0.5, 0.4, 2, 1), 2 * 2 * Math.PI * 0.02 * 0.4 * 2,
                new Passage(6e-3, 0.1, 0, 0), Math.PI * 6e-3,
                new CheckValve(poppet), 2 * Math.PI * 8e-3,
                new ReliefValve(poppet), 2 * Math.PI * 8e-3,
                new LubeBranch(new AnnularGap(fit, 1e-3, 0), 0), 2 * Math.PI * 16e-3);
        walls.forEach((part, wets) -> assertEquals(wets, part.channels().get("").perimeter(), 1e-12, part.toString()));
        Map<String, Channel> solenoid = new Solenoid(1e-3, 2e-3, 1e4, false).channels();
        assertEquals(Math.PI * 1e-3, solenoid.get("feed").perimeter(), 1e-15);
        assertEquals(Math.PI * 2e-3, solenoid.get("exhaust").perimeter(), 1e-15);
        Clutch bled = clutch(0.8e-3);
        assertEquals(2 * Math.PI * 0.1, bled.channels().get("seal").perimeter(), 1e-12);
        assertEquals(Math.PI * 0.8e-3, bled.channels().get("bleed").perimeter(), 1e-15);
        assertEquals(Map.of("seal", Channel.slot(Math.PI * 0.1)), clutch(0).channels());
    }

    private static Clutch clutch(double bleed) {
        Lining lining = new Lining(4, 0.06, 0.08, 0.12, 0.13, true);
        return new Clutch(Clutch.Piston.plain(0.01, 500), lining, 1.2, new Clutch.Seal(0.1, 1e-6, 1e-3, bleed));
    }

    /** 500 N on 100 cm² yield at half a bar; at 5 bar 4500 N clamp. */
    @Test
    void aClutchReportsWhatItsPistonDoes() {
        Clutch clutch = clutch(0);
        assertEquals(0.5e5, clutch.yields(), 1e-9);
        Part.Law law = clutch.law(new Setting(20, "any", Setting.Lockup.OFF, THICK, 0));
        List<Measure.Reported> reported = law.measures(Reading.of(clutch.form(), 5e5, 0));
        assertEquals(
                clutch.measures(),
                reported.stream().map(Measure.Reported::measure).toList());
        assertEquals(4500, reported.get(0).value(), 1e-9);
        assertEquals(0.12 * 4 * 0.07 * 4500, reported.get(1).value(), 1e-9);
        assertEquals(0.13 * 4 * 0.07 * 4500, reported.get(2).value(), 1e-9);
    }

    @Test
    void aValveReportsItsLiftAndASolenoidItsOpening() {
        Poppet poppet = new Poppet(8e-3, 4000, 20, 1e-3, 0.7, SeriesLoss.SHUT);
        for (Part valve : List.of(new CheckValve(poppet), new ReliefValve(poppet))) {
            double half = (poppet.cracking() + poppet.fullLiftPressure()) / 2;
            List<Measure.Reported> reported = valve.law(new Setting(20, "any", Setting.Lockup.OFF, THICK, 0))
                    .measures(Reading.of(valve.form(), half, 0));
            assertEquals(0.5e-3, reported.get(0).value(), 1e-12);
            assertEquals(valve.measures(), List.of(reported.get(0).measure()));
        }
        Solenoid solenoid = new Solenoid(1e-3, 2e-3, 1e4, false);
        List<Measure.Reported> reported = solenoid.law(new Setting(20, "any", Setting.Lockup.OFF, THICK, 3e5))
                .measures(Reading.of(solenoid.form(), 5e5, 3e5, 0, 0.4));
        assertEquals(3e5, reported.get(0).value());
        assertEquals(0.4, reported.get(1).value());
        assertTrue(solenoid.measures().size() == 2);
    }
}
