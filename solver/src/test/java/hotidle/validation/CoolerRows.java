package hotidle.validation;

import hotidle.law.Effectiveness;
import java.util.List;

/** Coolers: heat given off, flow against viscosity. */
final class CoolerRows {

    private static final String PART = "Cooler";

    private CoolerRows() {}

    static List<Row> rows() {
        return List.of(
                Row.of(
                        PART,
                        "effectiveness, counterflow",
                        "NTU 0.652362, capacity rates 1.2·4.18 and 2·4.31 kW/K",
                        "0.428571",
                        "",
                        Effectiveness.counterflow(0.652362, 1.2 * 4.18 / (2 * 4.31)),
                        Source.found("Y. A. Çengel, Heat and Mass Transfer, ex. 11-8")),
                Row.of(
                        PART,
                        "length of a double-pipe oil cooler",
                        "oil 0.1 kg/s, 2131 J/(kg·K), 100 to 60 °C; water 0.2 kg/s, 4178, from 30 °C; tube 25 mm; "
                                + "38.1 W/(m²·K)",
                        "65.9",
                        "m",
                        length(),
                        Sources.INCROPERA_READ.at("ex. 11.1")));
    }

    private static double length() {
        double least = 0.1 * 2131;
        double wanted = (100.0 - 60) / (100 - 30);
        double low = 0;
        double high = 10;
        for (int i = 0; i < 100; i++) {
            double middle = (low + high) / 2;
            if (Effectiveness.counterflow(middle, least / (0.2 * 4178)) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low * least / (38.1 * Math.PI * 0.025);
    }
}
