package hotidle.validation;

import hotidle.law.Effectiveness;
import hotidle.law.RatedPoint;
import hotidle.part.Cooler;
import java.util.List;
import java.util.Optional;

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
                        "0.429",
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
                                "transfer units, crossflow, both unmixed",
                                "gas from 300 to 100 °C by water of 1 kg/s, 4197 J/(kg·K), from 35 to 125 °C",
                                "2.1",
                                "",
                                units(4197.0 * 90, 4197.0 * 90 / 200, 265, Effectiveness.Arrangement.CROSSFLOW, 4197),
                                Sources.INCROPERA.at("ex. 11.3, read from a chart"))
                        .within(0.05, "half a unit of the printed digit"),
                Row.of(
                        PART,
                        "area, shell and tube",
                        "air 2 kg/s, 1009 J/(kg·K), from 20 to 80 °C by oil 3 kg/s, 2100, from 100 °C; 200 W/(m²·K)",
                        "20.09",
                        "m²",
                        Cooler.Heat.conductance(
                                        2 * 1009.0 * 60,
                                        3 * 2100.0,
                                        80,
                                        Effectiveness.Arrangement.SHELL_AND_TUBE,
                                        2 * 1009.0)
                                / 200,
                        Source.found("J. P. Holman, Heat Transfer, ex. 10-13")),
                Row.of(
                                PART,
                                "heat, parallel flow",
                                "10 and 20 kW/K from 150 and 40 °C, 30 m², 500 W/(m²·K)",
                                "655.6",
                                "kW",
                                new Cooler(
                                                        new RatedPoint(1e-3, 1e5, 0.01, 850, 0),
                                                        0,
                                                        0,
                                                        Optional.of(new Cooler.Heat(
                                                                15_000,
                                                                "hot",
                                                                "cold",
                                                                Effectiveness.Arrangement.PARALLEL,
                                                                20_000)))
                                                .given(10_000, 150, 40)
                                        / 1000,
                                Source.found("J. H. Lienhard IV and V, A Heat Transfer Textbook, ex. 3.5"))
                        .withinShare(0.001, "the book goes on with an effectiveness rounded to 0.596"));
    }

    /** NTU with which a cooler gives off a power [W]. */
    private static double units(
            double power, double capacity, double difference, Effectiveness.Arrangement arrangement, double rate) {
        return Cooler.Heat.conductance(power, capacity, difference, arrangement, rate) / Math.min(capacity, rate);
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
