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
        return rows;
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
