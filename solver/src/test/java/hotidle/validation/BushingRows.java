package hotidle.validation;

import static hotidle.validation.Trade.HORSEPOWER;
import static hotidle.validation.Trade.INCH;
import static hotidle.validation.Trade.MINUTE;
import static hotidle.validation.Trade.POUND;
import static hotidle.validation.Trade.PSI;

import hotidle.film.JournalFilm;
import hotidle.film.RaimondiBoyd;
import hotidle.oil.Oil;
import hotidle.part.Bushing;
import hotidle.part.Fit;
import hotidle.part.Setting;
import java.util.ArrayList;
import java.util.List;

/** Plain bushings: the published table, drag without load, least film. */
final class BushingRows {

    private static final String PART = "Bushing";

    private BushingRows() {}

    static List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        RaimondiBoyd.FINITE.stream()
                .filter(line -> line.eccentricity() <= 0.9)
                .forEach(line -> rows.addAll(film(line)));
        rows.addAll(
                List.of(
                        petroffForce("17.173", 7.25e-6, "551(a)"),
                        petroffPower("0.1635", 7.25e-6, "551(a)"),
                        petroffForce("5.211", 2.2e-6, "551(b)"),
                        petroffPower("0.0496", 2.2e-6, "551(b)"),
                        Row.of(
                                PART,
                                "friction power, no load",
                                "0.153 Pa·s, shaft 100 mm, 30 rev/s, gap 20 µm, 0.2 m long",
                                "42695.643",
                                "W",
                                power(0.153, 0.1, 20e-6, 0.2, 30),
                                Sources.SCHASCHKE.at("ex. 3.19")),
                        Row.of(
                                PART,
                                "friction torque, no load",
                                "0.153 Pa·s, shaft 100 mm, 30 rev/s, gap 20 µm, 0.2 m long",
                                "226.507",
                                "N·m",
                                power(0.153, 0.1, 20e-6, 0.2, 30) / (2 * Math.PI * 30),
                                Sources.SCHASCHKE.at("ex. 3.19")),
                        clearance(),
                        crankshaft("torque, no load", "11.2", "lbf·in", CRANKSHAFT_SPEED * 2 * Math.PI * POUND * INCH),
                        crankshaft("power, no load", "0.640", "hp", HORSEPOWER),
                        Row.of(
                                        PART,
                                        "hottest oil between two walls at 20 °C",
                                        "0.8374 Pa·s, 12 m/s, 0.145 W/(m·K)",
                                        "124.0",
                                        "°C",
                                        20 + Bushing.coreRise(0.8374, 12, 0.145),
                                        Source.found(
                                                "Y. A. Çengel, Heat and Mass Transfer, ex. 6-1, oil in a journal bearing"))
                                .within(0.06, "the book's 103.95 K and 20 °C are rounded up"),
                        Row.of(
                                PART,
                                "least film by Trumpler's criterion",
                                "journal of 1.5 in",
                                "0.00026",
                                "in",
                                Trade.measure(
                                                bushing(1.5 * INCH, 30e-6, INCH),
                                                Trade.setting(20, Oil.fixed(800, 5e-3)),
                                                Bushing.TRUMPLER_FILM,
                                                0,
                                                0,
                                                0.6,
                                                0)
                                        / INCH,
                                Source.memory(
                                        "P. R. Trumpler in J. E. Shigley, C. R. Mischke, Mechanical Engineering Design, §12-7"))));
        rows.addAll(designed());
        return rows;
    }

    private static final String DESIGNED =
            "journal 1.5 in, 1.5 in long, radial clearance 0.0015 in, 1800 rpm, 500 lb, 4 µreyn";

    /** A bearing of given load: the eccentricity at which its film carries it, then film, torque and side flow. */
    private static List<Row> designed() {
        Bushing bushing = bushing(1.5 * INCH, 0.0015 * INCH, 1.5 * INCH);
        Setting setting = Trade.setting(30, Oil.fixed(850, 4e-6 * PSI));
        double e = eccentricity(1, Math.pow(0.75 / 0.0015, 2) * 4e-6 * 30 / (500 / (1.5 * 1.5)));
        double power = Trade.measure(bushing, setting, Bushing.FRICTION_POWER, 0, 0, e, 0);
        double side = Trade.measure(bushing, setting, Bushing.SIDE_FLOW, 0, 0, e, 0);
        String chart = "3 %: the book reads charts of the same table";
        return List.of(
                Row.of(PART, "least film", DESIGNED, "0.00063", "in", 0.0015 * (1 - e), SHIGLEY.at("ex. 12-1"))
                        .withinShare(0.03, chart),
                Row.of(
                                PART,
                                "torque",
                                DESIGNED,
                                "2.62",
                                "lbf·in",
                                power / (2 * Math.PI * 30) / (POUND * INCH),
                                SHIGLEY.at("ex. 12-2"))
                        .withinShare(0.03, chart),
                Row.of(PART, "side flow", DESIGNED, "0.142", "in³/s", side / Math.pow(INCH, 3), SHIGLEY.at("ex. 12-3"))
                        .withinShare(0.03, chart));
    }

    private static final Source SHIGLEY =
            Source.memory("R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design");

    /** Eccentricity of a film of a Sommerfeld number, by halving. */
    private static double eccentricity(double lengthOverDiameter, double sommerfeld) {
        JournalFilm film = JournalFilm.of(lengthOverDiameter);
        double low = 0;
        double high = 0.99;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (film.load(middle) * sommerfeld < 1) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static final double CRANKSHAFT_SPEED = 3600 / MINUTE;

    private static Row crankshaft(String quantity, String published, String unit, double size) {
        double reyn = 2.01e-4 / 144;
        return Row.of(
                        PART,
                        quantity,
                        "3 in, 1.25 in long, diametral clearance 0.0025 in, 3600 rpm, 2.01e-4 lb·s/ft²",
                        published,
                        unit,
                        power(reyn * PSI, 3 * INCH, 0.00125 * INCH, 1.25 * INCH, CRANKSHAFT_SPEED) / size,
                        Source.memory("R. W. Fox, A. T. McDonald, Introduction to Fluid Mechanics, ex. 8.2"))
                .withinShare(0.005, "the book reads the viscosity of SAE 30 oil at 210 °F from a chart");
    }

    private static List<Row> film(RaimondiBoyd.Line line) {
        double e = line.eccentricity();
        JournalFilm film = JournalFilm.of(line.lengthOverDiameter());
        String inputs = "L/D " + line.lengthOverDiameter() + ", ε " + e;
        Source source = Sources.RAIMONDI_BOYD.at("part III, table of the full bearing");
        return List.of(
                Row.of(PART, "Sommerfeld number S", inputs, line.sommerfeld(), "", 1 / film.load(e), source)
                        .withinShare(line.sommerfeldShare(), line.sommerfeldReason()),
                Row.of(PART, "friction f·R/c", inputs, line.friction(), "", film.drag(e) / film.load(e), source)
                        .withinShare(RaimondiBoyd.FRICTION, RaimondiBoyd.MESH),
                Row.of(PART, "side flow Qs/Q", inputs, line.sideFlow(), "", film.sideFlow(e) / film.flow(e), source)
                        .withinShare(RaimondiBoyd.SIDE_FLOW, RaimondiBoyd.MESH),
                Row.of(PART, "mean over largest pressure", inputs, line.peak(), "", film.loadOverPeak(e), source)
                        .withinShare(RaimondiBoyd.PEAK, RaimondiBoyd.MESH));
    }

    private static Bushing bushing(double diameter, double clearance, double length) {
        return new Bushing(Fit.same(diameter + 2 * clearance, diameter), length, List.of(), 0, 0, 2e-6, 7e6, 0, false);
    }

    /** Friction power of a bushing that carries nothing [W]. */
    private static double power(double viscosity, double diameter, double clearance, double length, double speed) {
        return Trade.measure(
                bushing(diameter, clearance, length),
                Trade.setting(speed, Oil.fixed(850, viscosity)),
                Bushing.FRICTION_POWER,
                0,
                0,
                0,
                0);
    }

    private static final String PETROFF = "3 in by 3 in, diametral clearance 0.0015 in, 400 rpm, ";

    private static Row petroffForce(String published, double reyn, String problem) {
        double speed = 400 / MINUTE;
        double force = petroff(reyn) / (Math.PI * 3 * INCH * speed);
        return Row.of(
                PART,
                "Petroff's friction force",
                PETROFF + reyn * 1e6 + " µreyn",
                published,
                "lb",
                force / POUND,
                Sources.FAIRES.at("problem " + problem));
    }

    private static Row petroffPower(String published, double reyn, String problem) {
        return Row.of(
                PART,
                "Petroff's friction power",
                PETROFF + reyn * 1e6 + " µreyn",
                published,
                "hp",
                petroff(reyn) / HORSEPOWER,
                Sources.FAIRES.at("problem " + problem));
    }

    private static double petroff(double reyn) {
        return power(reyn * PSI, 3 * INCH, 0.00075 * INCH, 3 * INCH, 400 / MINUTE);
    }

    /** The torque of an unloaded bushing falls as its clearance rises. */
    private static Row clearance() {
        double viscosity = 0.02 * 0.45359237 / Trade.FOOT;
        double speed = 1200 / MINUTE;
        double tried = 0.001 * INCH;
        double torque = power(viscosity, 2.5 * INCH, tried, 5 * INCH, speed) / (2 * Math.PI * speed);
        return Row.of(
                PART,
                "diametral clearance by torque, no load",
                "2.5 in by 5 in, 0.02 lb/(ft·s), 1200 rpm, 26 lbf·in",
                "0.0026",
                "in",
                2 * tried * torque / (26 * POUND * INCH) / INCH,
                Source.found("A. C. Walshaw, D. A. Jobson, Mechanics of Fluids, ex. 8.3.3"));
    }
}
