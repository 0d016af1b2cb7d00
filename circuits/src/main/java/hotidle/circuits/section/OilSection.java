package hotidle.circuits.section;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.oil.Oil;
import hotidle.oil.ShearThinning;
import hotidle.oil.ThermalData;
import java.util.List;
import java.util.Optional;

/** Oils that a file has to choose from: their keys, and how one is read. */
public final class OilSection {

    private OilSection() {}

    static final Shape OIL = new Shape(
            "oil",
            List.of(
                    Key.text("about", "what it is"),
                    Key.of(
                            "viscosity",
                            new Type.ViscosityLine(),
                            "kinematic viscosity, from the data sheet; a cold point for cold oil"),
                    Key.quantity("density", Dimension.DENSITY, "density at 15 degC")
                            .allowed("101 kg/m3", "19999 kg/m3")
                            .usual("750 kg/m3", "1000 kg/m3"),
                    Key.quantity("density-slope", Dimension.DENSITY_SLOPE, "loss of density with temperature")
                            .byDefault("0.65 kg/m3/K", "mineral oil (common practice)")
                            .allowed("0 kg/m3/K", "4.9 kg/m3/K"),
                    Key.quantity(
                                    "pressure-viscosity",
                                    Dimension.PRESSURE_COEFFICIENT,
                                    "rise of viscosity with pressure")
                            .byDefault("15 1/GPa", "mineral oil, hot (assumed)")
                            .allowed("0 1/GPa", "900 1/GPa")
                            .usual("0 1/GPa", "35 1/GPa"),
                    Key.quantity("air", Dimension.RATIO, "entrained air, by volume, at ambient pressure")
                            .byDefault("1.5 %", "1 to 5 % (common practice)")
                            .allowed("0 %", "30 %")
                            .usual("0 %", "12 %"),
                    Key.quantity(
                                    "air-release",
                                    Dimension.PRESSURE,
                                    "absolute pressure at which air comes out and a pump no longer fills")
                            .byDefault("0.7 bar", "inlets are held above 70 kPa absolute, hot (common practice)")
                            .allowed("0 bar", "1.01 bar"),
                    Key.quantity(
                                    "specific-heat",
                                    Dimension.SPECIFIC_HEAT,
                                    "specific heat at 40 degC; left out: by density, (1.685 + 0.0034 t)/sqrt(s) kJ/kg/K, Cragoe 1929")
                            .optional()
                            .allowed("0.5 kJ/kg/K", "10 kJ/kg/K")
                            .usual("1.6 kJ/kg/K", "2.6 kJ/kg/K"),
                    Key.quantity(
                                    "conductivity",
                                    Dimension.CONDUCTIVITY,
                                    "thermal conductivity at 40 degC; left out: by density, 0.1172 (1 - 0.00054 t)/s W/m/K, Cragoe 1929")
                            .optional()
                            .allowed("0.01 W/m/K", "10 W/m/K")
                            .usual("0.1 W/m/K", "0.18 W/m/K"),
                    Key.quantity(
                                    "shear-loss",
                                    Dimension.RATIO,
                                    "share of its viscosity that a polymer-thickened oil loses for as long as it is sheared hardest,"
                                            + " counted in the film of a bushing")
                            .byDefault(
                                    "30 %",
                                    "with the shear-stress below, 14 % in the high-shear test at 150 degC: 0.25 of 1.75 mPa.s, which"
                                            + " a published patent claim allows a transmission fluid (assumed); 0 % for an oil without polymer")
                            .allowed("0 %", "95 %")
                            .usual("0 %", "60 %"),
                    Key.quantity(
                                    "shear-stress",
                                    Dimension.PRESSURE,
                                    "viscosity at rest times rate of shear at which half of the shear-loss is there")
                            .byDefault("3 kPa", "low polymers that keep grade in a gear box (assumed)")
                            .allowed("1 Pa", "100 MPa")
                            .usual("0.5 kPa", "50 kPa"),
                    Key.text("source", "where its numbers come from")));

    /** The oil of a name; empty where it is faulty. */
    public static Optional<Oil> oil(Attributes file, String name) {
        Attributes given = file.groups("oils").get(name);
        if (given == null || given.broken()) {
            return Optional.empty();
        }
        try {
            List<Oil.ViscosityPoint> points = given.rows("viscosity").stream()
                    .map(row -> new Oil.ViscosityPoint(row.x(), row.y()))
                    .toList();
            Oil.Walther line = points.size() == 1
                    ? Oil.Walther.constant(points.get(0).kinematicViscosity())
                    : Oil.Walther.through(points.toArray(Oil.ViscosityPoint[]::new));
            return Optional.of(new Oil(
                    name,
                    line,
                    given.number("density"),
                    given.number("density-slope"),
                    given.number("pressure-viscosity"),
                    given.number("air"),
                    given.number("air-release"),
                    new ThermalData(given.numberIf("specific-heat"), given.numberIf("conductivity")),
                    new ShearThinning(given.number("shear-loss"), given.number("shear-stress"))));
        } catch (IllegalArgumentException impossible) {
            given.error(
                    ProblemCode.NO_VISCOSITY_LINE,
                    "viscosity",
                    "has viscosities that make no line",
                    impossible.getMessage(),
                    "");
            return Optional.empty();
        }
    }
}
