package hotidle.heat;

import hotidle.network.Node;
import hotidle.oil.Oil;
import java.util.List;
import java.util.Map;

/** What the laws of heat say of oil that is throttled or mixed, for the validation sheet. */
public final class WarmedOil {

    private WarmedOil() {}

    /** Temperature [K] of oil that was throttled from a gauge pressure [Pa] to none. */
    public static double throttled(Oil oil, double temperature, double pressure) {
        Enthalpy enthalpy = new Enthalpy(oil, temperature);
        return enthalpy.temperature(enthalpy.at(temperature, pressure), 0);
    }

    /** Enthalpy where two streams of masses and enthalpies meet, in the unit of both. */
    public static double mixed(double mass, double enthalpy, double otherMass, double otherEnthalpy) {
        return Mixing.of(
                        List.of(Node.free("tee")),
                        List.of(new Mixing.Leg("one", "tee", mass, 0), new Mixing.Leg("other", "tee", otherMass, 0)),
                        Map.of("one", enthalpy, "other", otherEnthalpy),
                        0)
                .get("tee");
    }
}
