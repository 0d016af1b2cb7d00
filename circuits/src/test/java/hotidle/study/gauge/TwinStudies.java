package hotidle.study.gauge;

import hotidle.fault.UnitFault;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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
     * Twins with one fault each, of which the readings leave three causes or more, those as one that no reading allowed can tell apart:
     * how many of these are left after the reading that is proposed, after one at random, after three and after all that are allowed.
     * Once all readings together agree with the build, no further one is proposed; such twins are marked. Each twin is drawn by numbers
     * of its own and shows the same in whatever order it is read, so that two ways of proposing are compared on the same twins.
     *
     * @param shown whether the fault of each shows in the usual readings; otherwise most do not, and it is chance that such readings
     *              disagree
     */
    String next(int count, long seed, boolean shown) {
        Random random = new Random(seed);
        AllowedReadings allowed = new AllowedReadings(twins);
        TwinNext galleries = new TwinNext();
        TwinNext apart = new TwinNext();
        while (apart.size() < count) {
            Random own = new Random(random.nextLong());
            UnitFault.Sized fault = shown ? twins.shown(own) : twins.any(own);
            Optional<TwinDraw.OnStand> stand = twins.draw.onStand(List.of(fault), own);
            Optional<List<GaugeReading>> read = stand.flatMap(one -> one.read(twins.places));
            if (read.isEmpty()) {
                continue;
            }
            GaugeFindings found = GaugeStudy.alone(twins.table, read.get());
            if (twins.galleries(found).size() < 3 || allowed.told(found) < 3) {
                continue;
            }
            Optional<List<GaugeReading>> further = stand.get().read(allowed.further);
            if (further.isEmpty()) {
                continue;
            }
            Followed followed = new Followed(twins, allowed, further.get(), likely(found));
            List<GaugeFindings> proposed = followed.proposed(found);
            if (proposed.isEmpty()) {
                apart.kept++;
                continue;
            }
            GaugeFindings chance = followed.more(found, allowed.any(own).row());
            GaugeFindings last = proposed.get(proposed.size() - 1);
            GaugeFindings all = followed.all(found);
            String one = galleries.add(
                    found,
                    chance,
                    proposed,
                    all,
                    told -> AllowedReadings.told(twins, told).size());
            String other = apart.add(found, chance, proposed, all, allowed::told);
            System.out.printf(
                    Locale.ROOT,
                    "%-36s %.3g, truth %.3f then %.3f after %d more%s; of one gallery as one: %s; those none can tell apart as one: %s%n",
                    fault.fault().name(),
                    fault.size(),
                    share(fault.fault(), found),
                    share(fault.fault(), last),
                    proposed.size(),
                    last.agreement().agrees() ? ", all agree" : "",
                    one,
                    other);
        }
        return String.format(
                Locale.ROOT,
                "causes of one gallery as one: %s%nthose that no reading can tell apart as one: %s",
                galleries,
                apart);
    }

    private static List<UnitFault> likely(GaugeFindings found) {
        return found.causes().stream()
                .filter(cause -> cause.share() > UNLIKELY)
                .map(Cause::fault)
                .toList();
    }

    /** Causes with less of what is believed before a further reading do not come back by it. */
    private static final double UNLIKELY = 1e-4;

    /** What is believed of all leaks of a gallery, or of a fault that is none. */
    private double share(UnitFault fault, GaugeFindings found) {
        return found.causes().stream()
                .filter(cause -> twins.gallery(cause.fault()).equals(twins.gallery(fault)))
                .mapToDouble(Cause::share)
                .sum();
    }

    /**
     * A twin whose readings are followed further.
     *
     * @param further what each reading that is allowed shows on it, the same in whatever order they are taken
     * @param likely  faults that are looked at
     */
    private record Followed(Twins twins, AllowedReadings allowed, List<GaugeReading> further, List<UnitFault> likely) {

        /** What is found after one, two and three readings, each proposed after the one before; fewer where none is worth taking. */
        List<GaugeFindings> proposed(GaugeFindings found) {
            List<GaugeFindings> after = new ArrayList<>();
            GaugeFindings last = found;
            while (after.size() < 3) {
                Optional<NextReading> next =
                        NextReadings.of(twins.build, last, 1).stream().findFirst();
                if (next.isEmpty()) {
                    break;
                }
                NextReading one = next.get();
                if (Twins.LOG) {
                    System.out.printf(
                            Locale.ROOT,
                            "  %s %s %.0f rpm tells %.2f%n",
                            one.row().meter().name(),
                            one.row().at().range(),
                            60 * one.row().at().speed(),
                            one.information());
                }
                last = more(last, one.row());
                after.add(last);
            }
            return after;
        }

        /** What is found with all readings that are allowed. */
        GaugeFindings all(GaugeFindings found) {
            return more(found, further);
        }

        /** What is found with one more. */
        GaugeFindings more(GaugeFindings found, GaugeReading.Row row) {
            return more(
                    found,
                    List.of(further.stream()
                            .filter(reading -> reading.row().equals(row))
                            .findFirst()
                            .orElseThrow()));
        }

        private GaugeFindings more(GaugeFindings found, List<GaugeReading> read) {
            List<GaugeReading> all = new ArrayList<>(found.readings());
            all.addAll(read);
            return allowed.found(likely, all);
        }
    }

    /** Of each fault that can show and has a degree: the size told as hidden, over the one from which new solves say that it shows. */
    Map<String, Double> hidden() {
        Map<String, Double> ratios = new TreeMap<>();
        GaugeFindings found = GaugeStudy.alone(twins.table, twins.places);
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

    private static String told(Map<String, Double> ratios) {
        long right = ratios.values().stream()
                .filter(ratio -> Math.abs(ratio - 1) <= 1 / 3.0)
                .count();
        return String.format(
                Locale.ROOT,
                "hidden size right within a third for %d of %d; told over what is: %s",
                right,
                ratios.size(),
                ratios);
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
     * What was told of twins with two faults.
     *
     * @param pair  how often the two are one of the leading pairs, which hold {@link GaugeFindings#LEADING} of what is believed of pairs
     * @param each  how often each of the two is one of those of the leading pairs
     * @param alone how often one fault alone, or none of these, is believed rather than any pair
     * @param told  leading pairs, all twins together
     */
    record TwoFaults(int all, int pair, int each, int alone, int told) {

        private TwoFaults with(Set<Set<String>> leading, Set<String> truth, boolean rather) {
            Set<String> any = new HashSet<>();
            leading.forEach(any::addAll);
            return new TwoFaults(
                    all + 1,
                    pair + (leading.contains(truth) ? 1 : 0),
                    each + (any.containsAll(truth) ? 1 : 0),
                    alone + (rather ? 1 : 0),
                    told + leading.size());
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%d with two faults: the pair among the leading ones %.3f, both among those of the leading pairs %.3f; %.1f pairs"
                            + " told on average; one alone or none believed rather %.3f",
                    all,
                    (double) pair / all,
                    (double) each / all,
                    (double) told / all,
                    (double) alone / all);
        }
    }

    /** Twins with two faults, not of one gallery, of which each would show alone. */
    TwoFaults two(int count, long seed) {
        Random random = new Random(seed);
        TwoFaults tally = new TwoFaults(0, 0, 0, 0, 0);
        while (tally.all() < count) {
            UnitFault.Sized one = twins.shown(random);
            UnitFault.Sized other = twins.shown(random);
            Set<String> truth = new HashSet<>(List.of(twins.gallery(one.fault()), twins.gallery(other.fault())));
            if (one.fault().part().equals(other.fault().part()) || truth.size() < 2) {
                continue;
            }
            Optional<List<GaugeReading>> read = twins.read(List.of(one, other), random);
            if (read.isEmpty()) {
                continue;
            }
            GaugeFindings found = GaugeStudy.of(twins.table, read.get());
            double whole = found.pairs().stream()
                    .mapToDouble(GaugeFindings.Pair::share)
                    .sum();
            Set<Set<String>> leading = leading(found, whole);
            tally = tally.with(leading, truth, whole < 0.5);
            if (Twins.LOG) {
                System.out.printf(
                        Locale.ROOT,
                        "%s %.3g + %s %.3g: pairs %.3f none %.3f, %d told%s%n",
                        one.fault().name(),
                        one.size(),
                        other.fault().name(),
                        other.size(),
                        whole,
                        found.none(),
                        leading.size(),
                        leading.contains(truth) ? " PAIR" : "");
            }
        }
        return tally;
    }

    private Set<Set<String>> leading(GaugeFindings found, double whole) {
        Set<Set<String>> leading = new HashSet<>();
        double sum = 0;
        for (GaugeFindings.Pair pair : found.pairs()) {
            if (sum < GaugeFindings.LEADING * whole) {
                sum += pair.share();
                leading.add(new HashSet<>(List.of(
                        twins.gallery(pair.one().fault()),
                        twins.gallery(pair.other().fault()))));
            }
        }
        return leading;
    }

    /**
     * By hand: {@code TwinStudies BUILD COUNT SEED [laws] [one|shown|healthy|next|next-any|two|hidden[:COUNT]]...}, {@code shown} of
     * twins that all show; with {@code laws} these are off.
     */
    public static void main(String[] arguments) {
        long start = System.nanoTime();
        List<String> asked = new ArrayList<>(List.of(arguments).subList(3, arguments.length));
        Twins twins = new Twins(arguments[0], asked.remove("laws"));
        TwinStudies studies = new TwinStudies(twins);
        long seed = Long.parseLong(arguments[2]);
        System.out.printf(
                Locale.ROOT,
                "table in %.1f s, %d sizes solved%n",
                (System.nanoTime() - start) / 1e9,
                twins.table.curves().stream()
                        .mapToInt(curve -> curve.nodes().size())
                        .sum());
        for (String one : asked) {
            start = System.nanoTime();
            int colon = one.indexOf(':');
            String what = colon < 0 ? one : one.substring(0, colon);
            int count = Integer.parseInt(colon < 0 ? arguments[1] : one.substring(colon + 1));
            System.out.println(
                    switch (what) {
                        case "one" -> twins.sick(count, seed).toString();
                        case "shown" -> twins.visible(count, seed + 4).toString();
                        case "healthy" -> "healthy called sound: " + twins.healthy(count, seed + 1) + " of " + count;
                        case "next" -> studies.next(count, seed + 2, true);
                        case "next-any" -> studies.next(count, seed + 2, false);
                        case "two" -> studies.two(count, seed + 3).toString();
                        case "hidden" -> told(studies.hidden());
                        default -> "what is " + what;
                    });
            System.out.printf(Locale.ROOT, "%s: %.1f s%n", what, (System.nanoTime() - start) / 1e9);
        }
    }
}
