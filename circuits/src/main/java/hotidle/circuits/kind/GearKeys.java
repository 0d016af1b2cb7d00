package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.network.Signal;
import hotidle.part.Bushing;
import hotidle.part.Fit;
import hotidle.part.PumpChamber;
import hotidle.part.PumpInlet;
import hotidle.part.PumpSlip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** What external and internal gear pumps have in common: displacement from the teeth, gaps at the tips. */
final class GearKeys {

    private GearKeys() {}

    static Key module() {
        return Key.quantity("module", Dimension.LENGTH, "module of the gears: pitch diameter over teeth")
                .neededWhere("no displacement is given")
                .allowed("0.2 mm", "20 mm")
                .usual("1.5 mm", "5 mm");
    }

    /**
     * What a pair of gears displaces for a turn of the first [m³].
     */
    interface Displacement {
        double of(double module, int teeth, int otherTeeth, double tip, double otherTip, double width);
    }

    /**
     * What the gears displace [m³/rev]; empty where they are not all given.
     *
     * @param teeth      key of the teeth of the gear that the engine drives
     * @param otherTeeth key of those of the other
     * @param otherTip   key of the other's tip diameter
     */
    static OptionalDouble geometry(
            Attributes given, String teeth, String otherTeeth, String otherTip, Displacement ofGears) {
        boolean all = List.of("module", teeth, otherTeeth, otherTip).stream().allMatch(given::has);
        return all
                ? OptionalDouble.of(ofGears.of(
                        given.number("module"),
                        given.count(teeth),
                        given.count(otherTeeth),
                        given.number("tip-diameter"),
                        given.number(otherTip),
                        given.number("width")))
                : OptionalDouble.empty();
    }

    /** Speed of the other gear over that of the one which the engine drives; empty where the teeth are not given. */
    static OptionalDouble ratio(Attributes given, String teeth, String otherTeeth) {
        return given.has(teeth) && given.has(otherTeeth)
                ? OptionalDouble.of((double) given.count(teeth) / given.count(otherTeeth))
                : OptionalDouble.empty();
    }

    /**
     * The gap along a gear's tips.
     *
     * @param fit     of the gear, diametral
     * @param width   of the gap [m]
     * @param surface diameter of the gear times its speed over the engine's [m]
     * @param hub     bushing and hub that carry the gear; empty where they do not, or are not named
     */
    static PumpSlip.Tip tip(Attributes given, String name, Fit fit, double width, double surface, Optional<Fit> hub) {
        double land = given.number("tip-land");
        return new PumpSlip.Tip(name, fit, land, given.count("sealing-teeth"), width, surface, hub);
    }

    /** The bushing that lets the gear on the engine's hub move in its pocket. */
    static Key hub() {
        return Key.of(
                        "hub",
                        new Type.Name(Names.BUSHING),
                        "the bushing of the hub that the gear sits on: as it wears, the gear moves in its pocket; left out: it"
                                + " stays in the middle")
                .optional();
    }

    /** That bushing and its hub; empty where none is named. */
    static Optional<Fit> hub(Attributes given, Kind.Context around) {
        return given.wordIf("hub").map(name -> FitKeys.fit(around.parts().get(name), around, "bore", "hub"));
    }

    /** What such a pump reads: how far it fills, and how its hub stands. */
    private static List<Signal> signals(Attributes given, PumpSlip slip) {
        List<Signal> signals = new ArrayList<>(List.of(Signal.state(given.word("inlet"), PumpInlet.FILLING)));
        if (slip.tips().stream().anyMatch(tip -> tip.hub().isPresent())) {
            signals.add(Signal.state(given.word("hub"), Bushing.OFF_CENTRE));
        }
        return signals;
    }

    /** Notes a hub that cannot be read. */
    static void check(Attributes given, Kind.Context around) {
        Attributes hub = given.wordIf("hub").map(around.parts()::get).orElse(null);
        if (given.has("hub") && (hub == null || hub.broken())) {
            given.breakIt();
        }
    }

    /**
     * The pump, with the slip of its gaps or of a test.
     *
     * @param turns mean speed of the faces over the engine's
     * @param tips  asked for only where no test is given
     */
    static Kind.MadePart make(
            Attributes given,
            Kind.Context around,
            double displacement,
            double turns,
            Supplier<List<PumpSlip.Tip>> tips) {
        PumpSlip slip = given.has("slip-flow")
                ? PumpKeys.slip(given, List.of(), List.of())
                : PumpKeys.slip(given, List.of(PumpKeys.face(given, around, turns)), tips.get());
        PumpChamber pump = new PumpChamber(displacement, slip, PumpKeys.drag(given), Optional.empty());
        return new Kind.MadePart(pump, List.of(given.word("from"), given.word("to")), signals(given, slip));
    }
}
