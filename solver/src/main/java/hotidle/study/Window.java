package hotidle.study;

import hotidle.assess.Margin;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which set pressures each margin allows, and which all of them do. A margin of which it is not known whether it holds ends no
 * range; it is named beside it. Past 300 lines, since what it found and the search for it share the set points.
 *
 * @param points margins at each set pressure tried, in rising pressure
 * @param spans  of each margin of each part over all duties
 * @param all    spans of set pressure at which every margin holds at every duty
 */
public record Window(List<SetPoint> points, List<Span> spans, List<PressureRange> all) {

    /** Boundaries are narrowed down to this share of the pressure, far below a gauge's division (chosen) [-]. */
    private static final double NARROW = 2e-4;

    /**
     * Margins at one set pressure [Pa].
     *
     * @param margins  at all duties
     * @param unsolved duties at which something asked for was not found, so that what is missing of them counts as failed
     * @param noTemperature duties that their own heat brings to no temperature, at which nothing is judged and no range counts
     */
    public record SetPoint(
            double pressure, Map<Judgement.Key, Margin> margins, List<String> unsolved, List<String> noTemperature) {
        public SetPoint {
            noTemperature = List.copyOf(noTemperature);
            margins = java.util.Collections.unmodifiableMap(margins);
            unsolved = List.copyOf(unsolved);
        }

        private Set<Judgement.Key> gone(Set<Judgement.Key> asked) {
            return BoundarySearch.gone(margins, asked);
        }
    }

    /**
     * Set pressures between which something holds [Pa].
     *
     * @param low     lowest
     * @param lowBy   duty that would fail below; empty where it holds down to the lowest pressure tried
     * @param high    highest
     * @param highBy  duty that would fail above; empty where it holds up to the highest tried
     */
    public record PressureRange(
            double low, Optional<Judgement.Key> lowBy, double high, Optional<Judgement.Key> highBy) {

        /** What two have in common; where both end at one pressure, the margin that is told first. */
        private Optional<PressureRange> common(PressureRange other) {
            boolean lowIsMine = same(low, other.low) ? first(lowBy, other.lowBy) : low > other.low;
            boolean highIsMine = same(high, other.high) ? first(highBy, other.highBy) : high < other.high;
            double lowest = Math.max(low, other.low);
            double highest = Math.min(high, other.high);
            return lowest <= highest
                    ? Optional.of(new PressureRange(
                            lowest, lowIsMine ? lowBy : other.lowBy, highest, highIsMine ? highBy : other.highBy))
                    : Optional.empty();
        }

        /** Whether two ends are one within what they are narrowed down to. */
        private static boolean same(double one, double other) {
            return Math.abs(one - other) <= NARROW * Math.max(one, other);
        }

        private static boolean first(Optional<Judgement.Key> one, Optional<Judgement.Key> other) {
            return other.isEmpty()
                    || (one.isPresent()
                            && one.get().kind().compareTo(other.get().kind()) <= 0);
        }
    }

    /**
     * What one margin of one part allows.
     *
     * @param kind   which
     * @param part   of which part
     * @param ranges in which it holds at every duty; none where it fails at every pressure tried
     * @param worst  duty at which it has least headroom at the pressure where that is greatest, for one that never holds
     * @param undecided duties at which it is not known whether it holds, at a pressure tried within its ranges
     */
    public record Span(
            Margin.Kind kind,
            String part,
            List<PressureRange> ranges,
            Optional<Judgement.Key> worst,
            List<Judgement.Key> undecided) {
        public Span {
            ranges = List.copyOf(ranges);
            undecided = List.copyOf(undecided);
        }
    }

    public Window {
        points = List.copyOf(points);
        spans = List.copyOf(spans);
        all = List.copyOf(all);
    }

    /** Set pressures tried at which something asked for was not found, in rising pressure. */
    public List<SetPoint> notKnown() {
        return points.stream().filter(point -> !point.unsolved.isEmpty()).toList();
    }

    /** Set pressures tried at which a duty comes to no temperature, in rising pressure. */
    public List<SetPoint> tooHot() {
        return points.stream().filter(point -> !point.noTemperature.isEmpty()).toList();
    }

    /** Why no set pressure tried holds every limit; empty where one does. */
    public Optional<NoSetPressure> noneHolds() {
        return NoSetPressure.of(this);
    }

    /** Margins of which it is not known whether they hold, at a pressure tried within a range in which none fails. */
    public List<Judgement.Key> undecided() {
        return undecided(points, all);
    }

    private static List<Judgement.Key> undecided(List<SetPoint> points, List<PressureRange> ranges) {
        return points.stream()
                .filter(point -> ranges.stream()
                        .anyMatch(range -> range.low() <= point.pressure() && point.pressure() <= range.high()))
                .flatMap(point -> BoundarySearch.undecided(point.margins()).stream())
                .distinct()
                .toList();
    }

    /** Makes the unit for a set pressure [Pa]. */
    public interface Raised {

        /**
         * The unit at that pressure.
         *
         * @param duties names of the duty points that it is asked at
         */
        Transmission to(double pressure, Set<String> duties);

        /** What is changed for it, at the temperatures that its duty points give. */
        static Raised by(Transmission unit, SetPressure.By by) {
            return by(Adjustable.fixed(unit), by);
        }

        /** The same of a build, beneath the faults that lie over it. */
        static Raised by(Adjustable build, SetPressure.By by) {
            return (pressure, duties) -> build.setTo(pressure, by).unit();
        }

        /** The same at the temperatures that its own heat brings it to: more pressure makes more of it. */
        default Raised settled() {
            return new SettledRaised(this);
        }
    }

    /** Tries set pressures by command and spring together, see the other one. */
    public static Window study(Transmission unit, List<Double> pressures, List<Double> speeds, Runnable step) {
        return study(unit, Raised.by(unit, SetPressure.By.COMMAND_AND_SPRING), pressures, speeds, step);
    }

    /**
     * Tries set pressures.
     *
     * @param unit      commanded
     * @param raised    makes it for each
     * @param pressures [Pa], rising, two or more
     * @param speeds    engine speeds searched for the hub's film and load [rev/s], rising
     * @param step      called after each duty at each pressure and after each margin, from any thread
     */
    public static Window study(
            Transmission unit, Raised raised, List<Double> pressures, List<Double> speeds, Runnable step) {
        Set<String> all = unit.duties().stream().map(DutyPoint::name).collect(Collectors.toSet());
        BoundarySearch limiting = new BoundarySearch(speeds);
        List<Transmission> made = pressures.parallelStream()
                .map(pressure -> raised.to(pressure, all))
                .toList();
        // a chain a duty, so that what is found does not depend on which thread comes first
        List<List<Stand>> stands = unit.duties().parallelStream()
                .map(duty -> chain(duty.name(), new DutyChain(duty.name(), speeds), made, step))
                .toList();
        List<BoundarySearch.Probe> ends = new ArrayList<>();
        List<SetPoint> points = new ArrayList<>();
        for (int i = 0; i < made.size(); i++) {
            Map<Judgement.Key, Margin> margins = new LinkedHashMap<>();
            Map<String, DutyChain> chains = new LinkedHashMap<>();
            List<String> unsolved = new ArrayList<>();
            List<String> noTemperature = new ArrayList<>();
            for (List<Stand> ofDuty : stands) {
                Stand stand = ofDuty.get(i);
                chains.put(stand.duty().name(), stand.chain());
                if (stand.judged().isEmpty()) {
                    noTemperature.add(stand.duty().name());
                    continue;
                }
                Judgement judged = stand.judged().get();
                judged.margins().forEach(margin -> margins.put(Judgement.Key.of(stand.duty(), margin), margin));
                if (!judged.known()) {
                    unsolved.add(stand.duty().name());
                }
            }
            ends.add(new BoundarySearch.Probe(pressures.get(i), margins, chains));
            points.add(new SetPoint(pressures.get(i), margins, unsolved, noTemperature));
        }
        Map<List<Object>, Set<Judgement.Key>> kinds = new LinkedHashMap<>();
        for (SetPoint point : points) {
            for (Judgement.Key key : point.margins().keySet()) {
                kinds.computeIfAbsent(List.of(key.kind(), key.part()), name -> new LinkedHashSet<>())
                        .add(key);
            }
        }
        SpanSearch search = new SpanSearch(raised, limiting, points, ends);
        List<Span> spans = kinds.values().parallelStream()
                .map(keys -> {
                    Span span = search.span(keys);
                    step.run();
                    return span;
                })
                .toList();
        return new Window(points, spans, common(points, spans));
    }

    /** Where all hold: the ends of the spans are narrowed down already, so that nothing is solved for it. */
    private static List<PressureRange> common(List<SetPoint> points, List<Span> spans) {
        List<PressureRange> common = List.of(new PressureRange(
                points.get(0).pressure(),
                Optional.empty(),
                points.get(points.size() - 1).pressure(),
                Optional.empty()));
        for (Span span : spans) {
            common = common.stream()
                    .flatMap(one -> span.ranges().stream().flatMap(other -> one.common(other).stream()))
                    .toList();
        }
        return common;
    }

    /** A duty, judged unless its own heat brings it to no temperature, and where its chain stood then. */
    private record Stand(DutyPoint duty, Optional<Judgement> judged, DutyChain chain) {}

    private static List<Stand> chain(String name, DutyChain chain, List<Transmission> made, Runnable step) {
        List<Stand> stands = new ArrayList<>();
        for (Transmission one : made) {
            DutyPoint duty = one.duty(name).orElseThrow();
            Optional<Judgement> judged = duty.judged() ? Optional.of(chain.judged(one, duty)) : Optional.empty();
            stands.add(new Stand(duty, judged, chain.branch()));
            step.run();
        }
        return stands;
    }

    /** Between the pressures tried, boundaries are narrowed down. */
    private record SpanSearch(
            Raised raised, BoundarySearch limiting, List<SetPoint> points, List<BoundarySearch.Probe> ends) {

        Span span(Set<Judgement.Key> keys) {
            List<PressureRange> ranges = ranges(keys);
            Judgement.Key first = keys.iterator().next();
            return new Span(
                    first.kind(),
                    first.part(),
                    ranges,
                    ranges.isEmpty() ? best(keys) : Optional.empty(),
                    undecided(points, ranges).stream().filter(keys::contains).toList());
        }

        /** The duty that keeps a margin from ever holding: the worst one at the pressure that is best for it. */
        private Optional<Judgement.Key> best(Set<Judgement.Key> keys) {
            double most = Double.NEGATIVE_INFINITY;
            Optional<Judgement.Key> found = keys.stream().findFirst();
            for (SetPoint point : points) {
                double least = Double.POSITIVE_INFINITY;
                Optional<Judgement.Key> worst = found;
                for (Judgement.Key key : keys) {
                    double rank = Optional.ofNullable(point.margins().get(key))
                            .map(Margin::headroom)
                            .orElse(Double.NEGATIVE_INFINITY);
                    if (rank < least) {
                        least = rank;
                        worst = Optional.of(key);
                    }
                }
                if (least > most) {
                    most = least;
                    found = worst;
                }
            }
            return found;
        }

        List<PressureRange> ranges(Set<Judgement.Key> keys) {
            List<PressureRange> ranges = new ArrayList<>();
            double low = 0;
            Optional<Judgement.Key> lowBy = Optional.empty();
            boolean inside = false;
            for (int i = 0; i < points.size(); i++) {
                Set<Judgement.Key> gone = points.get(i).gone(keys);
                double here = points.get(i).pressure();
                if (gone.isEmpty() && !inside) {
                    inside = true;
                    Optional<BoundarySearch.Boundary> boundary = i == 0 ? Optional.empty() : boundary(i, i - 1, keys);
                    low = boundary.map(BoundarySearch.Boundary::holds).orElse(here);
                    lowBy = boundary.map(found -> found.gone().get(0));
                } else if (!gone.isEmpty() && inside) {
                    inside = false;
                    BoundarySearch.Boundary boundary = boundary(i - 1, i, keys).orElseThrow();
                    ranges.add(new PressureRange(
                            low,
                            lowBy,
                            boundary.holds(),
                            Optional.of(boundary.gone().get(0))));
                } else if (!gone.isEmpty() && i > 0) {
                    hidden(i, keys).ifPresent(ranges::add);
                }
            }
            if (inside) {
                ranges.add(new PressureRange(
                        low, lowBy, points.get(points.size() - 1).pressure(), Optional.empty()));
            }
            return ranges;
        }

        /** A range that lies between two pressures tried: what fails below and what fails above are not the same there. */
        private Optional<PressureRange> hidden(int i, Set<Judgement.Key> keys) {
            Set<Judgement.Key> below = points.get(i - 1).gone(keys);
            Set<Judgement.Key> above = points.get(i).gone(keys);
            Set<Judgement.Key> both = new LinkedHashSet<>(below);
            both.retainAll(above);
            if (!both.isEmpty()) {
                return Optional.empty();
            }
            double to = points.get(i).pressure();
            BoundarySearch.Boundary low = limiting.narrow(at(keys), ends.get(i), ends.get(i - 1), below, NARROW * to);
            BoundarySearch.Boundary high = limiting.narrow(at(keys), ends.get(i - 1), ends.get(i), above, NARROW * to);
            return low.holds() <= high.holds()
                    ? Optional.of(new PressureRange(
                            low.holds(),
                            Optional.of(low.gone().get(0)),
                            high.holds(),
                            Optional.of(high.gone().get(0))))
                    : Optional.empty();
        }

        private Optional<BoundarySearch.Boundary> boundary(int holds, int fails, Set<Judgement.Key> keys) {
            double good = points.get(holds).pressure();
            double bad = points.get(fails).pressure();
            return Optional.of(limiting.narrow(
                    at(keys),
                    ends.get(holds),
                    ends.get(fails),
                    points.get(fails).gone(keys),
                    NARROW * Math.max(good, bad)));
        }

        /** Of some margins, at whose duty points alone the unit is asked. */
        private BoundarySearch.UnitAt at(Set<Judgement.Key> keys) {
            Set<String> duties = keys.stream().map(Judgement.Key::duty).collect(Collectors.toSet());
            return pressure -> Optional.of(raised.to(pressure, duties));
        }
    }
}
