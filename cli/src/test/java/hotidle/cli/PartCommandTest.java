package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hotidle.circuits.kind.Kinds;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** One part on its own, of every kind and in every form. */
class PartCommandTest {

    private static final double PSI = 6894.757293168361;

    /** Of every kind one, as its declaration has it for an example, and the second form of a lube-branch. */
    static final List<String> COMMANDS = Stream.concat(
                    Kinds.ALL.stream()
                            .map(kind -> kind.word() + " " + kind.facts().example()),
                    Stream.of("lube-branch bore=35.08mm valve=35mm length=25mm --drop 10psi"))
            .toList();

    static Run run(String command, String... more) {
        return Run.of(Stream.concat(Stream.of(("part " + command).split(" ")), Stream.of(more))
                .toArray(String[]::new));
    }

    private static String kind(String command) {
        return command.substring(0, command.indexOf(' '));
    }

    static JsonNode json(String command) throws Exception {
        Run run = run(command, "--format", "json");
        assertEquals(HotIdle.DONE, run.code(), run.err());
        return new ObjectMapper().readTree(run.out());
    }

    /** The command that tries a kind. */
    static String command(String kind) {
        return COMMANDS.stream()
                .filter(command -> command.startsWith(kind + " "))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyKindAnswersInEverySystemAndFormat() {
        for (String command : COMMANDS) {
            for (String units : List.of("shop", "metric", "si")) {
                for (String format : List.of("table", "csv", "json")) {
                    Run run = run(command, "--units", units, "--format", format, "--full");
                    assertEquals(HotIdle.DONE, run.code(), command + run.err());
                    assertEquals("", run.err(), command);
                    assertTrue(run.out().contains("law") && run.out().contains("source"), run.out());
                    assertFalse(run.out().contains("NaN") || run.out().contains("null "), run.out());
                }
            }
        }
    }

    @Test
    void everyKindGivesLawSourceAndWarningsInJson() throws Exception {
        for (String command : COMMANDS) {
            JsonNode node = json(command);
            assertEquals(kind(command), node.get("part").textValue());
            assertTrue(node.get("law").textValue().length() > 20, command);
            assertTrue(node.get("source").textValue().length() > 20, command);
            assertTrue(node.get("warnings").isArray() && node.has("flow_m3_s") && node.has("reynolds"), command);
        }
    }

    /** q = π·d·c³·(1 + 1.5·ε²)·Δp/(12·μ·L) with c from the diameters, and the head 1.686·ρ·v²/2 of the ends taken off Δp. */
    @Test
    void annularGapMeetsTheHandFormula() throws Exception {
        JsonNode node = json("annular-gap bore=14.06mm valve=14.00mm length=8mm eccentricity=1 --drop 150psi"
                + " --viscosity 7.2mPa.s --density 830kg/m3");
        double c = 0.03e-3;
        double mean = 0.014 + c;
        double q = 0;
        double drop = 150 * PSI;
        for (int i = 0; i < 50; i++) {
            double v = q / (Math.PI * mean * c);
            q = Math.PI * mean * c * c * c * 2.5 * (drop - 1.686 * 830 * v * v / 2) / (12 * 7.2e-3 * 0.008);
        }
        assertEquals(q, node.get("flow_m3_s").doubleValue(), 1e-6 * q);
        assertEquals(
                2 * 830 * q / (Math.PI * 0.014 * 7.2e-3), node.get("reynolds").doubleValue(), 1e-5);
        assertEquals("laminar", node.get("regime").textValue());
        assertEquals(drop * q, node.get("power_w").doubleValue(), 1e-5 * drop * q);
        assertEquals(60e-6, node.get("diametral_clearance_warm_m").doubleValue(), 1e-12);
    }

    /** Aluminium around steel opens by 12 µm a metre and kelvin: 14 mm, 80 K, 13.4 µm (and the clearance itself by its share). */
    @Test
    void aBoreOfAluminiumOpensWhenItGetsWarm() throws Exception {
        JsonNode node = json(COMMANDS.get(1));
        double warm = 14.06e-3 * (1 + 21.8e-6 * 80) - 14e-3 * (1 + 12e-6 * 80);
        assertEquals(60e-6, node.get("diametral_clearance_as_measured_m").doubleValue(), 1e-12);
        assertEquals(warm, node.get("diametral_clearance_warm_m").doubleValue(), 1e-12);
    }

    /** Δp = ρ·q²/(2·Cd²·A²) + 24·μ·q/d³, Sampson's creeping flow beside the sharp edge. */
    @Test
    void orificeMeetsTheHandFormula() throws Exception {
        JsonNode node = json("orifice diameter=2mm cd=0.6 --drop 10bar --viscosity 8mPa.s --density 850kg/m3");
        double area = Math.PI * 1e-6;
        double a = 850 / (2 * 0.36 * area * area);
        double b = 24 * 8e-3 / 8e-9;
        double q = (-b + Math.sqrt(b * b + 4 * a * 10e5)) / (2 * a);
        assertEquals(q, node.get("flow_m3_s").doubleValue(), 1e-9 * q);
        assertEquals(4 * 850 * q / (Math.PI * 2e-3 * 8e-3), node.get("reynolds").doubleValue(), 1e-4);
        assertEquals("turbulent", node.get("regime").textValue());
    }

    /** S = μ·n·L·D·(R/c)²/W; at L/D = 1 the published chart has S = 0.121 at least film 0.4·c (tolerance: its own reading, 2 %). */
    @Test
    void bushingMeetsThePublishedChart() throws Exception {
        double mu = 0.02;
        double load = mu * 20 * 0.05 * 0.05 * Math.pow(0.025 / 50e-6, 2) / 0.121;
        JsonNode node = json("bushing bore=50.1mm hub=50mm length=50mm load=" + load + "N speed=1200rpm"
                + " --viscosity 20mPa.s --density 850kg/m3");
        assertEquals(0.121, node.get("sommerfeld").doubleValue(), 1e-9);
        assertEquals(0.4 * 50e-6, node.get("film_m").doubleValue(), 0.02 * 0.4 * 50e-6);
        assertEquals(load, node.get("load_n").doubleValue(), 1e-9 * load);
    }

    /** p·A = F0 + k·x with the one opening shut: (130 psi·200 mm² − 20 psi·150 mm² − 120 N)/8 N/mm before it begins to open. */
    @Test
    void spoolBalancesOrIsHeld() throws Exception {
        String valve = command("spool-valve").replace("--at line=130psi", "--at line=105psi");
        double force = PSI * (105 * 200e-6 - 20 * 150e-6) - 120;
        assertEquals(force / 8000, json(valve).get("position_m").doubleValue(), 2e-6);
        assertEquals(
                1.2e-3, json(valve + " --hold position=1.2mm").get("position_m").doubleValue());
    }
}
