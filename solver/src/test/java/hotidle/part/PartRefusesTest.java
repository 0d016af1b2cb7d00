package hotidle.part;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.law.Bow;
import hotidle.law.Effectiveness;
import hotidle.law.Poppet;
import hotidle.law.RatedPoint;
import hotidle.law.SeriesLoss;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A size that no part can have is refused by name, before it can make a wrong number. */
class PartRefusesTest {

    private static final Fit FIT = Fit.same(16.03e-3, 16e-3);
    private static final RatedPoint POINT = new RatedPoint(1e-4, 1e5, 0.01, 850, 0.3);

    private static Arguments wrong(String says, Executable made) {
        return Arguments.of(says, made);
    }

    static Stream<Arguments> gapsAndHoles() {
        return Stream.of(
                wrong("gap length", () -> new AnnularGap(FIT, 0, 0)),
                wrong("eccentricity", () -> new AnnularGap(FIT, 1e-3, 1.01)),
                wrong("gap width", () -> new FlatGap(0, 1e-5, 1e-5, 0, 1e-3)),
                wrong("gap height at the entry", () -> new FlatGap(0.1, 0, 1e-5, 0, 1e-3)),
                wrong("gap height at the exit", () -> new FlatGap(0.1, 1e-5, -1e-6, 0, 1e-3)),
                wrong("bow", () -> new FlatGap(0.1, 1e-5, 1e-5, -1e-6, 1e-3)),
                wrong("gap length", () -> new FlatGap(0.1, 1e-5, 1e-5, 0, 0)),
                wrong("not both", () -> new FlatGap(0.1, 1e-5, 2e-5, 1e-6, Bow.BETWEEN, 1e-3)),
                wrong("inner radius", () -> new FaceGap(0, 0.03, FIT, 0.5, 0.4, 2, 0)),
                wrong("outer radius", () -> new FaceGap(0.03, 0.03, FIT, 0.5, 0.4, 2, 0)),
                wrong("share of the clearance", () -> new FaceGap(0.02, 0.03, FIT, 0, 0.4, 2, 0)),
                wrong("sector", () -> new FaceGap(0.02, 0.03, FIT, 0.5, 1.1, 2, 0)),
                wrong("number of faces", () -> new FaceGap(0.02, 0.03, FIT, 0.5, 0.4, 5, 1)),
                wrong("an orifice of", () -> new Orifice(4.1e-3, 0, OptionalDouble.empty(), 1, 5e-3)),
                wrong("orifice diameter", () -> new Orifice(0, 0, OptionalDouble.empty(), 1)),
                wrong("orifice length", () -> new Orifice(1e-3, -1e-6, OptionalDouble.empty(), 1)),
                wrong("discharge coefficient", () -> new Orifice(1e-3, 0, 0.29, 1)),
                wrong("number of holes", () -> new Orifice(1e-3, 0, OptionalDouble.empty(), 0)),
                wrong("passage diameter", () -> new Passage(0, 0.1, 0, 0)),
                wrong("passage length", () -> new Passage(6e-3, 0, 0, 0)),
                wrong("passage roughness", () -> new Passage(6e-3, 0.1, 1.6e-3, 0)),
                wrong("loss coefficient", () -> new Passage(6e-3, 0.1, 0, -0.1)),
                wrong("ring width", () -> new SealingRing(FIT, FIT, 0, 1e-6, 1e-3, 1)),
                wrong("side gap", () -> new SealingRing(FIT, FIT, 2e-3, 0, 1e-3, 1)),
                wrong("contact height", () -> new SealingRing(FIT, FIT, 2e-3, 1e-6, 0, 1)),
                wrong("number of rings", () -> new SealingRing(FIT, FIT, 2e-3, 1e-6, 1e-3, 9)),
                wrong("outer size", () -> Fit.same(0, 16e-3)),
                wrong("inner size", () -> Fit.same(16e-3, 0)),
                wrong("expansion of the outer", () -> new Fit(16.03e-3, 16e-3, 1.1e-4, 0, 293)),
                wrong("expansion of the inner", () -> new Fit(16.03e-3, 16e-3, 0, -1e-6, 293)),
                wrong("measuring temperature", () -> new Fit(16.03e-3, 16e-3, 0, 0, 0)));
    }

    static Stream<Arguments> clutchesCoolersAndFilters() {
        Clutch.Piston piston = Clutch.Piston.plain(0.01, 500);
        Clutch.Seal seal = new Clutch.Seal(0.1, 1e-6, 1e-3, 0);
        Lining lining = new Lining(4, 0.06, 0.08, 0.12, 0.13, true);
        return Stream.of(
                wrong("capacity factor", () -> new Clutch(piston, lining, 0.09, seal)),
                wrong("clearance of the open pack", () -> new Clutch.OpenPack(0, Optional.empty())),
                wrong("piston area", () -> Clutch.Piston.plain(0, 500)),
                wrong("return force", () -> Clutch.Piston.plain(0.01, -1)),
                wrong("seal diameter", () -> new Clutch.Seal(0, 1e-6, 1e-3, 0)),
                wrong("seal gap", () -> new Clutch.Seal(0.1, 0, 1e-3, 0)),
                wrong("seal length", () -> new Clutch.Seal(0.1, 1e-6, 0, 0)),
                wrong("bleed hole", () -> new Clutch.Seal(0.1, 1e-6, 1e-3, -1e-4)),
                wrong("rubbing surfaces", () -> new Lining(0, 0.06, 0.08, 0.12, 0.13, true)),
                wrong("inner lining radius", () -> new Lining(4, 0, 0.08, 0.12, 0.13, true)),
                wrong("outer lining radius", () -> new Lining(4, 0.06, 0.06, 0.12, 0.13, true)),
                wrong("of friction", () -> new Lining(4, 0.06, 0.08, 0, 0.13, true)),
                wrong("of sliding friction", () -> new Lining(4, 0.06, 0.08, 0.12, 1.1, true)),
                wrong("radius of the drum", () -> new Band(0, 4, 1, true, 0.12, 0.12)),
                wrong("wrap of the band", () -> new Band(0.1, 0.09, 1, true, 0.12, 0.12)),
                wrong("servo's lever", () -> new Band(0.1, 4, 0.04, true, 0.12, 0.12)),
                wrong("of friction", () -> new Band(0.1, 4, 1, true, 0, 0.12)),
                wrong("of sliding friction", () -> new Band(0.1, 4, 1, true, 0.12, 0)),
                wrong("inner radius of the piston", () -> new OilRing(0, 0.09, 0)),
                wrong("outer radius of the piston", () -> new OilRing(0.05, 0.05, 0.04)),
                wrong("free surface", () -> new OilRing(0.05, 0.09, 0.051)),
                wrong("heat conductance", () -> new Cooler.Heat(0, "in", "air")),
                wrong(
                        "capacity rate of the medium",
                        () -> new Cooler.Heat(100, "in", "air", Effectiveness.Arrangement.PARALLEL, 0)),
                wrong("at most", () -> Cooler.Heat.conductance(0, 100, 30)),
                wrong("blocked share", () -> new Cooler(POINT, 1, 0)),
                wrong("flow needed", () -> new Cooler(POINT, 0, -1e-6)),
                wrong("blocked share", () -> new Filter(POINT, 1, 0)),
                wrong("rise", () -> new Filter(POINT, 0, 2.1)),
                wrong("charge pressure", () -> new Converter(POINT, -1, Optional.empty())),
                wrong("lube branch ends", () -> new LubeBranch(new Passage(6e-3, 0.1, 0, 0), 0)),
                wrong("flow needed", () -> new LubeBranch(new AnnularGap(FIT, 1e-3, 0), -1e-6)));
    }

    static Stream<Arguments> valves() {
        return Stream.of(
                wrong("spring rate", () -> new SpoolSpring(0, 90, 0, 5e-3, 0)),
                wrong("spool friction", () -> new SpoolSpring(6000, 90, 0, 5e-3, -1)),
                wrong("upper stop", () -> new SpoolSpring(6000, 90, 0, -1e-3, 0)),
                wrong("share of the circumference", () -> opening(0, 0, 0.7, 0, 0, 0)),
                wrong("eccentricity", () -> opening(1, 1.1, 0.7, 0, 0, 0)),
                wrong("discharge coefficient", () -> opening(1, 0, 1.1, 0, 0, 0)),
                wrong("compensation", () -> opening(1, 0, 0.7, 0, 0, 1.1)),
                wrong("number of holes", () -> opening(1, 0, 0.7, 101, 1e-3, 0)),
                wrong("hole diameter", () -> opening(1, 0, 0.7, 4, 0, 0)),
                wrong("feed diameter", () -> new Solenoid(0, 1e-3, 1e4, false)),
                wrong("exhaust diameter", () -> new Solenoid(1e-3, 0, 1e4, false)),
                wrong("droop band", () -> new Solenoid(1e-3, 1e-3, 0, false)),
                wrong("selector's passage", () -> new Selector.Connection("feed", 0, 1, 0, Set.of())),
                wrong("area of a throttle valve", () -> new ThrottleSpring(0, 10, 1000, 5e-3, 0)),
                wrong("spring rate of a throttle valve", () -> new ThrottleSpring(1e-4, 10, 0, 5e-3, 0)),
                wrong("travel of a throttle valve", () -> new ThrottleSpring(1e-4, 10, 1000, 0, 0)),
                wrong("area of a modulator valve", () -> new Diaphragm(0, 50, 2e-3, 1)),
                wrong("spring of a vacuum modulator", () -> new Diaphragm(1e-4, 0, 2e-3, 1)),
                wrong("modulator's diaphragm", () -> new Diaphragm(1e-4, 50, 0, 1)),
                wrong("share of the vacuum", () -> new Diaphragm(1e-4, 50, 2e-3, 1.1)),
                wrong("mass of a governor", () -> new FlyWeights.Weight(0, 0.03, OptionalDouble.empty())),
                wrong("radius of a governor", () -> new FlyWeights.Weight(0.05, 0, OptionalDouble.empty())),
                wrong("limit of a governor", () -> new FlyWeights.Weight(0.05, 0.03, OptionalDouble.of(0))),
                wrong("area of a governor valve", () -> new FlyWeights(0, List.of(), 0, 1)),
                wrong("spring of a governor", () -> new FlyWeights(1e-4, List.of(), -1, 1)),
                wrong("speed ratio", () -> new FlyWeights(1e-4, List.of(), 0, 0)),
                wrong("discharge", () -> new Poppet(8e-3, 4000, 20, 1e-3, 0.2, SeriesLoss.SHUT)));
    }

    private static SpoolValve.Opening opening(
            double share, double eccentricity, double discharge, int holes, double hole, double compensation) {
        return new SpoolValve.Opening(
                "bypass", 0, 1, FIT, share, 1e-3, true, eccentricity, discharge, holes, hole, compensation);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"gapsAndHoles", "clutchesCoolersAndFilters", "valves"})
    void aSizeThatCannotBeIsRefusedByName(String says, Executable made) {
        String message = assertThrows(IllegalArgumentException.class, made).getMessage();
        assertTrue(message.contains(says), message);
    }
}
