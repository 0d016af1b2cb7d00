package hotidle.circuits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.part.AnnularGap;
import hotidle.part.Bushing;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Job;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import hotidle.transmission.Workshop;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Jobs that a file names do to a build what the same changes in a build of its own would do. */
class JobsTest {

    private static final String BENCH = Library.text("valve-body-bench").orElseThrow();

    private static String withJobs(String jobs) {
        return BENCH.replace("\nbuilds:\n", "\njobs:\n" + jobs + "builds:\n");
    }

    private static Workshop shop(String text, String build) {
        return CircuitReader.read(text, "bench.yaml")
                .circuit()
                .orElseThrow()
                .workshop(build)
                .orElseThrow();
    }

    private static double bore(Transmission unit, String part) {
        return ((AnnularGap) unit.network().part(part).orElseThrow().part())
                .fit()
                .outer();
    }

    @Test
    void jobsAddUpOnTopOfTheBuildAndLeaveOtherBoresAsTheyAre() {
        Workshop shop = shop(withJobs("""
                          shift: {time: 90 min, price: 120, changes: {shift-*.bore: {to: new, because: sleeved}}}
                          lockup: {changes: {lockup.bore: {to: 14.030 mm, because: reamed}}}
                        """), "measured");
        List<Job> jobs = shop.jobs();
        assertEquals(new Job("shift", "", OptionalDouble.of(1.5), OptionalDouble.of(120)), jobs.get(0));
        Transmission one = shop.after(jobs.subList(0, 1)).orElseThrow();
        assertEquals(11.018e-3, bore(one, "shift-1-2"), 1e-12);
        assertEquals(14.050e-3, bore(one, "lockup"), 1e-12);
        Transmission both = shop.after(jobs).orElseThrow();
        assertEquals(11.018e-3, bore(both, "shift-4-5"), 1e-12);
        assertEquals(14.030e-3, bore(both, "lockup"), 1e-12);
        assertEquals(bore(shop.unit(), "manual-front"), bore(both, "manual-front"), 0);
        assertSame(shop.unit(), shop.after(List.of()).orElseThrow(), "nothing done");
    }

    @Test
    void jobsAreDoneInTheOrderOfTheFileHoweverTheyAreNamed() {
        Workshop shop = shop(withJobs("""
                          ream: {changes: {lockup.bore: {to: 14.030 mm, because: reamed}}}
                          sleeve: {changes: {lockup.bore: {to: 14.010 mm, because: sleeved after it}}}
                        """), "measured");
        assertEquals(shop.jobs(), shop.jobs(List.of("sleeve", "ream")));
        assertEquals(
                14.010e-3, bore(shop.after(shop.jobs(List.of("sleeve", "ream"))).orElseThrow(), "lockup"), 1e-12);
        assertEquals(List.of(), shop.jobs(List.of("nosuch")));
    }

    @Test
    void whatIsDoneForGoodIsBeneathTheJobsThatAreLeft() {
        Workshop shop = shop(withJobs("""
                          shift: {changes: {shift-*.bore: {to: new, because: sleeved}}}
                          lockup: {changes: {lockup.bore: {to: 14.030 mm, because: reamed}}}
                        """), "measured");
        Workshop done = shop.done(shop.jobs().subList(1, 2));
        assertEquals(14.030e-3, bore(done.unit(), "lockup"), 1e-12);
        assertEquals(shop.jobs().subList(0, 1), done.jobs(), "what is done is no job any more");
        Transmission both = done.after(done.jobs()).orElseThrow();
        assertEquals(14.030e-3, bore(both, "lockup"), 1e-12);
        assertEquals(11.018e-3, bore(both, "shift-4-5"), 1e-12);
        assertSame(shop, shop.done(List.of()), "nothing done");
        assertEquals(
                "sleeved",
                done.named("sleeved").after(done.jobs()).orElseThrow().build());
    }

    /** Nobody need measure a bore that was brought to a size; those of others stay as they were known. */
    @Test
    void aBoreThatAJobHasMadeIsKnown() {
        Workshop shop =
                shop(withJobs("  lockup: {changes: {lockup.bore: {to: 14.030 mm, because: reamed}}}\n"), "fresh");
        Adjustable after = shop.rework().after(shop.jobs());
        WearSize made = after.dimension("lockup.bore").orElseThrow();
        assertEquals(14.030e-3, made.value(), 1e-12);
        assertEquals(WearSize.Origin.MADE, made.origin());
        assertEquals(
                WearSize.Origin.WRITTEN,
                after.dimension("shift-1-2.bore").orElseThrow().origin());
        Transmission worn = after.with(Map.of("shift-1-2.bore", 11.05e-3)).orElseThrow();
        assertEquals(14.030e-3, bore(worn, "lockup"), 1e-12, "what wears then wears on top of it");
    }

    /** A bushing of another material is no size; a job changes it all the same. */
    @Test
    void aJobMayChangeWhatIsNoNumber() {
        Workshop shop = CircuitReader.read(Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
                .circuit()
                .orElseThrow()
                .workshop("worn")
                .orElseThrow();
        List<Job> bushed = shop.jobs().stream()
                .filter(job -> job.name().equals("hub-bushed"))
                .toList();
        Bushing before = (Bushing)
                shop.unit().network().part("hub-bushing").orElseThrow().part();
        Bushing after = (Bushing) shop.after(bushed)
                .orElseThrow()
                .network()
                .part("hub-bushing")
                .orElseThrow()
                .part();
        assertTrue(after.permissibleLoad() > 2 * before.permissibleLoad(), "babbitt bears more than bare die cast");
    }

    @Test
    void aFaultOfAJobIsToldWhereItStandsWhetherOrNotItIsDone() {
        String text = withJobs("  shift: {changes: {shift-9-9.bore: {to: new, because: sleeved}}}\n");
        ReadCircuit read = CircuitReader.read(text, "bench.yaml");
        assertTrue(read.circuit().isEmpty());
        assertTrue(
                read.problems().get(0).text().contains("change 'shift-9-9.bore' matches no part"),
                read.problems().toString());
    }

    @Test
    void aFileWithoutJobsNamesNone() {
        assertTrue(CircuitReader.read(BENCH, "bench.yaml")
                .circuit()
                .orElseThrow()
                .workshop("measured")
                .isEmpty());
    }
}
