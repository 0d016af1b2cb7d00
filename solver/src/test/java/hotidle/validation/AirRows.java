package hotidle.validation;

import hotidle.law.AirLeak;
import hotidle.law.AirOrifice;
import java.util.List;

/** Air through gaps and holes, as a bore is tested with it. */
final class AirRows {

    private static final String PART = "Air test";
    private static final double ROOM = 293.15;

    private AirRows() {}

    static List<Row> rows() {
        return List.of(
                Row.of(
                        PART,
                        "laminar conductance of a capillary, C·l/(d⁴·p)",
                        "air at 20 °C, l and d in cm, mean pressure in mbar",
                        "135",
                        "L/s",
                        capillary(),
                        Source.found(
                                "Conductance of long round tubes in laminar flow, textbooks and data sheets of vacuum"
                                        + " technology: C = 135·p·D⁴/L")),
                Row.of(
                        PART,
                        "choked flow, ṁ·√(R·T)/(A·p)",
                        "κ = 1.4",
                        "0.6847",
                        "",
                        AirOrifice.freeAir(1, 1, 1e5, 1e4, 1e5, ROOM) / (Math.PI / 4) / Math.sqrt(287.05 * ROOM),
                        Source.memory("F. M. White, Fluid Mechanics, §9.4, eq. 9.46b")),
                Row.of(
                        PART,
                        "viscosity of air",
                        "15 °C",
                        "1.7894e-5",
                        "Pa·s",
                        AirLeak.viscosity(288.15),
                        Source.memory("U.S. Standard Atmosphere, 1976, table 1 at sea level")));
    }

    /** Of 1 mm by 10 cm from 700 to 300 mbar. */
    private static double capillary() {
        double shape = Math.PI * 1e-12 / (128 * 0.1);
        double throughput = 1e5 * AirLeak.freeAir(shape, 7e4, 3e4, 1e5, ROOM);
        double litresPerSecond = 1000 * throughput / (7e4 - 3e4);
        return litresPerSecond * 10 / (Math.pow(0.1, 4) * 500);
    }
}
