package hotidle.circuits;

import static hotidle.circuits.Golden.resource;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.part.AnnularGap;
import hotidle.part.Part;
import hotidle.transmission.Transmission;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Short forms: a part that is like another, a file that is based on another. */
class LikeTest {

    private static DescribedCircuit good(ReadCircuit read) {
        assertEquals(List.of(), read.problems());
        return read.circuit().orElseThrow();
    }

    private static Part part(Transmission unit, String name) {
        return unit.network().part(name).orElseThrow().part();
    }

    private static final String BORE_3 = "  bore-3: {like: bore-1, bore: {measured: 14.050 mm}}\n  plate: ";

    @Test
    void aPartHasAllKeysOfTheOneItIsLikeButItsOwn() throws IOException {
        DescribedCircuit circuit = good(withBore3());
        AnnularGap one = (AnnularGap) part(circuit.unit("worn"), "bore-1");
        AnnularGap like = (AnnularGap) part(circuit.unit("worn"), "bore-3");
        assertEquals(0.014058, one.fit().outer());
        assertEquals(0.014050, like.fit().outer());
        assertEquals(one.length(), like.length());
        assertEquals(one.eccentricity(), like.eccentricity());
        assertEquals(part(circuit.unit("fresh"), "bore-1"), part(circuit.unit("fresh"), "bore-3"));
    }

    private static ReadCircuit withBore3() throws IOException {
        return CircuitReader.read(
                resource("every-kind.yaml")
                        .replace("bore-*.bore: {to: measured", "bore-1.bore: {to: measured")
                        .replace(
                                "bore-1.bore: {to: measured, because: worn}",
                                "bore-1.bore: {to: measured, because: worn}\n"
                                        + "      bore-3.bore: {to: measured, because: worn}")
                        .replace("\n  plate: ", "\n" + BORE_3),
                "x.yaml");
    }

    @Test
    void aBuildChangesAPartButNotThoseThatAreLikeIt() throws IOException {
        DescribedCircuit circuit = good(withBore3());
        assertEquals(
                0.014022,
                ((AnnularGap) part(circuit.unit("mended"), "bore-1")).fit().outer());
        assertEquals(
                0.014050,
                ((AnnularGap) part(circuit.unit("mended"), "bore-3")).fit().outer());
    }

    private static final BaseFiles EVERY_KIND = (name, from) -> {
        try {
            return name.equals("every-kind.yaml")
                    ? java.util.Optional.of(new BaseFiles.FoundFile(
                            name, resource(name).replace("bore-*.bore: {to: measured", "bore-1.bore: {to: measured")))
                    : java.util.Optional.empty();
        } catch (IOException impossible) {
            throw new java.io.UncheckedIOException(impossible);
        }
    };

    private static ReadCircuit based(String text) {
        return CircuitReader.read(text, "mine.yaml", EVERY_KIND, java.util.Optional.empty());
    }

    @Test
    void aFileHasAllThatItsBaseHasButForWhatStandsInIt() {
        DescribedCircuit circuit = good(based("""
                circuit: mine
                based-on: every-kind.yaml
                leave-out: [parts.leak-off, builds.worn, builds.raised, builds.mended]
                parts:
                  bore-1: {bore: {measured: 14.060 mm}}
                  bore-4: {like: bore-1, from: low}
                builds:
                  mine: {on: fresh, changes: {bore-1.bore: {to: measured, because: worn}}}
                """));
        assertEquals("mine", circuit.name());
        assertEquals(
                List.of("fresh", "mine"),
                circuit.builds().stream().map(DescribedCircuit.Build::name).toList());
        assertEquals(
                0.014060,
                ((AnnularGap) part(circuit.unit("mine"), "bore-1")).fit().outer());
        assertEquals(
                0.014022,
                ((AnnularGap) part(circuit.unit("mine"), "bore-4")).fit().outer());
        assertTrue(circuit.unit().network().part("leak-off").isEmpty());
    }

    private static String only(ReadCircuit read) {
        assertEquals(1, read.problems().size(), read.problems().toString());
        return read.problems().get(0).headline();
    }

    @Test
    void faultsStandAtTheirPlaceInTheFileThatHasThem() {
        assertEquals(
                "mine.yaml:2:11: error: the circuit is based on 'every-knd', which is neither a file nor a ready circuit",
                only(based("circuit: mine\nbased-on: every-knd\n")));
        assertEquals(
                "mine.yaml:2:28: error: the circuit leaves out 'parts.bore-9', which its base does not have",
                only(based("based-on: every-kind.yaml\nleave-out: [builds.raised, parts.bore-9]\n")));
        assertTrue(based("based-on: every-kind.yaml\nleave-out: [nodes.lube]\n").problems().stream()
                .anyMatch(problem ->
                        problem.headline().startsWith("every-kind.yaml:112:47: error: cooler 'cooler' has to 'lube'")));
        assertEquals(
                "leave out one based-on",
                CircuitReader.read(
                                "based-on: me",
                                "me",
                                (name, from) -> java.util.Optional.of(new BaseFiles.FoundFile(name, "based-on: me")),
                                java.util.Optional.empty())
                        .problems()
                        .get(0)
                        .mend());
    }

    @Test
    void aReadyCircuitCanBeTheBase() {
        DescribedCircuit circuit = good(CircuitReader.read(
                "circuit: mine\nbased-on: shuttle-five\nparts: {relief: {lift: 2.6 mm}}\n", "mine.yaml"));
        DescribedCircuit base =
                good(CircuitReader.read(Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml"));
        assertEquals(base.builds(), circuit.builds());
    }
}
