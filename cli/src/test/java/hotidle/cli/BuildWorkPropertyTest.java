package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.answer.format.Quantity;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Jobs, then a set pressure, then faults leave the unit that a file has whose build says all of it by hand. */
class BuildWorkPropertyTest {

    private static final String FILE = Library.text("shuttle-five").orElseThrow();

    /** What jobs change, as a build writes it. */
    private static final Map<Integer, String> CHANGES = Map.of(
            0,
            "regulator.bore: {to: new, because: bore sleeved}",
            1,
            "\"plate-*.feeler\": {to: new, because: machined flat}",
            2,
            "\"*-rings.end-gap\": {to: new, because: new rings}, \"*-rings.radial-clearance\": {to: new, because: new rings},"
                    + " \"*-rings.side-gap\": {to: new, because: new rings}");

    private static final List<String> JOBS = List.of("regulator", "plate", "rings");

    static BuildWork asked(String... words) {
        return Options.of(new AfterWork(), words).asked();
    }

    static DescribedCircuit circuit(String text) {
        return CircuitReader.read(text, "shuttle-five.yaml").circuit().orElseThrow();
    }

    private static final DescribedCircuit CIRCUIT = circuit(FILE);

    private static Transmission byHand(Set<Integer> jobs, int psi, int tenths) {
        List<String> changes = new ArrayList<>(jobs.stream().map(CHANGES::get).toList());
        changes.add("converter-out-orifice.diameter: {to: " + millimetres(tenths) + " mm, because: a wrong hole}");
        String build = "  by-hand: {on: worn, because: all of it, set-pressure: " + psi + " psi, changes: {"
                + String.join(", ", changes) + "}}\n";
        return circuit(FILE.replace("\nbuilds:\n", "\nbuilds:\n" + build)).unit("by-hand");
    }

    private static String millimetres(int tenths) {
        return String.format(Locale.ROOT, "%.1f", tenths / 10.0);
    }

    @Property(tries = 4, seed = "1")
    void jobsThenSetPressureThenFaultsAreTheBuildWrittenByHand(
            @ForAll @Size(max = 3) Set<@IntRange(min = 0, max = 2) Integer> jobs,
            @ForAll @IntRange(min = 120, max = 260) int psi,
            @ForAll @IntRange(min = 12, max = 40) int tenths) {
        List<String> words = new ArrayList<>(List.of(
                "--fault", "orifice-wrong@converter-out-orifice:" + millimetres(tenths) + "mm", "--set", psi + "psi"));
        jobs.forEach(job -> words.addAll(List.of("--job", JOBS.get(job))));
        Adjustable worn = CIRCUIT.adjustable("worn");
        Transmission after = asked(words.toArray(String[]::new))
                .on(CIRCUIT, List.of(worn), Quantity.UnitSystem.SHOP)
                .first()
                .unit();
        Transmission byHand = byHand(jobs, psi, tenths);
        assertEquals(byHand.network().parts(), after.network().parts());
        assertEquals(byHand.command(), after.command());
        assertEquals(byHand.duties(), after.duties());
    }
}
