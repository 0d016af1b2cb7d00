package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.network.Placed;
import hotidle.transmission.Job;
import hotidle.transmission.Workshop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class JobPlaceTest {

    private static JobPlace place(String part, Optional<String> regulator) {
        Placed placed = Fits.worn(3).unit().network().part(part).orElseThrow();
        return JobPlace.of(placed, regulator);
    }

    @Test
    void aChamberIsRestoredWithThePump() {
        assertEquals(JobPlace.PUMP, place("primary", Optional.empty()));
    }

    @Test
    void aBoreIsTheRegulatorsWhereItsValveRegulates() {
        assertEquals(JobPlace.REGULATOR, place("bores", Optional.of("bores")));
        assertTrue(place("bores", Optional.of("another")) != JobPlace.REGULATOR);
    }

    /** The hub's face is worn in the made unit whatever the wear of the rest. */
    @Test
    void fitsThatAreAsNewNeedNoJob() {
        assertEquals(
                List.of("hub-face"),
                JobPlace.workshop(Fits.worn(1)).jobs().stream().map(Job::about).toList());
    }

    /** Face, tip and scores of one chamber are one job: a shop restores a pump, not one face of it. */
    @Test
    void theFitsOfAChamberAreOneJobAndDoneTheyAreNew() {
        Workshop shop = JobPlace.workshop(Fits.worn(3));
        Job pump = shop.jobs().stream()
                .filter(job -> job.name().equals("pump"))
                .findFirst()
                .orElseThrow();
        assertEquals("primary", pump.about());
        assertEquals(
                Fits.worn(1).unit().network().part("primary").orElseThrow().part(),
                shop.after(List.of(pump))
                        .orElseThrow()
                        .network()
                        .part("primary")
                        .orElseThrow()
                        .part());
    }
}
