package hotidle.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.law.RatedPoint;
import hotidle.network.Conditions;
import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.oil.Oil;
import hotidle.part.AnnularGap;
import hotidle.part.Bushing;
import hotidle.part.Cooler;
import hotidle.part.Fit;
import hotidle.part.Part;
import hotidle.part.Setting;
import hotidle.result.Solution;
import hotidle.study.SinglePart;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Each way in which a state can lie outside what the laws were made for is told, and nothing else is. */
class DoubtTest {

    private static final double CELSIUS = 273.15;
    private static final Oil OIL = new Oil(
            "invented",
            Oil.Walther.through(
                    new Oil.ViscosityPoint(40 + CELSIUS, 34e-6), new Oil.ViscosityPoint(100 + CELSIUS, 7.4e-6)),
            855,
            0.65,
            0,
            0,
            6e4);

    private static List<Doubt.Why> why(Part part, double drop, double celsius, double speed) {
        return doubts(part, drop, celsius, speed).stream().map(Doubt::why).toList();
    }

    private static List<Doubt> doubts(Part part, double drop, double celsius, double speed) {
        Placed placed = Placed.of("it", part, "sump", Group.VALVE_BODY, "a", "b");
        Network network = new Network(List.of(Node.held("a", drop), Node.held("b", 0)), List.of(placed));
        Map<String, Double> temperatures =
                Map.of("sump", celsius + CELSIUS, "in", 120 + CELSIUS, "medium", 90 + CELSIUS);
        Conditions conditions = new Conditions(speed, "any", Setting.Lockup.OFF, OIL, 101_325, temperatures, Map.of());
        Solution state =
                SinglePart.run(network, conditions, "it", Map.of()).state().orElseThrow();
        return Doubt.of(network, state);
    }

    private static AnnularGap bore(double clearance) {
        return new AnnularGap(Fit.same(0.014 + 2 * clearance, 0.014), 0.008, 0.5);
    }

    @Test
    void aTightBoreInWarmOilLeavesNoDoubt() {
        assertEquals(List.of(), why(bore(20e-6), 10e5, 80, 0));
    }

    @Test
    void oilBeyondItsTwoPointsIsExtrapolated() {
        assertEquals(List.of(Doubt.Why.OIL_EXTRAPOLATED), why(bore(20e-6), 10e5, 120, 0));
        Doubt cold = doubts(bore(20e-6), 10e5, -20, 0).get(0);
        assertEquals(-20 + CELSIUS, cold.value());
        assertEquals(40 + CELSIUS, cold.limit());
        assertEquals(List.of(Doubt.Why.OIL_EXTRAPOLATED, Doubt.Why.OIL_TOO_THIN), why(bore(20e-6), 10e5, 220, 0));
    }

    /** 0.4 mm of radial clearance at 20 bar: about 40 m/s between walls 0.4 mm apart, in oil of 11 mm²/s. */
    @Test
    void aWideGapIsNoLongerLaminar() {
        assertEquals(List.of(Doubt.Why.GAP_NOT_LAMINAR), why(bore(0.4e-3), 20e5, 80, 0));
    }

    @Test
    void piecesOfTwoMetalsBindInTheCold() {
        AnnularGap tight = new AnnularGap(new Fit(0.014002, 0.014, 24e-6, 12e-6, 293.15), 0.008, 0.5);
        assertEquals(List.of(Doubt.Why.OIL_EXTRAPOLATED, Doubt.Why.PIECES_BIND), why(tight, 10e5, -20, 0));
    }

    /** A hub at 3000 rpm in oil of 3 Pa·s: μ·U²/(8·k) is some 100 K. */
    @Test
    void aColdFilmIsNotEven() {
        Bushing told = new Bushing(Fit.same(0.0501, 0.05), 0.017, List.of(), 300, -Math.PI / 2, 2e-6, 7e6, 0, false);
        assertEquals(List.of(Doubt.Why.OIL_EXTRAPOLATED, Doubt.Why.FILM_NOT_EVEN), why(told, 1e5, -20, 50));
    }

    /** 0.5 mm around a hub at 6000 rpm: ρ·U·c/μ is above 41.3·√(R/c). */
    @Test
    void aWideFilmAtSpeedHasVortices() {
        Bushing wide = new Bushing(Fit.same(0.051, 0.05), 0.017, List.of(), 30, -Math.PI / 2, 2e-6, 7e6, 0, false);
        assertEquals(List.of(Doubt.Why.FILM_NOT_LAMINAR), why(wide, 0.01e5, 100, 100));
    }

    @Test
    void aCoolerThatLeavesItsOilHotterThanGivenIsTold() {
        RatedPoint point = new RatedPoint(8e-3 / 60, 1e5, 8e-3, 820, 0.3);
        Cooler small = new Cooler(point, 0, 0, Optional.of(new Cooler.Heat(20, "in", "medium")));
        Doubt doubt = doubts(small, 1e5, 95, 0).get(0);
        assertEquals(Doubt.Why.OUTLET_NOT_AS_GIVEN, doubt.why());
        assertEquals(95 + CELSIUS, doubt.limit());
        Cooler large = new Cooler(point, 0, 0, Optional.of(new Cooler.Heat(500, "in", "medium")));
        assertEquals(List.of(), why(large, 1e5, 95, 0));
    }
}
