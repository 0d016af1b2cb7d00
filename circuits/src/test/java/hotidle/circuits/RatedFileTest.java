package hotidle.circuits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.geartrain.Link;
import hotidle.geartrain.WedgeStrength;
import hotidle.study.Judgement;
import hotidle.transmission.Transmission;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One-way clutches by their rollers, the drive of the pump by its tangs, housings and pistons by a rated pressure. */
class RatedFileTest {

    private static final String ROLLERS =
            "wedges: 16, wedge-radius: 5 mm, wedge-length: 14 mm, race-diameter: 110 mm, strut-angle: 4 deg, contact-stress: 3000 MPa";
    private static final String TANGS =
            "    pump-tangs: {carries: pump, tangs: 2, tang-height: 3 mm, tang-length: 8 mm,"
                    + " tang-diameter: 48 mm, bearing-stress: 60 MPa}\n";

    private static String text(String oneWay, String ratings) {
        return Library.text("shuttle-five")
                .orElseThrow()
                .replace("rated-torque: 8000 N.m", oneWay)
                .replace("  ratings:\n", "  ratings:\n" + ratings)
                .replace("  line: {about: main line}", "  line: {about: main line, rated-pressure: 20 bar}");
    }

    private static ReadCircuit read(String oneWay, String ratings) {
        return CircuitReader.read(text(oneWay, ratings), "x.yaml");
    }

    private static Transmission unit() {
        ReadCircuit read = read(ROLLERS, TANGS);
        return read.circuit()
                .orElseThrow(() -> new AssertionError(read.problems().toString()))
                .unit("restored");
    }

    private static String first(String oneWay, String ratings) {
        ReadCircuit read = read(oneWay, ratings);
        assertTrue(read.circuit().isEmpty());
        return read.problems().get(0).text();
    }

    private static double rating(Transmission unit, String name) {
        return unit.gears().orElseThrow().links().stream()
                .filter(link -> link.name().equals(name))
                .mapToDouble(Link::rating)
                .findFirst()
                .orElseThrow();
    }

    private static Margin margin(Transmission unit, String duty, Margin.Kind kind, String part) {
        List<Margin> found = Judgement.of(unit, unit.duty(duty).orElseThrow(), List.of(30.0)).margins().stream()
                .filter(margin -> margin.kind() == kind && margin.part().equals(part))
                .toList();
        assertEquals(1, found.size(), kind + " " + part);
        return found.get(0);
    }

    @Test
    void rollersAndTangsBearWhatTheirFormulasSay() {
        Transmission unit = unit();
        WedgeStrength rollers = new WedgeStrength(16, 0.005, 0.014, 0.055, Math.toRadians(4), 3e9);
        assertEquals(rollers.rating(), rating(unit, "low-one-way"), 1e-6);
        assertEquals(2 * 60e6 * 0.003 * 0.008 * 0.024, rating(unit, "pump-tangs"), 1e-9);
    }

    /** Two meshes in the front set, three from the small sun to the ring, each with a loss of 1 %; the turbine has 1425 N·m. */
    @Test
    void theRollersAreJudgedByTheTurbinesTorqueAndTheTangsByThePumps() {
        Transmission unit = unit();
        Margin oneWay = margin(unit, "stall", Margin.Kind.RATED_TORQUE, "low-one-way");
        double front = 1 + 28.0 / 80 * 0.99 * 0.99;
        double share = front * (84.0 / 30 * 0.99 * 0.99 * 0.99 - 1);
        assertEquals(share * 1.9 * 750, oneWay.value().orElseThrow(), 1e-6);
        Margin tangs = margin(unit, "stall", Margin.Kind.RATED_TORQUE, "pump-tangs");
        double power = Judgement.of(unit, unit.duty("stall").orElseThrow(), List.of(30.0))
                .figures()
                .orElseThrow()
                .pumpPower();
        assertEquals(
                power / (2 * Math.PI * 1900 / 60),
                tangs.value().orElseThrow(),
                1e-9 * tangs.value().orElseThrow());
        assertTrue(tangs.value().orElseThrow() > 5 && tangs.value().orElseThrow() < 100, tangs.toString());
    }

    @Test
    void aHousingIsJudgedByThePressureThatItHolds() {
        Transmission unit = unit();
        Margin forward = margin(unit, "stall", Margin.Kind.RATED_PRESSURE, "line");
        assertEquals(20e5, forward.needed(), 1e-3);
        assertTrue(forward.headroom() > 0.5, forward.toString());
        Margin back = margin(unit, "reverse-stall", Margin.Kind.RATED_PRESSURE, "line");
        assertTrue(back.value().orElseThrow() > 1.4 * forward.value().orElseThrow(), "reverse stands higher");
    }

    @Test
    void whatIsMissingOfASizedLinkIsAskedFor() {
        assertTrue(first("wedges: 16, wedge-radius: 5 mm", "").contains("wedge-length"), first("wedges: 16", ""));
        assertTrue(
                first("rated-torque: 8000 N.m", "    bare: {carries: case}\n").contains("nothing says what it bears"));
        assertTrue(first("rated-torque: 8000 N.m", "    bare: {carries: case, tangs: 2}\n")
                .contains("tang-height"));
    }
}
