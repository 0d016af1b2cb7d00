package hotidle.validation;

import hotidle.law.Effectiveness;
import hotidle.law.RatedPoint;
import hotidle.oil.Oil;
import hotidle.oil.OilAt;
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
                        Sources.INCROPERA.at("ex. 11.1; the coefficient of 38.1 too")),
                Row.of(
                                PART,
                                "flow of a cooler loop at 48.3 °C",
                                "0.6 gpm at 18.6 °C, same supply; a usual fluid of 34.0 and 7.4 mm²/s at 40 and 100 °C",
                                "1.8",
                                "gpm",
                                0.6 * loop(48.3) / loop(18.6),
                                Source.unnamed("acceptance table of a cooler flow tester", Source.Read.MEMORY))
                        .withinShare(0.09, "9 %: the fluid is not stated and 0.6 gpm is rounded too"));
    }

    /** Flow through a laminar cooler at one supply pressure. */
    private static double loop(double celsius) {
        double kelvin = celsius + Oil.ZERO_CELSIUS;
        Oil.Walther line = Oil.Walther.through(
                new Oil.ViscosityPoint(40 + Oil.ZERO_CELSIUS, 34.0e-6),
                new Oil.ViscosityPoint(100 + Oil.ZERO_CELSIUS, 7.4e-6));
        OilAt oil = new Oil("usual", line, 865, 0.65, 0, 0, 0).at(kelvin, OilAt.STANDARD_ATMOSPHERE);
        return new RatedPoint(5e-5, 1e5, 0.03, 850, 0)
                .loss()
                .flow(3e5, oil.density(0), oil.viscosity())
                .q();
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
