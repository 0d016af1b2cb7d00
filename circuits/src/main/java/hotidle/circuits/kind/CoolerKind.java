package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.law.Effectiveness;
import hotidle.network.Group;
import hotidle.oil.OilAt;
import hotidle.part.Cooler;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The words of a {@link Cooler}. */
final class CoolerKind {

    private CoolerKind() {}

    private static final String HEATED =
            "another of heat, heat-flow, heat-oil, heat-medium, inlet-region, medium-region is given";

    private static final Alone ALONE = Alone.AS_IN_A_CIRCUIT.without(
            "its outlet temperature follows from the temperatures of a duty, in a circuit",
            "heat",
            "heat-flow",
            "heat-oil",
            "heat-medium",
            "inlet-region",
            "medium-region");

    static final Kind KIND = Kind.through(
                    "cooler",
                    Cooler.class,
                    "A cooler with its hoses, known by one measured point of flow and drop.",
                    Group.COOLER,
                    "where the oil comes from",
                    "where it goes",
                    Stream.concat(
                                    RatedKeys.keys(
                                            "0", "cooler loops are laminar at workshop temperature (common practice)")
                                            .stream(),
                                    Stream.of(
                                            RatedKeys.blocked("the tubes"),
                                            Key.quantity("needs", Dimension.FLOW, "flow that it should have")
                                                    .byDefault(
                                                            "2 L/min",
                                                            "accepted at hot idle in neutral: 1 L in 30 s (common practice)")
                                                    .allowed("0 L/min", "200 L/min")
                                                    .usual("0.5 L/min", "20 L/min"),
                                            Key.quantity(
                                                            "heat",
                                                            Dimension.POWER,
                                                            "heat that it gives off in a test of its own")
                                                    .neededWhere(HEATED)
                                                    .allowed("1 W", "1000 kW")
                                                    .usual("1 kW", "40 kW"),
                                            Key.quantity("heat-flow", Dimension.FLOW, "flow of oil in that test")
                                                    .neededWhere(HEATED)
                                                    .allowed("1 mL/min", "1000 L/min")
                                                    .usual("1 L/min", "40 L/min"),
                                            temperature(
                                                    "heat-oil", "temperature of the oil that came in, in that test"),
                                            temperature(
                                                    "heat-medium", "temperature of the cooling medium, in that test"),
                                            region("inlet-region", "whose temperature the oil has that comes in"),
                                            region("medium-region", "whose temperature the cooling medium has"),
                                            Key.choice(
                                                            "arrangement",
                                                            "how oil and medium pass each other",
                                                            "counterflow",
                                                            "parallel",
                                                            "crossflow",
                                                            "shell-and-tube")
                                                    .byDefault("counterflow", "assumed"),
                                            Key.choice("medium", "what cools", "water-glycol", "air")
                                                    .byDefault("water-glycol", "in the radiator's tank (assumed)"),
                                            Key.quantity(
                                                            "medium-flow",
                                                            Dimension.FLOW,
                                                            "flow of the medium; left out: it keeps its temperature")
                                                    .optional()
                                                    .allowed("10 mL/min", "1000000 L/min")))
                            .toList(),
                    (given, around) -> new Cooler(
                            RatedKeys.point(given), given.number("blocked"), given.number("needs"), heat(given)),
                    physics())
            .passing(Passing.BY_STATE)
            .example("flow=8L/min drop=1bar viscosity=8mPa.s --drop 20psi")
            .alone(ALONE)
            .rule((given, around) -> check(given))
            .drawn(GraphicSymbol.COOLER);

    /** Half water, half glycol at 90 °C, 1020 kg/m³ of 3.6 kJ/(kg·K): 3.7 MJ/(m³·K) (from memory). */
    private static final double WATER_GLYCOL = 3.7e6;

    /** Air at 40 °C, 1.13 kg/m³ of 1.007 kJ/(kg·K) (from memory). */
    private static final double AIR = 1138;

    private static final List<String> HEAT =
            List.of("heat", "heat-flow", "heat-oil", "heat-medium", "inlet-region", "medium-region");

    private static Key temperature(String name, String meaning) {
        return Key.quantity(name, Dimension.TEMPERATURE, meaning)
                .neededWhere(HEATED)
                .allowed("-60 degC", "250 degC")
                .usual("0 degC", "150 degC");
    }

    private static Key region(String name, String meaning) {
        return Key.of(name, new Type.Name(Names.REGION), meaning).neededWhere(HEATED);
    }

    private static void check(Attributes given) {
        List<String> written = HEAT.stream().filter(given::has).toList();
        if (!written.isEmpty() && written.size() < HEAT.size()) {
            given.error(
                    ProblemCode.HEAT_HALF_GIVEN,
                    written.get(0),
                    "has only some of " + String.join(", ", HEAT),
                    "the outlet temperature follows from all of them together",
                    "write all six, or none");
        } else if (!written.isEmpty()) {
            double most = Math.min(capacity(given), rate(given))
                    * arrangement(given)
                            .effectiveness(
                                    Cooler.Heat.MOST_UNITS,
                                    Double.isInfinite(rate(given))
                                            ? 0
                                            : Math.min(capacity(given), rate(given))
                                                    / Math.max(capacity(given), rate(given)))
                    * (given.number("heat-oil") - given.number("heat-medium"));
            if (!(given.number("heat") < most)) {
                given.error(
                        ProblemCode.HEAT_TOO_GREAT,
                        "heat",
                        String.format(
                                Locale.ROOT,
                                "gives off %.1f kW where its oil could give off %.1f kW at most",
                                given.number("heat") / 1000,
                                Math.max(most, 0) / 1000),
                        "the oil cannot leave colder than the cooling medium",
                        "check heat, heat-flow, heat-oil and heat-medium");
            }
        }
    }

    /** ρ·cp·flow in the test [W/K]. */
    private static double capacity(Attributes given) {
        double density = given.number("density");
        OilAt oil = new OilAt(
                given.number("heat-oil"), density, 0.01, 0, 0, OilAt.STANDARD_ATMOSPHERE, 0, Optional.empty());
        return density * oil.specificHeat() * given.number("heat-flow");
    }

    private static Optional<Cooler.Heat> heat(Attributes given) {
        if (!given.has("heat")) {
            return Optional.empty();
        }
        double difference = given.number("heat-oil") - given.number("heat-medium");
        return Optional.of(new Cooler.Heat(
                Cooler.Heat.conductance(
                        given.number("heat"), capacity(given), difference, arrangement(given), rate(given)),
                given.word("inlet-region"),
                given.word("medium-region"),
                arrangement(given),
                rate(given)));
    }

    private static Effectiveness.Arrangement arrangement(Attributes given) {
        return Effectiveness.Arrangement.valueOf(
                given.word("arrangement").toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    /** Capacity rate of the medium [W/K]. */
    private static double rate(Attributes given) {
        double heat = given.word("medium").equals("air") ? AIR : WATER_GLYCOL;
        return given.has("medium-flow") ? heat * given.number("medium-flow") : Double.POSITIVE_INFINITY;
    }

    private static LawText physics() {
        return LawText.of(
                        "Δp = a·μ·q + b·ρ·q², a and b from one measured point; heat = (1 − exp(−UA/C))·C·(T_in − T_medium), C = ρ·cp·q",
                        LawText.RATED
                                + "; heat: F. P. Incropera et al., Fundamentals of Heat and Mass Transfer, §11.4 (from memory)")
                .checkedIn("Cooler");
    }
}
