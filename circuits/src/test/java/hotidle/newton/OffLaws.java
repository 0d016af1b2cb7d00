package hotidle.newton;

import hotidle.network.Network;
import hotidle.part.Form;
import hotidle.part.Measure;
import hotidle.part.Part;
import hotidle.part.Reading;
import hotidle.part.Stamp;
import hotidle.part.Stream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Solves networks whose parts pass more or less oil than their laws say. */
public final class OffLaws {

    private OffLaws() {}

    /**
     * A solver of such a network.
     *
     * @param times what each part passes over what its law says, by its name; a part that is not named passes just that
     */
    public static SteadySolver solver(Network network, Map<String, Double> times) {
        return new SteadySolver(new Equations(
                network,
                (placed, setting) -> new OffLaw(
                        placed.part().form(), placed.part().law(setting), times.getOrDefault(placed.name(), 1.0))));
    }

    /** The law of a part all of whose flows are off by a factor; what moves its states is as it was. */
    private record OffLaw(Form form, Part.Law law, double times) implements Part.Law {

        @Override
        public void evaluate(Reading in, Stamp out) {
            law.evaluate(in, out);
            if (times == 1) {
                return;
            }
            Stamp own = new Stamp(form);
            law.evaluate(in, own);
            int last = form.ports().size() - 1;
            // what flows in at all ports is nil, so that the last one balances the others
            for (int port = 0; port < last; port++) {
                out.move(port, last, (times - 1) * own.value(port));
                for (int column = 0; column < own.columns(); column++) {
                    out.moveSlope(port, last, column, (times - 1) * own.slope(port, column));
                }
            }
        }

        @Override
        public Iterable<Stream> streams(Reading in) {
            List<Stream> streams = new ArrayList<>();
            for (Stream one : law.streams(in)) {
                streams.add(new Stream(one.name(), one.from(), one.to(), times * one.mass(), times * one.volume()));
            }
            return streams;
        }

        @Override
        public Part.Law atSpeed(double speed) {
            return new OffLaw(form, law.atSpeed(speed), times);
        }

        @Override
        public double delivery() {
            return law.delivery();
        }

        @Override
        public List<Measure.Reported> measures(Reading in) {
            return law.measures(in);
        }
    }
}
