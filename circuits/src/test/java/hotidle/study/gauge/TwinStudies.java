package hotidle.study.gauge;

import hotidle.fault.UnitFault;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;

/**
 * What is asked of {@link Twins} by hand: how much the next reading tells, what may stay hidden, and two faults at once.
 *
 * @param twins of one build, with their usual readings
 */
record TwinStudies(Twins twins) {

    /**
     * Twins with one fault each, of which the readings leave three causes or more, those of one gallery as one: over these, how many of
     * the causes are left after the reading that is proposed, and after one at random.
     */
    String next(int count, long seed) {
        Random random = new Random(seed);
        List<Double> proposed = new ArrayList<>();
        List<Double> chance = new ArrayList<>();
        int kept = 0;
        while (proposed.size() < count) {
            UnitFault fault = twins.faults.get(random.nextInt(twins.faults.size()));
            double way = CauseBelief.drawn(fault.kind().graded(), random.nextDouble());
            Optional<TwinDraw.OnStand> stand = twins.draw.onStand(List.of(fault.of(fault.sizeAt(way))), random);
            Optional<List<GaugeReading>> read = stand.flatMap(one -> one.read(twins.places));
            if (read.isEmpty()) {
                continue;
            }
            GaugeFindings found = GaugeStudy.of(twins.table, read.get());
            int before = twins.galleries(found).size();
            List<NextReading> next = before < 3 ? List.of() : NextReadings.of(twins.build, found, 1);
            if (next.isEmpty()) {
                kept += before < 3 ? 0 : 1;
                continue;
            }
            List<GaugeReading.Row> all = NextReadings.candidates(twins.build.unit(), read.get());
            OptionalInt best = after(stand.get(), read.get(), found, next.get(0).row());
            OptionalInt other = after(stand.get(), read.get(), found, all.get(random.nextInt(all.size())));
            if (best.isPresent() && other.isPresent()) {
                proposed.add((double) best.getAsInt() / before);
                chance.add((double) other.getAsInt() / before);
                System.out.printf(
                        Locale.ROOT,
                        "%-36s %d causes; %d after %s %s at %.0f rpm, %d after one at random%n",
                        fault.name(),
                        before,
                        best.getAsInt(),
                        next.get(0).row().meter().name(),
                        next.get(0).row().at().range(),
                        next.get(0).row().at().speed() * 60,
                        other.getAsInt());
            }
        }
        double best =
                proposed.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        double other =
                chance.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        return String.format(
                Locale.ROOT,
                "%d groups of three or more: left after the proposed reading %.2f of the causes, after one at random %.2f, ratio %.2f;"
                        + " for %d groups none was worth proposing",
                proposed.size(),
                best,
                other,
                best / other,
                kept);
    }

    /** Causes left after one reading more; of those that nothing speaks for before, none comes back. */
    private OptionalInt after(
            TwinDraw.OnStand stand, List<GaugeReading> taken, GaugeFindings found, GaugeReading.Row row) {
        double usual =
                taken.stream().mapToDouble(GaugeReading::deviation).average().orElseThrow();
        GaugeReading place = new GaugeReading(
                row.meter(),
                row.at(),
                GaugeReading.Sense.EXACT,
                0,
                row.meter().reads() == Meter.Reads.FLOW ? NextReadings.LEAST_FLOW : usual);
        List<UnitFault> likely = found.causes().stream()
                .filter(cause -> cause.share() > 1e-4)
                .map(Cause::fault)
                .toList();
        return stand.read(List.of(place))
                .map(one -> {
                    List<GaugeReading> all = new ArrayList<>(taken);
                    all.addAll(one);
                    GaugeTable more = GaugeTable.of(twins.build, likely, all, () -> {});
                    GaugeFindings now = GaugeStudy.of(more, all);
                    return now.agreement().agrees()
                            ? OptionalInt.empty()
                            : OptionalInt.of(twins.galleries(now).size());
                })
                .orElse(OptionalInt.empty());
    }

    /** Of each fault that can show and has a degree: the size told as hidden, over the one from which new solves say that it shows. */
    Map<String, Double> hidden() {
        Map<String, Double> ratios = new TreeMap<>();
        GaugeFindings found = GaugeStudy.of(twins.table, twins.places);
        for (CauseCurve curve : twins.table.curves()) {
            UnitFault fault = curve.fault();
            double told = Twins.truth(fault, found).hidden();
            if (Twins.truth(fault, found).visible() && told > 0) {
                double low = 0;
                double high = 0;
                while (high < 1 && !shows(fault, high)) {
                    low = high;
                    high = Math.min(high + 0.02, 1);
                }
                for (int i = 0; i < 6; i++) {
                    double middle = (low + high) / 2;
                    if (shows(fault, middle)) {
                        high = middle;
                    } else {
                        low = middle;
                    }
                }
                ratios.put(fault.name(), told / fault.sizeAt((low + high) / 2));
            }
        }
        return ratios;
    }

    private boolean shows(UnitFault fault, double way) {
        return twins.table
                .model()
                .along(twins.table.model().series(), List.of(List.of(fault.of(fault.sizeAt(way)))))
                .get(0)
                .filter(expected -> twins.misfit.distance(twins.table.sound(), expected) > GaugeFindings.VISIBLE)
                .isPresent();
    }

    /**
     * Twins with two twins.faults, not of one gallery, of which each would show alone: how often both are told, as one pair and each in any of
     * the leading pairs.
     */
    String two(int count, long seed) {
        Random random = new Random(seed);
        int all = 0;
        int pair = 0;
        int each = 0;
        int alone = 0;
        while (all < count) {
            List<UnitFault.Sized> two = List.of(twins.shown(random), twins.shown(random));
            if (two.get(0).fault().part().equals(two.get(1).fault().part())
                    || twins.gallery(two.get(0).fault())
                            .equals(twins.gallery(two.get(1).fault()))) {
                continue;
            }
            Optional<List<GaugeReading>> read = twins.read(two, random);
            if (read.isEmpty()) {
                continue;
            }
            all++;
            GaugeFindings found = GaugeStudy.of(twins.table, read.get());
            Set<String> truth = Set.of(
                    twins.gallery(two.get(0).fault()), twins.gallery(two.get(1).fault()));
            Set<Set<String>> told = new HashSet<>();
            Set<String> any = new HashSet<>();
            double whole = found.pairs().stream()
                    .mapToDouble(GaugeFindings.Pair::share)
                    .sum();
            double sum = 0;
            for (GaugeFindings.Pair one : found.pairs()) {
                if (sum < GaugeFindings.LEADING * whole) {
                    sum += one.share();
                    told.add(new HashSet<>(List.of(
                            twins.gallery(one.one().fault()),
                            twins.gallery(one.other().fault()))));
                }
            }
            told.forEach(any::addAll);
            pair += told.contains(truth) ? 1 : 0;
            each += any.containsAll(truth) ? 1 : 0;
            alone += whole < 0.5 ? 1 : 0;
            if (Twins.LOG) {
                System.out.printf(
                        Locale.ROOT,
                        "%s %.3g + %s %.3g: pairs %.3f none %.3f, %d told%s%s%n",
                        two.get(0).fault().name(),
                        two.get(0).size(),
                        two.get(1).fault().name(),
                        two.get(1).size(),
                        whole,
                        found.none(),
                        told.size(),
                        told.contains(truth) ? " PAIR" : "",
                        any.containsAll(truth) ? " EACH" : "");
            }
        }
        return String.format(
                Locale.ROOT,
                "%d with two faults: the pair among the leading ones %.3f, both among those of the leading pairs %.3f; one alone or"
                        + " none believed rather %.3f",
                all,
                (double) pair / all,
                (double) each / all,
                (double) alone / all);
    }

    /** By hand: {@code TwinStudies BUILD COUNT SEED [one|healthy|next|two|hidden]...}. */
    public static void main(String[] arguments) {
        long start = System.nanoTime();
        Twins twins = new Twins(arguments[0]);
        TwinStudies studies = new TwinStudies(twins);
        int count = Integer.parseInt(arguments[1]);
        long seed = Long.parseLong(arguments[2]);
        System.out.printf(
                Locale.ROOT,
                "table in %.1f s, %d sizes solved%n",
                (System.nanoTime() - start) / 1e9,
                twins.table.curves().stream()
                        .mapToInt(curve -> curve.nodes().size())
                        .sum());
        for (String what : List.of(arguments).subList(3, arguments.length)) {
            start = System.nanoTime();
            System.out.println(
                    switch (what) {
                        case "one" -> twins.sick(count, seed).toString();
                        case "healthy" -> "healthy called sound: " + twins.healthy(count, seed + 1) + " of " + count;
                        case "next" -> studies.next(count, seed + 2);
                        case "two" -> studies.two(count, seed + 3);
                        case "hidden" -> "told as hidden over what is: " + studies.hidden();
                        default -> "what is " + what;
                    });
            System.out.printf(Locale.ROOT, "%s: %.1f s%n", what, (System.nanoTime() - start) / 1e9);
        }
    }
}
