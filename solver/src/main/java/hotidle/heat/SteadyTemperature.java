package hotidle.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where a unit neither warms nor cools: for sump temperatures from the coldest possible to the oil's limit the converter's own steady
 * temperature is found, and the heat that is then left for the sump; a steady temperature lies where that changes sign. It is stable where
 * the heat falls through zero as the sump warms.
 */
final class SteadyTemperature {

    /** Sump temperatures tried [-]; steady ones nearer to each other than the span over this are taken for one or none (assumed). */
    private static final int STEPS = 10;

    private static final double ROUGH = 1e-3;
    private static final double FINE = 1e-10;

    /** Heat over what is generated below which a temperature is steady [-]. */
    static final double CLOSED = 1e-9;

    private final WarmUnit unit;

    SteadyTemperature(WarmUnit unit) {
        this.unit = unit;
    }

    /** A point of the curve: heat left for the sump [W], infinite where the converter finds no steady temperature below its limit. */
    private record SumpPoint(double sump, double rate, Optional<WarmState> state) {}

    /** Steady states that the unit stays in, the coldest first. */
    List<WarmState> find() {
        double low = unit.coldest() + 0.5;
        double high = unit.inputs().oilLimit();
        List<WarmState> stable = new ArrayList<>();
        Optional<SumpPoint> before = Optional.empty();
        for (int i = 0; i <= STEPS; i++) {
            Optional<SumpPoint> point = point(low + (high - low) * i / STEPS, before.flatMap(SumpPoint::state));
            if (before.isPresent() && point.isPresent()) {
                SumpPoint one = before.get();
                SumpPoint other = point.get();
                if (one.rate() > 0 && other.rate() <= 0) {
                    polish(between(one, other)).ifPresent(stable::add);
                }
            }
            before = point;
        }
        return stable;
    }

    private SumpPoint between(SumpPoint one, SumpPoint other) {
        SumpPoint low = one;
        SumpPoint high = other;
        for (int i = 0; i < 12 && high.sump() - low.sump() > 0.2; i++) {
            double share = Double.isFinite(low.rate()) && Double.isFinite(high.rate())
                    ? Math.max(0.1, Math.min(0.9, low.rate() / (low.rate() - high.rate())))
                    : 0.5;
            Optional<SumpPoint> middle = point(
                    low.sump() + share * (high.sump() - low.sump()), low.state().or(high::state));
            if (middle.isEmpty()) {
                break;
            }
            if (middle.get().rate() > 0 == low.rate() > 0) {
                low = middle.get();
            } else {
                high = middle.get();
            }
        }
        return Math.abs(low.rate()) < Math.abs(high.rate()) ? low : high;
    }

    /** Heat left for the sump with the converter at rest; empty where no state is found. */
    private Optional<SumpPoint> point(double sump, Optional<WarmState> near) {
        if (!unit.hasConverter()) {
            return unit.at(new Temperatures(sump, sump), ROUGH)
                    .map(state -> new SumpPoint(sump, state.flows().sumpRate(), Optional.of(state)));
        }
        double low = Math.min(sump, unit.coldest());
        double high = unit.inputs().converterLimit();
        double guess = near.map(state -> state.at().converter() - state.at().sump() + sump)
                .orElse(sump);
        double converter = Math.min(Math.max(guess, low), high);
        Optional<Double> lastAt = Optional.empty();
        double lastRate = 0;
        for (int i = 0; i < 40; i++) {
            Optional<WarmState> found = unit.at(new Temperatures(sump, converter), ROUGH);
            if (found.isEmpty()) {
                return Optional.empty();
            }
            double rate = found.get().flows().converterRate();
            if (converter == high && rate > 0) {
                return Optional.of(new SumpPoint(sump, Double.POSITIVE_INFINITY, Optional.empty()));
            }
            if (Math.abs(rate) <= 1e-3 * Math.max(found.get().flows().generated(), 1)) {
                return Optional.of(new SumpPoint(sump, found.get().flows().sumpRate(), found));
            }
            if (rate > 0) {
                low = converter;
            } else {
                high = converter;
            }
            double next = converter + (rate > 0 ? 20 : -20);
            if (lastAt.isPresent()) {
                double slope = (rate - lastRate) / (converter - lastAt.get());
                next = slope < 0 ? converter - rate / slope : next;
            }
            lastAt = Optional.of(converter);
            lastRate = rate;
            double most = unit.inputs().converterLimit();
            converter = next >= most && high == most ? most : next > low && next < high ? next : (low + high) / 2;
            if (high - low < 1e-6) {
                return Optional.of(new SumpPoint(sump, found.get().flows().sumpRate(), found));
            }
        }
        return Optional.empty();
    }

    /** Newton in both temperatures from a point near by, with slopes from differences. */
    private Optional<WarmState> polish(SumpPoint near) {
        return polish(near.state().map(WarmState::at).orElse(new Temperatures(near.sump(), near.sump())));
    }

    /** The steady state near two temperatures; empty where Newton finds none. */
    Optional<WarmState> polish(Temperatures near) {
        Temperatures at = near;
        Optional<WarmState> best = Optional.empty();
        for (int i = 0; i < 12; i++) {
            Optional<WarmState> here = unit.at(at, FINE);
            if (here.isEmpty()) {
                return Optional.empty();
            }
            HeatFlows flows = here.get().flows();
            double scale = Math.max(flows.generated(), 1);
            best = here;
            if (Math.max(Math.abs(flows.sumpRate()), Math.abs(flows.converterRate())) <= CLOSED / 2 * scale) {
                return best;
            }
            Optional<Temperatures> next = step(at, flows);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            at = next.get();
        }
        return best.filter(state -> Math.max(
                        Math.abs(state.flows().sumpRate()),
                        Math.abs(state.flows().converterRate()))
                <= CLOSED * Math.max(state.flows().generated(), 1));
    }

    private Optional<Temperatures> step(Temperatures at, HeatFlows flows) {
        double small = 0.05;
        Optional<WarmState> sump = unit.at(at.moved(small, unit.hasConverter() ? 0 : small), FINE);
        if (sump.isEmpty()) {
            return Optional.empty();
        }
        double ss = (sump.get().flows().sumpRate() - flows.sumpRate()) / small;
        if (!unit.hasConverter()) {
            double by = bounded(-flows.sumpRate() / ss);
            return Optional.of(at.moved(by, by));
        }
        Optional<WarmState> converter = unit.at(at.moved(0, small), FINE);
        if (converter.isEmpty()) {
            return Optional.empty();
        }
        double cs = (sump.get().flows().converterRate() - flows.converterRate()) / small;
        double sc = (converter.get().flows().sumpRate() - flows.sumpRate()) / small;
        double cc = (converter.get().flows().converterRate() - flows.converterRate()) / small;
        double determinant = ss * cc - sc * cs;
        return Optional.of(at.moved(
                bounded((-flows.sumpRate() * cc + flows.converterRate() * sc) / determinant),
                bounded((-flows.converterRate() * ss + flows.sumpRate() * cs) / determinant)));
    }

    private static double bounded(double step) {
        return Math.max(-10, Math.min(10, step));
    }
}
