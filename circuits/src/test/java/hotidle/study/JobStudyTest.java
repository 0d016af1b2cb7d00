package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Job;
import hotidle.transmission.JobCost;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import hotidle.transmission.Workshop;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The smallest set of jobs is what trying every set on its own, from a cold start, finds. */
class JobStudyTest {

    private static final double PSI = 6894.757293168361;

    private static final List<Double> SPEEDS =
            DoubleStream.of(650, 1500, 4000).map(rpm -> rpm / 60).boxed().toList();

    /** Jobs that are looked at: 64 sets a circuit. */
    private static final int JOBS = 6;

    @ParameterizedTest
    @CsvSource({"shuttle-five, 150", "shuttle-five, 170", "crescent-four, 150", "vane-six, 300"})
    void theSmallestSetOfJobsIsThatOfTryingEverySetFromACold(String circuit, double psi) {
        Workshop shop = shop(circuit);
        JobStudy study = study(shop, psi);
        Map<Integer, Map<Set<String>, Double>> kept = new TreeMap<>();
        for (List<Job> set : all(shop.jobs())) {
            headroom(shop.after(set).orElseThrow(), psi)
                    .ifPresent(least -> kept.computeIfAbsent(set.size(), size -> new java.util.HashMap<>())
                            .put(names(set), least));
        }
        Map<Set<String>, Double> smallest = kept.values().iterator().next();
        BuildVerdict.FirstLimit first = new JudgedBuild(
                        shop.unit(),
                        SetPressure.of(shop.unit(), psi * PSI).judgedDuties().stream()
                                .map(duty -> Judgement.of(SetPressure.of(shop.unit(), psi * PSI), duty, SPEEDS))
                                .toList())
                .verdict()
                .first()
                .orElseThrow();
        assertEquals(
                new Judgement.Key(
                        first.duty(), first.margin().kind(), first.margin().part()),
                study.before().failing().get(0),
                "what fails first is what the verdict on the build names");
        JobStudy.JobSet chosen = study.chosen().orElseThrow();
        Set<Set<String>> found = Stream.concat(Stream.of(chosen), study.equal().stream())
                .map(set -> names(set.jobs()))
                .collect(Collectors.toSet());
        assertTrue(chosen.jobs().size() > 0, "the worn build does not keep every limit");
        assertEquals(smallest.keySet(), found, "every set of the smallest number that keeps every limit");
        double most = smallest.values().stream().max(Double::compare).orElseThrow();
        assertEquals(most, smallest.get(names(chosen.jobs())), 1e-9, "the one with the largest least headroom");
        assertEquals(most, chosen.headroom(), 1e-6);
    }

    @ParameterizedTest
    @CsvSource({"crescent-four, 150"})
    void theCheapestSetMayHaveMoreJobsThanTheSmallest(String circuit, double psi) {
        Workshop shop = shop(circuit);
        JobStudy plain = study(shop, psi);
        Set<String> dear = names(plain.chosen().orElseThrow().jobs());
        Map<Job, Job> priced = new java.util.LinkedHashMap<>();
        for (Job job : shop.jobs()) {
            double price = dear.contains(job.name()) && !job.name().equals("pump") ? 1000 : 10;
            priced.put(new Job(job.name(), "", OptionalDouble.of(1), OptionalDouble.of(price)), job);
        }
        Workshop costly = new Workshop(
                shop.unit(),
                List.copyOf(priced.keySet()),
                done -> shop.rework().after(done.stream().map(priced::get).toList()));
        JobStudy study = study(costly, psi);
        JobStudy.JobSet chosen = study.chosen().orElseThrow();
        assertEquals(JobCost.PRICE, study.measure());
        assertTrue(chosen.jobs().size() > dear.size(), chosen.jobs().toString());
        assertTrue(study.measure().cost(chosen.jobs()) < 1000);
        assertEquals(dear, names(study.fewest().orElseThrow().jobs()));
    }

    @ParameterizedTest
    @CsvSource({"shuttle-five, 300"})
    void whereNoSetKeepsEveryLimitTheHighestPressureOfAllJobsIsSaid(String circuit, double psi) {
        Workshop shop = shop(circuit);
        JobStudy study = study(shop, psi);
        assertTrue(study.chosen().isEmpty());
        JobStudy.Ceiling ceiling = study.ceiling().orElseThrow();
        double highest = ceiling.pressure().orElseThrow();
        Transmission all = shop.after(shop.jobs()).orElseThrow();
        assertTrue(highest < psi * PSI);
        assertTrue(headroom(all, highest / PSI).isPresent(), "holds there");
        assertTrue(headroom(all, 1.002 * highest / PSI).isEmpty(), "fails a little above");
        assertTrue(
                failing(SetPressure.of(all, 1.002 * highest))
                        .contains(ceiling.endedBy().orElseThrow()),
                "by the limit that is named");
    }

    private static Workshop shop(String circuit) {
        DescribedCircuit read = CircuitReader.read(Library.text(circuit).orElseThrow(), circuit)
                .circuit()
                .orElseThrow();
        Adjustable worn = read.adjustable("worn");
        Workshop whole = JobPlace.workshop(worn);
        return new Workshop(whole.unit(), whole.jobs().subList(0, JOBS), whole.rework());
    }

    private static JobStudy study(Workshop shop, double psi) {
        return JobStudy.of(
                shop.setTo(psi * PSI, SetPressure.By.COMMAND_AND_SPRING),
                SetPressure.By.COMMAND_AND_SPRING,
                shop.unit().duties().get(0),
                SPEEDS,
                SPEEDS,
                () -> {});
    }

    /** The least headroom of a unit at a set pressure, every duty judged from cold; empty where a limit fails. */
    private static Optional<Double> headroom(Transmission unit, double psi) {
        Transmission set = SetPressure.of(unit, psi * PSI);
        double least = Double.POSITIVE_INFINITY;
        for (var duty : set.duties()) {
            Judgement judged = Judgement.of(set, duty, SPEEDS);
            boolean keeps = judged.known()
                    && judged.dragging().isEmpty()
                    && judged.margins().stream().noneMatch(margin -> margin.verdict() == Margin.Verdict.FAILS);
            if (!keeps) {
                return Optional.empty();
            }
            least = Math.min(least, judged.least().map(Margin::headroom).orElse(least));
        }
        return Optional.of(least);
    }

    private static Set<Judgement.Key> failing(Transmission unit) {
        Set<Judgement.Key> failing = new HashSet<>();
        for (var duty : unit.duties()) {
            Judgement.of(unit, duty, SPEEDS).margins().stream()
                    .filter(margin -> margin.verdict() == Margin.Verdict.FAILS)
                    .forEach(margin -> failing.add(Judgement.Key.of(duty, margin)));
        }
        return failing;
    }

    private static List<List<Job>> all(List<Job> jobs) {
        List<List<Job>> sets = new ArrayList<>();
        for (int set = 0; set < 1 << jobs.size(); set++) {
            int bits = set;
            sets.add(jobs.stream()
                    .filter(job -> (bits >> jobs.indexOf(job) & 1) == 1)
                    .toList());
        }
        return sets;
    }

    private static Set<String> names(List<Job> jobs) {
        return jobs.stream().map(Job::name).collect(Collectors.toSet());
    }
}
