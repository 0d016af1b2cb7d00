package hotidle.circuits.section;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.text.Dimension;
import hotidle.oil.Oil;
import hotidle.oil.OilAt;
import hotidle.transmission.HeatInputs;
import java.util.List;
import java.util.Optional;

/** What the heat of a unit depends on beside its oil circuit: keys, and how they are read. */
public final class HeatSection {

    private HeatSection() {}

    /** Specific heat [J/(kg·K)] of aluminium and steel: handbook values (from memory). */
    private static final double ALUMINIUM = 900;

    private static final double STEEL = 460;

    /** Temperature at which the oil's specific heat is taken for its mass [K]. */
    private static final double WARM = Oil.ZERO_CELSIUS + 90;

    static final Shape HEAT = new Shape(
            "heat",
            List.of(
                    Key.quantity("air", Dimension.TEMPERATURE, "air around the unit")
                            .allowed("-60 degC", "80 degC"),
                    Key.quantity("case-loss", Dimension.HEAT_LOSS, "what case and pan give to the air")
                            .byDefault("15 W/K", "some 0.8 m2 in moving air (assumed)")
                            .allowed("0 W/K", "1000 W/K")
                            .usual("5 W/K", "60 W/K"),
                    Key.quantity("housing-loss", Dimension.HEAT_LOSS, "what the converter's housing gives to the air")
                            .byDefault("4 W/K", "a closed housing (assumed)")
                            .allowed("0 W/K", "500 W/K")
                            .usual("0 W/K", "20 W/K"),
                    mass("oil", "oil in pan, valve body and gear set"),
                    mass("aluminium", "case, pump body and valve body that warm with it"),
                    mass("steel", "gear set, shafts and clutches that warm with it"),
                    mass("converter-oil", "oil in the converter"),
                    mass("converter-steel", "the converter that warms with it"),
                    Key.quantity("mesh-loss", Dimension.RATIO, "share of turbine power lost in meshes and bearings")
                            .byDefault("2 %", "1 to 2 % a mesh under load (common practice)")
                            .allowed("0 %", "30 %")
                            .usual("0 %", "8 %"),
                    Key.quantity(
                                    "churning",
                                    Dimension.TORQUE,
                                    "drag of turning parts in oil and of unloaded bearings, at a turbine speed of 2000 rpm; it rises with"
                                            + " the speed")
                            .byDefault("3 N.m", "assumed")
                            .allowed("0 N.m", "200 N.m")
                            .usual("0.5 N.m", "15 N.m"),
                    Key.quantity("oil-limit", Dimension.TEMPERATURE, "highest temperature of the sump")
                            .byDefault("135 degC", "275 degF: oil ages within hours (common practice)")
                            .allowed("60 degC", "220 degC"),
                    Key.quantity(
                                    "converter-limit",
                                    Dimension.TEMPERATURE,
                                    "highest temperature of oil from the converter")
                            .byDefault("175 degC", "about 350 degF: seals harden (common practice)")
                            .allowed("60 degC", "250 degC")));

    private static final double CHURNING_SPEED = 2000.0 / 60;

    private static Key mass(String name, String what) {
        return Key.quantity(name, Dimension.MASS, "mass of " + what)
                .allowed("0.01 kg", "2000 kg")
                .usual("0.5 kg", "300 kg");
    }

    /** The heat inputs of a file; empty where it has none or they are faulty. */
    public static Optional<HeatInputs> inputs(Attributes file, Optional<Oil> oil) {
        return file.group("heat").filter(heat -> !heat.broken()).flatMap(heat -> oil.map(known -> inputs(heat, known)));
    }

    private static HeatInputs inputs(Attributes heat, Oil oil) {
        double specific = oil.at(WARM, OilAt.STANDARD_ATMOSPHERE).specificHeat();
        return new HeatInputs(
                heat.number("air"),
                heat.number("case-loss"),
                heat.number("housing-loss"),
                heat.number("oil") * specific + heat.number("aluminium") * ALUMINIUM + heat.number("steel") * STEEL,
                heat.number("converter-oil") * specific + heat.number("converter-steel") * STEEL,
                heat.number("mesh-loss"),
                heat.number("churning") / CHURNING_SPEED,
                heat.number("oil-limit"),
                heat.number("converter-limit"));
    }
}
