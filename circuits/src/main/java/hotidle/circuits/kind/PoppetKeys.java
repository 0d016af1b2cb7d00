package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Remedy;
import hotidle.law.Poppet;
import hotidle.law.Slot;
import java.util.List;

/** The words of a ball or poppet on a spring. */
final class PoppetKeys {

    private PoppetKeys() {}

    static List<Key> keys() {
        return List.of(
                Key.quantity("seat", Dimension.LENGTH, "diameter of the seat")
                        .allowed("0.1 mm", "200 mm")
                        .usual("2 mm", "30 mm"),
                Key.quantity("spring-rate", Dimension.SPRING_RATE, "rate of the spring")
                        .allowed("0.0001 N/mm", "10000 N/mm")
                        .usual("0.01 N/mm", "50 N/mm"),
                Key.quantity(
                                "preload",
                                Dimension.FORCE,
                                "force of the spring on its seat, in place of cracking-pressure")
                        .neededWhere("no cracking-pressure is given")
                        .allowed("0 N", "100000 N")
                        .usual("0 N", "1000 N"),
                Key.quantity(
                                "cracking-pressure",
                                Dimension.PRESSURE,
                                "pressure drop at which it opens, in place of preload")
                        .neededWhere("no preload is given")
                        .allowed("0 psi", "10000 psi")
                        .usual("0 psi", "600 psi"),
                Key.quantity("lift", Dimension.LENGTH, "largest lift")
                        .allowed("0.01 mm", "100 mm")
                        .usual("0.3 mm", "10 mm"),
                OrificeKind.dischargeCoefficient("0.7", "poppets have 0.6 to 0.75 (common practice)"),
                Key.size("leak-clearance", "radial gap that leaks as much as the shut seat does")
                        .byDefault("1 um", "a good seat (assumed)")
                        .allowed("0 um", "1 mm")
                        .usual("0 um", "60 um")
                        .foundBy("an air or vacuum test of the shut seat; blank where in doubt"),
                Key.quantity("leak-length", Dimension.LENGTH, "length of that gap along the flow")
                        .byDefault("0.5 mm", "the width of a seat (assumed)")
                        .allowed("0.01 mm", "20 mm"));
    }

    /** Notes a spring of which neither the force nor the pressure is given. */
    static void needs(Attributes given) {
        if (given.lacks("preload") && given.lacks("cracking-pressure")) {
            either(given);
        }
    }

    static void check(Attributes given) {
        if (given.has("preload") && given.has("cracking-pressure")) {
            either(given);
        }
    }

    private static void either(Attributes given) {
        given.error(
                ProblemCode.NOT_ONE_PRELOAD,
                "preload",
                "needs either preload or cracking-pressure",
                "the one follows from the other and the seat",
                Remedy.set("write ", "cracking-pressure", "5 psi").then(", for example"));
    }

    static Poppet make(Attributes given) {
        double seat = given.number("seat");
        double preload = given.numberIf("preload")
                .orElse(given.numberIf("cracking-pressure").orElse(0) * Math.PI * seat * seat / 4);
        return new Poppet(
                seat,
                given.number("spring-rate"),
                preload,
                given.number("lift"),
                given.number("cd"),
                Slot.annular(seat, given.number("leak-clearance"), given.number("leak-length"), 0));
    }

    static LawText physics() {
        return LawText.of(
                        "lift x = (Δp·A − F0)/k to its stop; q = Cd·π·d·x·√(2·Δp/ρ); shut it leaks as an annular gap",
                        "A. Esposito, Fluid Power with Applications, Ex. 8-1 (found); opening: H. E. Merritt, Hydraulic Control Systems, 1967, §3-4"
                                + " (from memory)")
                .checkedIn("Relief valve");
    }
}
