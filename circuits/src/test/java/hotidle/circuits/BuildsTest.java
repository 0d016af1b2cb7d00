package hotidle.circuits;

import static hotidle.circuits.Golden.resource;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hotidle.part.AnnularGap;
import hotidle.part.Bushing;
import hotidle.part.FlatGap;
import hotidle.part.Orifice;
import hotidle.part.Part;
import hotidle.part.SpoolValve;
import hotidle.transmission.Command;
import hotidle.transmission.Transmission;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class BuildsTest {

    private static final double PSI = 4.4482216152605 / 0.00064516;

    private static DescribedCircuit circuit;

    @BeforeAll
    static void read() throws IOException {
        circuit = CircuitReader.read(resource("every-kind.yaml"), "every-kind.yaml")
                .circuit()
                .orElseThrow();
    }

    private static <T extends Part> T part(Class<T> kind, String build, String name) {
        return kind.cast(circuit.unit(build).network().part(name).orElseThrow().part());
    }

    @Test
    void buildsAreListedInTheOrderOfTheFileWithTheirReasons() {
        assertEquals(
                List.of("fresh", "worn", "raised", "mended"),
                circuit.builds().stream().map(DescribedCircuit.Build::name).toList());
        DescribedCircuit.Build raised = circuit.builds().get(2);
        assertEquals(Optional.of("worn"), raised.on());
        assertEquals(
                List.of(new DescribedCircuit.ChangeLine("set-pressure", "to 270 psi", "to hold more")),
                raised.changes());
        assertEquals(circuit.unit("fresh"), circuit.unit());
    }

    @Test
    void aStarChangesEveryPartThatWasMeasuredAndLeavesTheOthersNew() {
        assertEquals(0.014058, part(AnnularGap.class, "worn", "bore-1").fit().outer());
        assertEquals(0.01102, part(AnnularGap.class, "worn", "bore-2").fit().outer());
        assertEquals(0.014022, part(AnnularGap.class, "fresh", "bore-1").fit().outer());
    }

    @Test
    void aChangeReachesKeysWithinKeysAndKeysLeftToTheirDefault() {
        SpoolValve regulator = part(SpoolValve.class, "worn", "regulator");
        assertEquals(0.0015, regulator.openings().get(1).edge());
        assertEquals(0.0004, regulator.openings().get(0).edge());
        assertEquals(220e-6, regulator.areas().get(0).area(), 1e-18);
        assertEquals(0.0016, part(Orifice.class, "worn", "leak-off").diameter(), 1e-18);
        assertEquals(90, part(Bushing.class, "worn", "hub").weight());
        assertEquals(0.0015 * 0.0254, part(FlatGap.class, "worn", "plate").entry(), 1e-18);
    }

    @Test
    void aBuildOnAnotherHasItsChangesAndMayGoBackToNew() {
        assertEquals(0.014022, part(AnnularGap.class, "mended", "bore-1").fit().outer());
        assertEquals(
                0.0015,
                part(SpoolValve.class, "mended", "regulator").openings().get(1).edge());
        assertEquals(
                0.001, part(SpoolValve.class, "mended", "regulator").stuck().getAsDouble());
    }

    @Test
    void aSetPressureBalancesTheRegulatorAfterAllChanges() {
        Transmission raised = circuit.unit("raised");
        Command command = raised.command();
        assertEquals(270 * PSI, command.pilot().orElseThrow().lineByTorque().highest(), 1e-6);
        assertEquals(270 * PSI, command.setPressure(raised.network(), command.control("first", 270 * PSI)), 1e-6);
        assertEquals(0.014058, part(AnnularGap.class, "raised", "bore-1").fit().outer());
    }

    @Test
    void aBuildMayReplaceOneTableOfTheCommand() {
        Command mended = circuit.unit("mended").command();
        assertEquals(200 * PSI, mended.pilot().orElseThrow().lineByTorque().at(400), 1e-6);
        assertEquals(
                circuit.unit("fresh").command().pilot().orElseThrow().pilotByLine(),
                mended.pilot().orElseThrow().pilotByLine());
    }

    @Test
    void aCommandTakesThePlaceOfASetPressureThatItStandsOn() throws IOException {
        String text = resource("every-kind.yaml") + """
                  back:
                    on: raised
                    command: {line-pressure: [[0 N.m, 90 psi]]}
                    because: a command of its own
                """;
        Transmission back =
                CircuitReader.read(text, "x.yaml").circuit().orElseThrow().unit("back");
        assertEquals(
                90 * PSI, back.command().pilot().orElseThrow().lineByTorque().highest(), 1e-6);
        assertEquals(
                124,
                ((SpoolValve) back.network().part("regulator").orElseThrow().part())
                        .spring()
                        .preload());
    }

    @Test
    void anUnknownBuildIsAProblemAtTheBuildsOfTheFile() {
        UnknownBuildException unknown = assertThrows(UnknownBuildException.class, () -> circuit.unit("wornn"));
        assertEquals("""
                every-kind.yaml:148:1: error: there is no build 'wornn'
                  builds:
                  ^^^^^^
                  mend: did you mean worn? valid: fresh, worn, raised, mended""", unknown.problem().text());
    }

    @Test
    void aFileWithoutBuildsHasOneAsWritten() throws IOException {
        String text = resource("every-kind.yaml");
        String without = text.substring(0, text.indexOf("\nbuilds:") + 1);
        DescribedCircuit plain = CircuitReader.read(without, "x.yaml").circuit().orElseThrow();
        assertEquals("as-written", plain.builds().get(0).name());
        assertEquals(circuit.unit("fresh").network(), plain.unit().network());
    }
}
