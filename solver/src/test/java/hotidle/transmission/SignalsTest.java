package hotidle.transmission;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.law.Poppet;
import hotidle.law.RatedPoint;
import hotidle.law.Slot;
import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.part.CheckValve;
import hotidle.part.Converter;
import hotidle.part.Fit;
import hotidle.part.Orifice;
import hotidle.part.Part;
import hotidle.part.Passage;
import hotidle.part.Selector;
import hotidle.part.Sensed;
import hotidle.part.SignalValve;
import hotidle.part.Solenoid;
import hotidle.part.SpoolSpring;
import hotidle.part.SpoolValve;
import hotidle.part.ThrottleSpring;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a regulator's signals carry by the way in which they are connected, the line at 8 bar and the solenoid asked for 3. */
class SignalsTest {

    private static final double BAR = 1e5;
    private static final double LINE = 8 * BAR;
    private static final Part HOLE = new Orifice(0.001, 0, 0.7, 1);
    private static final Part PASSAGE = new Passage(0.006, 0.1, 0, 0);
    private static final Solenoid SOLENOID = new Solenoid(0.001, 0.0014, 5e3, false);

    private static final Optional<Signals.Known> UNKNOWN = Optional.empty();
    private static final Optional<Signals.Known> OF_LINE = Optional.of(new Signals.Known(LINE, 1));

    private static Optional<Signals.Known> held(double pressure) {
        return Optional.of(new Signals.Known(pressure, 0));
    }

    /** A check valve that cracks at half a bar: preload over the seat's area. */
    private static Part check() {
        double seat = 0.01;
        double preload = 0.5 * BAR * Math.PI / 4 * seat * seat;
        return new CheckValve(new Poppet(seat, 1000, preload, 0.002, 0.65, Slot.annular(seat, 2e-6, 1e-3, 0)));
    }

    private static Placed place(Part part, String... nodes) {
        return Placed.of(part.getClass().getSimpleName() + String.join("-", nodes), part, "sump", Group.PLATE, nodes);
    }

    private static Placed pilot() {
        return Placed.of("solenoid", SOLENOID, "sump", Group.SOLENOIDS, "line", "pilot", "sump");
    }

    /** The pressure of node x. */
    private static Optional<Signals.Known> at(Control control, Placed... parts) {
        Set<String> names = new LinkedHashSet<>(List.of("line", "x"));
        Arrays.stream(parts).forEach(placed -> names.addAll(placed.nodes()));
        List<Node> nodes = names.stream()
                .map(name -> name.equals("sump") ? Node.held(name, 0) : Node.free(name))
                .toList();
        return new Signals(new Network(nodes, List.of(parts)), "line", control).at("x", LINE);
    }

    private static Optional<Signals.Known> x(Placed... parts) {
        return at(new Control("first", Map.of("solenoid", 3 * BAR)), parts);
    }

    private static void near(double pressure, double slope, Optional<Signals.Known> known) {
        assertEquals(pressure, known.orElseThrow().value(), 1e-9 * BAR);
        assertEquals(slope, known.orElseThrow().slope());
    }

    @Test
    void aPassageHandsTheLineOnAndADeadEndHasNoPressure() {
        assertEquals(OF_LINE, x(place(PASSAGE, "line", "a"), place(PASSAGE, "x", "a")));
        assertEquals(UNKNOWN, x(place(PASSAGE, "a", "x")));
        assertEquals(held(0), x(place(PASSAGE, "sump", "x")));
    }

    @Test
    void aSelectorHandsOnWhatItConnectsInTheRangeEngaged() {
        Placed selector = place(
                new Selector(
                        List.of("line", "out", "drain"),
                        List.of(
                                new Selector.Connection("drive", 0, 1, 0.006, Set.of("first")),
                                new Selector.Connection("drain", 1, 2, 0.006, Set.of("neutral")))),
                "line",
                "x",
                "sump");
        assertEquals(OF_LINE, x(selector));
        assertEquals(held(0), at(new Control("neutral", Map.of()), selector));
        assertEquals(UNKNOWN, at(new Control("reverse", Map.of()), selector));
    }

    @Test
    void aPilotValveMakesWhatItIsAskedForWhateverTheLine() {
        assertEquals(held(3 * BAR), x(pilot(), place(PASSAGE, "pilot", "x")));
        assertEquals(held(0), at(new Control("first", Map.of()), pilot(), place(PASSAGE, "pilot", "x")));
    }

    /** 20 N and half of 10 mm on 4 kN/m, over 80 mm²: 5 bar. */
    @Test
    void aThrottleValveMakesWhatItsSpringAsksForAtTheThrottleFelt() {
        SignalValve valve = new SignalValve(SOLENOID, new ThrottleSpring(80e-6, 20, 4000, 0.010, 0));
        Control half = new Control("first", Map.of(), new Sensed(0, 0.5, 0));
        near(5 * BAR, 0, at(half, place(valve, "line", "x", "sump")));
    }

    @Test
    void anOrificeHandsOnWhatItFeedsOnlyWhereNoOilGoesOn() {
        assertEquals(OF_LINE, x(place(HOLE, "line", "x")));
        assertEquals(UNKNOWN, x(place(HOLE, "line", "x"), place(HOLE, "x", "sump")));
        assertEquals(OF_LINE, x(place(HOLE, "line", "x"), place(HOLE, "x", "a"), place(HOLE, "a", "line")));
    }

    @Test
    void nothingIsKnownBehindAnOrificeFromWhichASpoolOrAConverterMayTakeOil() {
        SpoolValve.Opening land =
                new SpoolValve.Opening("out", 0, 1, Fit.same(0.01602, 0.016), 1, 1e-3, true, 0.5, 0.61);
        SpoolValve valve = new SpoolValve(
                List.of("in", "out"),
                List.of(land),
                List.of(new SpoolValve.Area(0, 1e-4, Set.of())),
                new SpoolSpring(5000, 40, 0, 3e-3, 0),
                OptionalDouble.empty());
        assertEquals(UNKNOWN, x(place(HOLE, "line", "x"), place(valve, "x", "sump")));
        assertEquals(OF_LINE, x(place(PASSAGE, "line", "x"), place(valve, "x", "sump")), "its feed is wide");
        Converter converter = new Converter(new RatedPoint(2e-4, 1e5, 5e-3, 790, 0.7), 0, Optional.empty());
        assertEquals(UNKNOWN, x(place(HOLE, "line", "x"), place(converter, "x", "sump")));
    }

    @Test
    void aCheckValveTakesWhatCracksItAndTheHigherOfTwoWins() {
        near(7.5 * BAR, 1, x(place(check(), "line", "x")));
        near(7.5 * BAR, 1, x(pilot(), place(check(), "pilot", "x"), place(check(), "line", "x")));
        near(2.5 * BAR, 0, x(pilot(), place(check(), "pilot", "x"), place(check(), "sump", "x")));
        assertEquals(UNKNOWN, x(place(check(), "x", "line")), "it lets nothing back");
    }

    @Test
    void aCircleOfCheckValvesFeedsNothing() {
        assertEquals(UNKNOWN, x(place(check(), "a", "x"), place(check(), "x", "a")));
    }

    @Test
    void aCheckValveThatPushesOnThroughAThrottleMakesAPressureThatIsNotKnown() {
        assertEquals(UNKNOWN, x(pilot(), place(HOLE, "pilot", "x"), place(check(), "line", "x")));
        assertEquals(OF_LINE, x(pilot(), place(HOLE, "line", "x"), place(check(), "pilot", "x")), "it stays shut");
    }
}
