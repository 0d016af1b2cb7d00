package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.geartrain.Link;
import hotidle.network.Network;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Job;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import hotidle.transmission.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Which jobs a build of ten nodes took to come from the worn one. */
class StageOfTenNodesTest {

    private static final Transmission WORN = unit(4, 8);
    private static final Transmission FRESH = unit(1, 8);

    private static final Map<String, List<String>> PARTS = Map.of(
            "pump", List.of("primary", "secondary"),
            "regulator", List.of("regulator"),
            "hub", List.of("hub"),
            "clean", List.of());

    private static final List<Job> JOBS =
            List.of(job("pump", 6), job("regulator", 1.5), job("hub", 3), job("clean", 1));

    private static Transmission unit(double wear, int surfaces) {
        return TenNodesWithTrain.unit(wear, surfaces, 500, TenNodesWithTrain.LEVEL);
    }

    private static Job job(String name, double hours) {
        return new Job(name, "", OptionalDouble.of(hours), OptionalDouble.empty());
    }

    private static Transmission made(Transmission from, String... parts) {
        Network network = from.network();
        for (String part : parts) {
            network = network.with(FRESH.network().part(part).orElseThrow());
        }
        return from.with(network, from.command());
    }

    private static final Workshop SHOP = new Workshop(
            WORN,
            JOBS,
            done -> Adjustable.fixed(made(
                    WORN,
                    done.stream().flatMap(job -> PARTS.get(job.name()).stream()).toArray(String[]::new))));

    private static List<String> names(StageJobs jobs) {
        return jobs.jobs().stream().map(Job::name).toList();
    }

    @Test
    void aJobIsTakenWhereAllOfItsPartsAreOtherOnes() {
        StageJobs both = StageJobs.of(SHOP, made(WORN, "regulator", "primary", "secondary"));
        assertEquals(
                List.of("pump", "regulator"),
                names(both),
                "in the order of the jobs; one that changes nothing is none");
        assertEquals(List.of(), both.parts());
        StageJobs half = StageJobs.of(SHOP, made(WORN, "primary"));
        assertEquals(List.of(), names(half));
        assertEquals(List.of("primary"), half.parts(), "half a pump is no job");
    }

    @Test
    void whatNoJobSaysIsNamed() {
        StageJobs jobs = StageJobs.of(SHOP, made(unit(4, 10), "hub", "bores"));
        assertEquals(List.of("hub"), names(jobs));
        assertEquals(Set.of("brake", "bores"), Set.copyOf(jobs.parts()));
    }

    @Test
    void theSameUnitTookNoJob() {
        StageJobs none = StageJobs.of(SHOP, WORN);
        assertEquals(new StageJobs(List.of(), List.of(), List.of()), none);
        assertEquals(Optional.of(0.0), none.hours());
    }

    @Test
    void hoursAddUpAndOfWhatHasNoPriceNoSumIsTold() {
        StageJobs jobs = StageJobs.of(SHOP, made(WORN, "hub", "regulator"));
        assertEquals(4.5, jobs.hours().orElseThrow(), 1e-12);
        assertTrue(jobs.price().isEmpty());
        List<Job> priced = new ArrayList<>(List.of(
                new Job("pump", "", OptionalDouble.empty(), OptionalDouble.of(300)),
                new Job("hub", "", OptionalDouble.of(2), OptionalDouble.of(150))));
        StageJobs sold = new StageJobs(priced, List.of(), List.of());
        assertEquals(450, sold.price().orElseThrow(), 1e-12);
        assertTrue(sold.hours().isEmpty(), "nobody said how long the pump takes");
    }

    @Test
    void aJobThatCannotBeDoneIsNotTaken() {
        Workshop broken = new Workshop(WORN, JOBS.subList(2, 3), done -> {
            throw new IllegalArgumentException("a bore narrower than its valve");
        });
        StageJobs jobs = StageJobs.of(broken, made(WORN, "hub"));
        assertEquals(List.of(), names(jobs));
        assertEquals(List.of("hub"), jobs.parts());
    }

    @Test
    void anotherSetPressureIsNamedWithWhatBringsIt() {
        StageJobs.OtherSet both = StageJobs.of(SHOP, SetPressure.of(WORN, 200 * TenNodes.PSI))
                .set()
                .orElseThrow();
        assertEquals(200, both.after() / TenNodes.PSI, 1e-6);
        assertEquals(150, both.before() / TenNodes.PSI, 1e-6);
        assertTrue(both.spring() && both.command() && !both.areas(), both.toString());
        StageJobs.OtherSet spring = StageJobs.of(SHOP, SetPressure.of(WORN, 200 * TenNodes.PSI, SetPressure.By.SPRING))
                .set()
                .orElseThrow();
        assertTrue(spring.spring() && !spring.command(), spring.toString());
        assertTrue(StageJobs.of(SHOP, made(WORN, "hub")).set().isEmpty());
    }

    @Test
    void anotherShaftIsNamedAndOneThatWasNotThereBeforeToo() {
        Transmission strong = TenNodesWithTrain.unit(4, 8, 900, TenNodesWithTrain.LEVEL);
        assertEquals(List.of("input-shaft"), StageJobs.of(SHOP, strong).links());
        Transmission bare = TenNodesWithTrain.withGears(WORN, Optional.empty());
        Workshop before = new Workshop(bare, List.of(), done -> Adjustable.fixed(bare));
        List<String> all =
                WORN.gears().orElseThrow().links().stream().map(Link::name).toList();
        assertEquals(all, StageJobs.of(before, WORN).links());
        assertEquals(List.of(), StageJobs.of(SHOP, bare).links());
    }
}
