package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hotidle.circuits.kind.Kinds;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** One part on its own, of every kind and in every form. */
class PartCommandTest {

    private static final double PSI = 6894.757293168361;

    /** Of every kind at least one, as a user would type it. */
    static final List<String> COMMANDS = List.of(
            "orifice diameter=2mm --drop 150psi",
            "annular-gap bore=14.06mm valve=14.00mm length=8mm --drop 150psi",
            "flat-gap width=160mm length=4mm gap=6um --drop 150psi",
            "face-gap inner-diameter=50mm outer-diameter=70mm width=12mm clearance=0.05mm --drop 150psi",
            "sealing-ring diameter=60mm width=2.4mm end-gap=0.2mm radial-clearance=0.1mm contact=2mm --drop 150psi",
            "passage diameter=8mm length=1.2m --drop 5psi",
            "filter flow=60L/min drop=0.1bar viscosity=6mPa.s rise=60mm --drop 1psi",
            "cooler flow=8L/min drop=1bar viscosity=8mPa.s --drop 20psi",
            "lube-branch diameter=1.5mm --drop 10psi",
            "lube-branch bore=35.08mm valve=35mm length=25mm --drop 10psi",
            "pump-inlet --at node=-0.2bar",
            "pump-chamber displacement=18cm3/rev width=12mm face-clearance=0.04mm face-inner-diameter=20mm face-outer-diameter=32mm tip-diameter=84mm tip-clearance=0.07mm tip-land=1.5mm sealing-teeth=4 speed=800rpm --at to=150psi",
            "crescent-pump module=3mm inner-teeth=23 ring-teeth=31 tip-diameter=75mm ring-tip-diameter=87mm ring-diameter=105mm width=12mm face-clearance=0.04mm face-inner-diameter=40mm face-outer-diameter=100mm inner-tip-clearance=0.1mm ring-tip-clearance=0.12mm body-clearance=0.08mm body-land=30mm tip-land=1.5mm sealing-teeth=3 speed=800rpm --at to=150psi",
            "vane-pump ring-diameter=78mm tip-diameter=68mm greatest-eccentricity=3mm width=18mm control-area=6cm2 spring-rate=40N/mm preload=200N face-clearance=0.03mm face-inner-diameter=40mm face-outer-diameter=78mm speed=800rpm --at to=150psi --at control=80psi",
            "bushing bore=50.07mm hub=50mm length=17mm load=1500N speed=2000rpm",
            "spool-valve bore=20.026mm valve=20mm openings.bypass.from=line openings.bypass.to=sump openings.bypass.edge=1mm areas.line.node=line areas.line.area=200mm2 areas.line.acts=open areas.boost.node=boost areas.boost.area=150mm2 areas.boost.acts=close spring-rate=8N/mm preload=120N stops=[0mm,4mm] --at line=130psi --at boost=20psi",
            "selector passages.feed.from=in passages.feed.to=out passages.feed.diameter=3mm --at in=150psi --at out=140psi",
            "check-valve seat=10mm spring-rate=0.3N/mm cracking-pressure=5psi lift=3mm --drop 7psi",
            "relief-valve seat=10mm spring-rate=40N/mm cracking-pressure=400psi lift=2mm --drop 420psi",
            "solenoid feed-diameter=0.8mm exhaust-diameter=1.2mm command=60psi --at supply=100psi",
            "band piston-area=20cm2 return-force=200N drum-diameter=150mm wrap=320deg seal-diameter=50mm seal-gap=2um --drop 150psi",
            "clutch piston-area=150cm2 return-force=900N surfaces=14 lining-inner-diameter=130mm lining-outer-diameter=164mm seal-diameter=160mm seal-gap=2um --drop 150psi",
            "converter losses.off.flow=6L/min losses.off.drop=0.3bar losses.off.viscosity=5mPa.s losses.slipping.flow=6L/min losses.slipping.drop=2bar losses.slipping.viscosity=5mPa.s losses.on.flow=0.6L/min losses.on.drop=5bar losses.on.viscosity=5mPa.s charge-needed=30psi lockup-area=300cm2 lockup-radius=120mm --at from=60psi --at to=55psi");

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
    void everyKindIsTried() {
        Set<String> tried = COMMANDS.stream().map(PartCommandTest::kind).collect(Collectors.toSet());
        assertEquals(Set.copyOf(Kinds.words()), tried);
    }

    @Test
    void everyKindAnswersInEverySystemAndFormat() {
        for (String command : COMMANDS) {
            for (String units : List.of("shop", "metric", "si")) {
                for (String format : List.of("table", "csv", "json")) {
                    Run run = run(command, "--units", units, "--format", format);
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
        double q = 0;
        double drop = 150 * PSI;
        for (int i = 0; i < 50; i++) {
            double v = q / (Math.PI * 0.014 * c);
            q = Math.PI * 0.014 * c * c * c * 2.5 * (drop - 1.686 * 830 * v * v / 2) / (12 * 7.2e-3 * 0.008);
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
        double warm = 14.06e-3 * (1 + 24e-6 * 80) - 14e-3 * (1 + 12e-6 * 80);
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
