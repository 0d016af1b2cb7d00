package hotidle.validation;

import static hotidle.validation.Trade.INCH;
import static hotidle.validation.Trade.POUND;
import static hotidle.validation.Trade.PSI;

import hotidle.law.Poppet;
import hotidle.law.SeriesLoss;
import java.util.List;

/** Relief valves. */
final class ReliefRows {

    private static final String PART = "Relief valve";
    private static final String INPUTS = "0.75 in², 2500 lb/in, preloaded 0.20 in, full lift 0.10 in";

    private ReliefRows() {}

    static List<Row> rows() {
        double rate = 2500 * POUND / INCH;
        double seat = Math.sqrt(4 * 0.75 / Math.PI) * INCH;
        Poppet poppet = new Poppet(seat, rate, rate * 0.20 * INCH, 0.10 * INCH, 0.7, SeriesLoss.SHUT);
        Source source = Sources.ESPOSITO.at("ex. 8-1");
        return List.of(
                Row.of(PART, "cracking pressure", INPUTS, "667", "psi", poppet.cracking() / PSI, source),
                Row.of(PART, "pressure at full lift", INPUTS, "1000", "psi", poppet.fullLiftPressure() / PSI, source),
                Row.of(PART, "lift at 1000 psi", INPUTS, "0.10", "in", poppet.lift(1000 * PSI) / INCH, source));
    }
}
