package hotidle.validation;

import static hotidle.validation.Trade.INCH;
import static hotidle.validation.Trade.PSI;

import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.oil.Oil;
import hotidle.part.Fit;
import hotidle.part.SpoolSpring;
import hotidle.part.SpoolValve;
import hotidle.transmission.Command;
import hotidle.transmission.Control;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Spool valves: flow force and shims. */
final class SpoolRows {

    private static final String PART = "Spool valve";
    private static final Source MANUAL = Source.found("US Army TM 5-3805-263-14&P-2, relief valve group");
    private static final Source OTHER = Source.found("US Army TM 5-3825-226-24, pressure control valve");

    private SpoolRows() {}

    static List<Row> rows() {
        return List.of(
                Row.of(
                        PART,
                        "flow force over w·x·Δp",
                        "x 0.5 mm, 2 MPa, sharp edge, next to no clearance",
                        "0.43",
                        "",
                        flowForce(),
                        Sources.MERRITT.at("eq. 5-93")),
                shim("main relief", 33.7, 0.036, "19.6", MANUAL),
                shim("main relief", 33.7, 0.010, "5.4", MANUAL),
                shim("modulating reducing valve", 12.50, 0.036, "7.25", MANUAL)
                        .within(0.01, "the 12.50 psi that fixes the spring is rounded too"),
                shim("modulating reducing valve", 12.50, 0.010, "2.01", MANUAL)
                        .within(0.01, "the 12.50 psi that fixes the spring is rounded too"),
                shim("modulation relief", 10.7, 0.036, "6.2", OTHER),
                shim("modulation relief", 10.7, 0.010, "1.7", OTHER));
    }

    private static SpoolValve spool(double diameter, double rate, double preload) {
        return new SpoolValve(
                List.of("line", "tank", "boost"),
                List.of(new SpoolValve.Opening(
                        "bypass", 0, 1, Fit.same(diameter + 1e-9, diameter), 1, 0.5e-3, true, 0, 0.61)),
                List.of(new SpoolValve.Area(0, Math.PI * diameter * diameter / 4, Set.of())),
                new SpoolSpring(rate, preload, 0, 5e-3, 0),
                OptionalDouble.empty());
    }

    /** The edge lies at 0.5 mm, so the opening at 1.0 mm is 0.5 mm. */
    private static double flowForce() {
        double width = 12e-3;
        double force = Trade.measure(
                spool(width / Math.PI, 1000, 10),
                Trade.setting(0, Oil.fixed(850, 1e-9)),
                SpoolValve.FLOW_FORCE,
                2e6,
                0,
                0,
                1.0e-3);
        return force / (width * 0.5e-3 * 2e6);
    }

    /** The thickest shim, 0.062 in, fixes the spring rate per area; the thinner ones are predicted. */
    private static Row shim(String valve, double thickest, double thickness, String published, Source source) {
        double diameter = 15.9e-3;
        double rate = thickest * PSI / (0.062 * INCH) * Math.PI * diameter * diameter / 4;
        double bare = setPressure(spool(diameter, rate, 50));
        double shimmed = setPressure(spool(diameter, rate, 50 + rate * thickness * INCH));
        return Row.of(
                PART,
                "rise of the set pressure by a shim, " + valve,
                "shim " + thickness + " in; 0.062 in raises it by " + thickest + " psi",
                published,
                "psi",
                (shimmed - bare) / PSI,
                source);
    }

    private static double setPressure(SpoolValve valve) {
        Network network = new Network(
                List.of(Node.free("line"), Node.held("sump", 0), Node.free("boost")),
                List.of(Placed.of("regulator", valve, "sump", Group.VALVE_BODY, "line", "sump", "boost")));
        return new Command("line", "regulator", "bypass", Optional.empty())
                .setPressure(network, new Control("any", Map.of()));
    }
}
