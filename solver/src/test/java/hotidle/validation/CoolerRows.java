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
                        .withinShare(0.001, "the book goes on with an effectiveness rounded to 0.596"),
                Row.of(
                                PART,
                                "effectiveness, one shell, eight tube passes",
                                HOT_OIL,
                                "0.47",
                                "",
                                Effectiveness.Arrangement.SHELL_AND_TUBE.effectiveness(
                                        hotOil().conductance() / 639, 639.0 / 836),
                                Sources.CENGEL_MEMORY.at(MULTIPASS))
                        .within(0.015, "3 %: the book reads a chart"),
                Row.of(
                                PART,
                                "oil out of it",
                                HOT_OIL,
                                "88.8",
                                "°C",
                                150 - cooler(hotOil()).given(639, 150, 20) / 639,
                                Sources.CENGEL_MEMORY.at(MULTIPASS))
                        .within(2, "3 % of the 61 K that the chart's effectiveness gives"),
                Row.of(
                                PART,
                                "air out, crossflow, both unmixed",
                                "air 10 kg/s, 1010 J/(kg·K), 125 °C; water 7 kg/s, 4180, 20 °C; 250 m² of 220 W/(m²·K)",
                                "26",
                                "°C",
                                125
                                        - cooler(new Cooler.Heat(
                                                                250 * 220.0,
                                                                "hot",
                                                                "cold",
                                                                Effectiveness.Arrangement.CROSSFLOW,
                                                                7 * 4180.0))
                                                        .given(10_100, 125, 20)
                                                / 10_100,
                                Source.found("S. K. Som, Introduction to Heat Transfer, ex. 10.7"))
                        .within(1, "the book takes the usual approximation of the series and rounds the heat to 1 MW"),
                crossflow(1, "0.476"),
                crossflow(2, "0.614"),
                Row.of(
                                PART,
                                "area, counterflow",
                                DOUBLE_PIPE,
                                "15.82",
                                "m²",
                                area(Effectiveness.Arrangement.COUNTERFLOW),
                                Sources.HOLMAN.at("ex. 10-4"))
                        .withinShare(0.002, "the book rounds the mean difference of temperatures to 37.44 K"),
                Row.of(
                                PART,
                                "area, one shell, two tube passes",
                                DOUBLE_PIPE,
                                "19.53",
                                "m²",
                                area(Effectiveness.Arrangement.SHELL_AND_TUBE),
                                Sources.HOLMAN.at("ex. 10-5"))
                        .withinShare(0.02, "the book reads a correction of 0.81 from a chart"),
                Row.of(
                                PART,
                                "correction of the mean difference, one shell, two or more tube passes",
                                "kerosene 390 to 200 °F, crude oil 100 to 170 °F",
                                "0.905",
                                "",
                                correction(),
                                Source.found("D. Q. Kern, Process Heat Transfer, ex. 7.3"))
                        .disagreeing(0.014, "the book reads a chart, 1.5 % above the formula that it draws"),
                Row.of(
                                PART,
                                "transfer units of a condenser",
                                "125.4 °F all along it, sea water from 60 to 110 °F",
                                "1.4",
                                "",
                                units(50, 1, 65.4, Effectiveness.Arrangement.SHELL_AND_TUBE, Double.POSITIVE_INFINITY),
                                Source.found(
                                        "F. Kreith, R. M. Manglik, M. S. Bohn, Principles of Heat Transfer, 7th ed., ex. 8.4"))
                        .within(0.05, "half a unit of the printed digit, which the book reads from a chart"));
    }

    private static final String MULTIPASS = "cooling of hot oil by water in a multipass heat exchanger, chapter 11";
    private static final String HOT_OIL =
            "oil 0.3 kg/s, 2130 J/(kg·K), 150 °C; water 0.2 kg/s, 4180, 20 °C; 1.76 m² of 310 W/(m²·K)";
    private static final String DOUBLE_PIPE =
            "water 68 kg/min, 4180 J/(kg·K), 35 to 75 °C; oil 1900 J/(kg·K), 110 to 75 °C; 320 W/(m²·K)";

    private static Cooler.Heat hotOil() {
        return new Cooler.Heat(1.76 * 310, "hot", "cold", Effectiveness.Arrangement.SHELL_AND_TUBE, 836);
    }

    private static Cooler cooler(Cooler.Heat heat) {
        return new Cooler(new RatedPoint(1e-3, 1e5, 0.01, 850, 0), 0, 0, Optional.of(heat));
    }

    private static Row crossflow(double units, String published) {
        return Row.of(
                PART,
                "effectiveness, crossflow, both unmixed",
                "NTU " + units + ", equal capacity rates",
                published,
                "",
                Effectiveness.Arrangement.CROSSFLOW.effectiveness(units, 1),
                Source.memory(
                        "W. M. Kays, A. L. London, Compact Heat Exchangers, table of effectiveness, crossflow, unmixed"));
    }

    private static double area(Effectiveness.Arrangement arrangement) {
        double water = 68.0 / 60 * 4180;
        double oil = water * 40 / 35;
        return Cooler.Heat.conductance(oil * 35, oil, 110.0 - 35, arrangement, water) / 320;
    }

    /** What a counterflow cooler would need over what this one needs. */
    private static double correction() {
        double counter = units(190, 1, 290, Effectiveness.Arrangement.COUNTERFLOW, 190.0 / 70);
        return counter / units(190, 1, 290, Effectiveness.Arrangement.SHELL_AND_TUBE, 190.0 / 70);
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
