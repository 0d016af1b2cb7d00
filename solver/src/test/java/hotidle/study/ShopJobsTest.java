package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.network.Network;
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
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The worn unit of ten nodes and four jobs, each of which makes some parts as new. */
class ShopJobsTest {

    private static final double PSI = TenNodes.PSI;
    private static final List<Double> SPEEDS = List.of(650 / 60.0, 25.0, 50.0);
    private static final Transmission WORN = TenNodes.worn(4);
    private static final Transmission FRESH = TenNodes.worn(1);

    private static final Map<String, List<String>> PARTS = Map.of(
            "pump", List.of("primary", "secondary"),
            "regulator", List.of("regulator"),
            "bores", List.of("bores"),
            "hub", List.of("hub"));

    private static Transmission after(List<Job> done) {
        Network network = WORN.network();
        for (Job job : done) {
            for (String part : PARTS.get(job.name())) {
                network = network.with(FRESH.network().part(part).orElseThrow());
            }
        }
        return WORN.with(network, WORN.command());
    }

    private static Workshop shop(Map<String, Double> prices) {
        List<Job> jobs = List.of("pump", "regulator", "bores", "hub").stream()
                .map(name -> new Job(
                        name,
                        "",
                        OptionalDouble.empty(),
                        prices.containsKey(name) ? OptionalDouble.of(prices.get(name)) : OptionalDouble.empty()))
                .toList();
        return new Workshop(WORN, jobs, done -> Adjustable.fixed(after(done)));
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

    private static boolean keeps(Transmission unit, double psi) {
        Transmission set = SetPressure.of(unit, psi * PSI);
        return set.duties().stream()
                .map(duty -> Judgement.of(set, duty, SPEEDS))
                .allMatch(judged -> judged.known()
                        && judged.margins().stream().noneMatch(margin -> margin.verdict() == Margin.Verdict.FAILS));
    }

    private static Set<String> names(List<Job> jobs) {
        return jobs.stream().map(Job::name).collect(Collectors.toSet());
    }

    /** Where nothing but what it takes is asked, the same jobs are chosen as where each is told. */
    @Test
    void whatItTakesIsTheSameWithoutTheTableOfEachJob() {
        for (double psi : new double[] {150, 200, 400}) {
            Workshop shop = shop(Map.of()).setTo(psi * PSI, SetPressure.By.COMMAND_AND_SPRING);
            JobStudy needed = JobStudy.needed(
                    shop,
                    SetPressure.By.COMMAND_AND_SPRING,
                    shop.unit().duties().get(0),
                    SPEEDS,
                    SPEEDS);
            JobStudy whole = study(shop(Map.of()), psi);
            assertEquals(
                    whole.chosen().map(set -> names(set.jobs())),
                    needed.chosen().map(set -> names(set.jobs())),
                    psi + " psi");
            assertEquals(whole.ceiling(), needed.ceiling());
            assertEquals(List.of(), needed.alone());
            assertEquals(shop.jobs().size(), whole.alone().size());
        }
    }

    @Test
    void theSetsOfFewestJobsAreThoseFoundByTryingEverySet() {
        Workshop shop = shop(Map.of());
        JobStudy study = study(shop, 150);
        int fewest = study.chosen().orElseThrow().jobs().size();
        Set<Set<String>> wanted = new HashSet<>();
        for (int bits = 0; bits < 16; bits++) {
            List<Job> set = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                if ((bits >> i & 1) == 1) {
                    set.add(shop.jobs().get(i));
                }
            }
            boolean keeps = set.size() <= fewest && keeps(shop.after(set).orElseThrow(), 150);
            assertTrue(!keeps || set.size() == fewest, "a smaller set keeps every limit: " + names(set));
            if (keeps) {
                wanted.add(names(set));
            }
        }
        Set<Set<String>> found = new HashSet<>();
        found.add(names(study.chosen().orElseThrow().jobs()));
        study.equal().forEach(set -> found.add(names(set.jobs())));
        assertTrue(fewest > 0, "the worn unit does not hold its line at hot idle");
        assertEquals(wanted, found);
    }

    @Test
    void wherePricesAreGivenTheCheapestSetIsChosen() {
        Map<String, Double> prices = Map.of("pump", 500.0, "regulator", 40.0, "bores", 300.0, "hub", 60.0);
        JobStudy study = study(shop(prices), 150);
        assertEquals(JobCost.PRICE, study.measure());
        double cost = study.measure().cost(study.chosen().orElseThrow().jobs());
        double all = study.measure().cost(shop(prices).jobs());
        assertTrue(cost < all, cost + " of " + all);
    }

    @Test
    void whereAllJobsDoNotKeepAPressureTheHighestThatTheyKeepIsSaid() {
        Workshop shop = shop(Map.of());
        JobStudy study = study(shop, 330);
        assertTrue(study.chosen().isEmpty());
        double highest = study.ceiling().orElseThrow().pressure().orElseThrow();
        Transmission all = shop.after(shop.jobs()).orElseThrow();
        assertTrue(keeps(all, highest / PSI), "holds there");
        assertTrue(!keeps(all, 1.005 * highest / PSI), "fails a little above");
    }
}
