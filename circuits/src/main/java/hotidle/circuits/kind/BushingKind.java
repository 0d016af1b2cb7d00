package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Place;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Units;
import hotidle.circuits.text.Value;
import hotidle.network.Group;
import hotidle.network.Signal;
import hotidle.part.Bushing;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The words of a {@link Bushing}. */
final class BushingKind {

    private BushingKind() {}

    private static final Alone ALONE = Alone.asking(DutyKey.LOAD, DutyKey.SPEED)
            .without("load is all that it carries", "loaded-by", "weight", "weight-angle")
            .asked(BushingKind::asked)
            .adding(BushingKind::loaded);

    static final Kind KIND = Kind.of(
                    "bushing",
                    Bushing.class,
                    "A plain bushing that carries the hub: an oil film under load, and a leak along it.",
                    Group.HUB,
                    keys(),
                    given -> given.has("from") && given.has("to")
                            ? List.of(Kind.FlowPath.between(given.word("from"), given.word("to")))
                            : List.of(),
                    BushingKind::make,
                    physics())
            .example("bore=50.07mm hub=50mm length=17mm load=1500N speed=2000rpm")
            .turning()
            .role(Names.BUSHING)
            .passing(Passing.LEAK)
            .alone(ALONE)
            .needs(HubFilmKeys::needs)
            .rule(BushingKind::check)
            .drawn(GraphicSymbol.GAP);

    private static List<Key> keys() {
        return PumpKeys.all(List.of(
                List.of(
                        Key.node(
                                "from",
                                "the space whose oil leaks along it: behind the face of the gear or rotor on the hub"),
                        Key.node("to", "the sump"),
                        FitKeys.bore(),
                        Key.shaft("hub", "diameter of the hub")
                                .allowed("1 mm", "300 mm")
                                .usual("20 mm", "120 mm")
                                .measured("micrometer, where the bushing runs"),
                        AnnularGapKind.length(),
                        Key.of(
                                "loaded-by",
                                new Type.NameList(Names.PUMP_CHAMBER),
                                "pump chambers whose side load it carries"),
                        Key.quantity("weight", Dimension.FORCE, "share of the converter's weight that it carries")
                                .byDefault("80 N", "assumed")
                                .allowed("0 N", "10000 N")
                                .usual("0 N", "500 N"),
                        Key.quantity(
                                        "weight-angle",
                                        Dimension.ANGLE,
                                        "direction of the weight, counted as the side loads are")
                                .byDefault("270 deg", "down (assumed)")
                                .allowed("-360 deg", "360 deg")),
                HubFilmKeys.keys(),
                List.of(
                        Key.of(
                                "bushing-material",
                                new Type.Name(Names.BEARING_MATERIAL),
                                "what the hub runs on: its permissible load"),
                        Key.choice(
                                        "film-temperature",
                                        "balance where friction heats the film over its region's oil, region where the region"
                                                + " gives the film's own temperature",
                                        "balance",
                                        "region")
                                .byDefault(
                                        "balance", "what friction makes leaves with the oil, not the walls (assumed)"),
                        FitKeys.material(
                                "bore-material",
                                "the body around the bushing, which sets how the bore grows",
                                "aluminium"),
                        FitKeys.material("hub-material", "the hub", "steel"),
                        FitKeys.measuredAt())));
    }

    private static LawText physics() {
        return LawText.of(
                        "load = μ·n·L·D·(R/c)²/S(ε, L/D), S from Reynolds' equation with his cavitation condition; leak along it"
                                + " as an annular gap of that ε",
                        "A. Raimondi, J. Boyd, ASLE Trans. 1 (1958) (from memory) is met by our solution; leak: Merritt 1967 §2-5 (from memory)")
                .checkedIn("Bushing");
    }

    private static void check(Attributes given, Kind.Context around) {
        ValveFitsItsBore.check(given, "bore", "hub");
        HubFilmKeys.check(given);
        double ratio = given.number("length") / given.number("hub");
        if (ratio < Bushing.SHORTEST || ratio > Bushing.LONGEST) {
            given.error(
                    ProblemCode.BUSHING_OF_UNKNOWN_FILM,
                    "length",
                    String.format(Locale.ROOT, "is %.2f times as long as its hub is wide", ratio),
                    "the film is known from " + Bushing.SHORTEST + " to " + Bushing.LONGEST + " times",
                    "measure both again");
        }
        boolean loadsKnown = given.words("loaded-by").stream()
                .allMatch(name -> around.parts().containsKey(name)
                        && !around.parts().get(name).broken());
        if (!loadsKnown) {
            given.breakIt();
        }
    }

    private static Kind.MadePart make(Attributes given, Kind.Context around) {
        List<Bushing.SideLoad> loads = new ArrayList<>();
        List<Signal> signals = new ArrayList<>();
        for (String name : given.words("loaded-by")) {
            Attributes chamber = around.parts().get(name);
            double area = chamber.number("side-load-factor") * chamber.number("width") * chamber.number("tip-diameter");
            loads.add(new Bushing.SideLoad(area, chamber.number("angle")));
            signals.add(Signal.pressure(chamber.word("to")));
            signals.add(Signal.pressure(chamber.word("from")));
        }
        Bushing bushing = new Bushing(
                FitKeys.fit(given, around, "bore", "hub"),
                given.number("length"),
                loads,
                given.number("weight"),
                given.number("weight-angle"),
                HubFilmKeys.permissible(given),
                around.permissibleLoad().get(given.word("bushing-material")),
                HubFilmKeys.tilt(given),
                given.word("film-temperature").equals("balance"));
        return new Kind.MadePart(bushing, List.of(given.word("from"), given.word("to")), signals);
    }

    /** The load is written as the weight, whatever its size. */
    private static Key asked(Key key) {
        return switch (key.name()) {
            case "bushing-material" -> key.byDefault("babbitt", "a fitted bushing (assumed)");
            case "weight" -> Key.quantity("weight", Dimension.FORCE, "");
            default -> key;
        };
    }

    private static Value.Entries loaded(Value.Entries written) {
        Value.Entries unloaded = Alone.put(written, "loaded-by", new Value.Items(List.of(), Place.START));
        Value.Entries still = Alone.put(unloaded, "weight-angle", Alone.text("0 deg"));
        return Alone.put(still, "weight", Alone.text(loadOrNone(written)));
    }

    /** The load as written where it is a force; what is wrong with it is said under its own key. */
    private static String loadOrNone(Value.Entries all) {
        String load =
                all.entry("load").map(Value.Entry::value).orElse(null) instanceof Value.Text text ? text.text() : "";
        Units.Amount amount = Units.read(load, Dimension.FORCE);
        return amount.good() && amount.si() >= 0 ? load : "0 N";
    }
}
