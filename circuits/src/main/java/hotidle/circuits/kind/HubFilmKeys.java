package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.film.LeastFilm;
import java.util.List;

/** How thin the film of a bushing may get, and how much its hub leans: {@link LeastFilm}. */
final class HubFilmKeys {

    private HubFilmKeys() {}

    static List<Key> keys() {
        return List.of(
                roughness("hub-roughness", "the hub", "0.4 um", "a ground hub (assumed)"),
                roughness("bore-roughness", "the bore", "0.8 um", "a finish-bored bushing (assumed)"),
                Key.quantity(
                                "film-factor",
                                Dimension.RATIO,
                                "film ratio: least film allowed over the root mean square roughness of both surfaces together, Rq"
                                        + " being 1.25 Ra")
                        .byDefault("4", "from about 3 surfaces no longer touch (common practice); 4 assumed")
                        .allowed("0", "100")
                        .usual("1", "10"),
                Key.quantity(
                                "tilt",
                                Dimension.ANGLE,
                                "how much the hub leans against its bore: the film is judged at the edge to which it leans")
                        .byDefault("0.1 mm/m", "bores in line within 0.02 mm over 200 mm (assumed)")
                        .allowed("0 mm/m", "10 mm/m")
                        .usual("0.02 mm/m", "1 mm/m")
                        .measured("from the runout of the hub: that over twice the distance over which it was taken"),
                Key.quantity(
                                "runout",
                                Dimension.LENGTH,
                                "runout of the hub in place of the tilt, the full reading of the indicator in one turn")
                        .neededWhere("runout-over is given")
                        .allowed("0 mm", "5 mm")
                        .usual("0 mm", "0.5 mm")
                        .measured("dial indicator on the hub, converter bolted to the engine"),
                Key.quantity(
                                "runout-over",
                                Dimension.LENGTH,
                                "distance along the shaft over which the runout was taken")
                        .neededWhere("runout is given")
                        .allowed("1 mm", "2 m")
                        .usual("20 mm", "400 mm"));
    }

    private static Key roughness(String name, String of, String value, String source) {
        return Key.quantity(name, Dimension.LENGTH, "roughness Ra of " + of)
                .byDefault(value, source)
                .allowed("0 um", "100 um")
                .usual("0.05 um", "5 um")
                .measured("roughness tester or comparison plates");
    }

    static void needs(Attributes given) {
        if (given.has("runout") && given.lacks("runout-over")) {
            given.missing("runout-over", "a runout is a tilt only over a distance", "add the distance as measured");
        } else if (given.has("runout-over") && given.lacks("runout")) {
            given.missing("runout", "the distance says nothing by itself", "add the runout as measured");
        }
    }

    static void check(Attributes given) {
        if (given.stands("tilt") && given.has("runout")) {
            given.error(
                    ProblemCode.TILT_GIVEN_TWICE,
                    "tilt",
                    "has both a tilt and a runout",
                    "the one follows from the other and its distance",
                    "leave out one of them");
        }
    }

    /** How much the hub leans [rad]: an indicator reads twice what the hub is off its axis. */
    static double tilt(Attributes given) {
        return given.has("runout") && given.has("runout-over")
                ? given.number("runout") / (2 * given.number("runout-over"))
                : given.number("tilt");
    }

    /** Least film allowed by the roughness [m]. */
    static double permissible(Attributes given) {
        return LeastFilm.ofRoughness(
                given.number("film-factor"), given.number("hub-roughness"), given.number("bore-roughness"));
    }
}
