package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.law.RatedPoint;
import java.util.List;

/** The words of a restriction that is known by one measured point of flow and pressure drop. */
final class RatedKeys {

    private RatedKeys() {}

    static List<Key> keys(String turbulentShare, String source) {
        return List.of(
                Key.quantity("flow", Dimension.FLOW, "flow in the measurement")
                        .allowed("1 mL/min", "1000 L/min")
                        .usual("0.5 L/min", "100 L/min"),
                Key.quantity("drop", Dimension.PRESSURE, "pressure drop at that flow")
                        .allowed("1 Pa", "100 bar")
                        .usual("0.01 bar", "15 bar"),
                Key.quantity("viscosity", Dimension.VISCOSITY, "dynamic viscosity of the oil in the measurement")
                        .allowed("0.1 mPa.s", "10000 mPa.s")
                        .usual("2 mPa.s", "300 mPa.s"),
                Key.quantity("density", Dimension.DENSITY, "density of the oil in the measurement")
                        .byDefault("820 kg/m3", "a mineral oil at 60 degC (common practice)")
                        .allowed("100 kg/m3", "20000 kg/m3")
                        .usual("700 kg/m3", "1000 kg/m3"),
                Key.quantity(
                                "turbulent-share",
                                Dimension.RATIO,
                                "share of the drop that grows with the square of flow, whatever the viscosity")
                        .byDefault(turbulentShare, source)
                        .allowed("0", "0.99"));
    }

    static RatedPoint point(Attributes rated) {
        return new RatedPoint(
                rated.number("flow"),
                rated.number("drop"),
                rated.number("viscosity"),
                rated.number("density"),
                rated.number("turbulent-share"));
    }

    static Key blocked(String what) {
        return Key.quantity("blocked", Dimension.RATIO, "share of " + what + " that is blocked")
                .byDefault("0 %", "clean (assumed)")
                .allowed("0 %", "99.9 %");
    }
}
