package hotidle.circuits.single;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.kind.Kind;
import hotidle.circuits.kind.Kinds;
import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Problem;
import hotidle.circuits.text.ProblemCode;
import hotidle.law.Bow;
import hotidle.network.Node;
import hotidle.part.AnnularGap;
import hotidle.part.Bushing;
import hotidle.part.Fit;
import hotidle.part.FlatGap;
import hotidle.part.Selector;
import hotidle.part.SpoolValve;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A part on its own is read by the declarations of the circuit language, and answers in the same form. */
class OnePartTest {

    private static final LibraryMaterials STOCK = LibraryMaterials.ofLibrary();

    private static ReadPart read(String kind, String... words) {
        return OnePart.read(kind, List.of(words), STOCK);
    }

    private static OnePart good(String kind, String... words) {
        ReadPart read = read(kind, words);
        return read.part().orElseThrow(() -> new AssertionError(read.problems()));
    }

    private static Problem only(String kind, String... words) {
        ReadPart read = read(kind, words);
        assertTrue(read.part().isEmpty());
        assertEquals(1, read.problems().size(), read.problems().toString());
        return read.problems().get(0);
    }

    @Test
    void valuesAreThoseOfAFileWithOrWithoutABlank() {
        AnnularGap gap = new AnnularGap(new Fit(0.01406, 0.014, 21.8e-6, 12e-6, 293.15), 0.008, 1);
        for (List<String> words : List.of(
                List.of("bore=14.06mm", "valve=14.00mm", "length=8mm"),
                List.of("bore=14.06 mm", "valve='14.00 mm'", "length=\"8 mm\""),
                List.of("bore=14.06", "mm", "valve=14.00", "mm", "length=8mm"),
                List.of("bore={new: 14.06 mm, limit: 14.1 mm}", "valve.new=14.00mm", "length=8mm"))) {
            OnePart part = good("annular-gap", words.toArray(String[]::new));
            assertEquals(gap, part.placed().part(), words.toString());
            assertEquals(List.of("from", "to"), part.ports());
            assertEquals(
                    Set.of("eccentricity", "bore-material", "valve-material", "measured-at"),
                    part.defaults().keySet());
        }
    }

    @Test
    void aValvesCompensationIsThatOfEachOfItsOpenings() {
        String[] words =
                ("bore=20.026mm valve=20mm openings.bypass.from=line openings.bypass.to=sump openings.bypass.edge=1mm"
                                + " openings.bypass.notches=4 openings.bypass.notch-width=2mm openings.bypass.notch-length=1mm"
                                + " areas.line.node=line areas.line.area=200mm2 areas.line.acts=open spring-rate=8N/mm preload=120N"
                                + " stops=[0mm,4mm] compensation=60%")
                        .split(" ");
        SpoolValve valve = (SpoolValve) good("spool-valve", words).placed().part();
        assertEquals(
                List.of(0.6, 0.6),
                valve.openings().stream().map(SpoolValve.Opening::compensation).toList());
    }

    @Test
    void aFeelerIsTheHeightMidwayBetweenBolts() {
        FlatGap gap = (FlatGap) good("flat-gap", "width=160mm", "length=4mm", "gap=4um", "feeler=35um")
                .placed()
                .part();
        assertEquals(new FlatGap(0.16, 4e-6, 4e-6, 31e-6, Bow.BETWEEN, 0.004), rounded(gap));
        for (String wrong : List.of("feeler=3um", "bow=5um")) {
            List<String> words = List.of("width=160mm", "length=4mm", "gap=4um", "feeler=35um", wrong);
            String key = wrong.substring(0, wrong.indexOf('='));
            ReadPart read = read(
                    "flat-gap",
                    words.stream()
                            .filter(word -> word.equals(wrong) || !word.startsWith(key + "="))
                            .toArray(String[]::new));
            assertTrue(read.part().isEmpty(), wrong);
        }
    }

    private static FlatGap rounded(FlatGap gap) {
        return new FlatGap(
                gap.width(), gap.entry(), gap.exit(), Math.round(gap.bow() * 1e9) / 1e9, gap.shape(), gap.length());
    }

    /** Four square notches of 2 mm by 1 mm in a land of 20 mm: their share of the ring opens 1 mm before the rest of it. */
    @Test
    void aNotchedLandOpensInTwoSteps() {
        SpoolValve valve = (SpoolValve) good(
                        "spool-valve",
                        "bore=20mm",
                        "valve=19.97mm",
                        "openings.bypass={from: line, to: sump, edge: 1 mm, notches: 4, notch-width: 2 mm, notch-length: 1 mm}",
                        "areas.line={node: line, area: 200 mm2, acts: open}",
                        "spring-rate=8N/mm",
                        "preload=120N",
                        "stops=[0mm,4mm]")
                .placed()
                .part();
        SpoolValve.Opening notches = valve.openings().get(0);
        SpoolValve.Opening ring = valve.openings().get(1);
        assertEquals("bypass", notches.name());
        assertEquals(8e-3, notches.width(), 1e-15);
        assertEquals(1e-3, notches.edge());
        assertEquals("bypass-ring", ring.name());
        assertEquals(Math.PI * 20e-3 - 8e-3, ring.width(), 1e-15);
        assertEquals(2e-3, ring.edge());
    }

    @Test
    void notchesNeedTheirSizeAndLeaveSomeOfTheLand() {
        String rest = "areas.line={node: line, area: 200 mm2, acts: open}";
        String[] notch = {
            "notches: 4",
            "notches: 12, notch-width: 6 mm, notch-length: 1 mm",
            "notches: 2, holes: 2, hole-diameter: 3 mm, notch-width: 1 mm, notch-length: 1 mm"
        };
        ProblemCode[] codes = {
            ProblemCode.NOTCHES_WITHOUT_SIZE, ProblemCode.NOTCHES_TAKE_ALL, ProblemCode.NOTCHES_AND_HOLES
        };
        for (int i = 0; i < notch.length; i++) {
            String opening = "openings.bypass={from: line, to: sump, edge: 1 mm, " + notch[i] + "}";
            Problem problem = only(
                    "spool-valve",
                    "bore=20mm",
                    "valve=19.97mm",
                    opening,
                    rest,
                    "spring-rate=8N/mm",
                    "preload=120N",
                    "stops=[0mm,4mm]");
            assertEquals(codes[i], problem.code());
        }
    }

    @Test
    void portsWithoutAPressureAreFree() {
        OnePart part = good("orifice", "diameter=2mm");
        assertEquals(
                List.of(Node.held("from", 1e5), Node.free("to")),
                part.network(Map.of("from", 1e5)).nodes());
    }

    @Test
    void aLoadStandsInForTheChambersOfABushing() {
        OnePart part = good("bushing", "bore=50.07mm", "hub=50mm", "length=17mm", "load=15kN", "speed=2000rpm");
        Bushing bushing = (Bushing) part.placed().part();
        assertEquals(15_000, bushing.weight());
        assertEquals(List.of(), bushing.loads());
        assertEquals(7e6, bushing.permissibleLoad());
        assertEquals(2000.0 / 60, part.speed());
    }

    @Test
    void portsOfASpoolAndOfASelectorAreThoseThatAreNamed() {
        OnePart spool = good(
                "spool-valve",
                "bore=20.026mm",
                "valve=20mm",
                "openings.bypass.from=line",
                "openings.bypass.to=sump",
                "openings.bypass.edge=1mm",
                "areas={line: {node: line, area: 200 mm2, acts: open}}",
                "spring-rate=8N/mm",
                "preload=120N",
                "stops=[0mm, 4mm]");
        assertEquals(List.of("line", "sump"), spool.ports());
        assertEquals(
                1e-3, ((SpoolValve) spool.placed().part()).openings().get(0).edge());
        OnePart selector =
                good("selector", "passages.feed.from=in", "passages.feed.to=out", "passages.feed.diameter=3mm");
        assertEquals(List.of("in", "out"), selector.ports());
        assertEquals(1, ((Selector) selector.placed().part()).links().size());
    }

    @Test
    void missingKeysAreOneMessage() {
        assertEquals("""
                hotidle part annular-gap: error: annular-gap has no bore, length
                  annular-gap valve=14mm
                  ^^^^^^^^^^^
                  why:  bore: diameter of the bore (a length, or {new, limit, measured})
                        length: length of the land that seals (a length)
                  mend: add bore=4mm length=0.5mm, for example; 'hotidle part annular-gap --help' lists all keys""", only("annular-gap", "valve=14mm").text());
    }

    @Test
    void aWrongValueIsShownInTheCommand() {
        assertEquals(
                """
                hotidle part annular-gap: error: annular-gap has length -8mm
                  annular-gap bore=14.06mm valve=14mm length=-8mm
                                                             ^^^^
                  why:  length must lie between 0.01 mm and 1 m""",
                only("annular-gap", "bore=14.06mm", "valve=14mm", "length=-8mm").text());
    }

    @Test
    void aMistypedKeyIsOneMessageWithTheNearest() {
        Problem problem = only("annular-gap", "bore=14.06mm", "valv=14mm", "length=8mm");
        assertEquals(ProblemCode.UNKNOWN_KEY, problem.code());
        assertTrue(problem.mend().contains("valve"), problem.text());
    }

    @Test
    void whatTiesAPartToACircuitIsRefusedWithTheReason() {
        for (Kind kind : Kinds.ALL) {
            Set<String> asked = PartKeys.of(kind).stream().map(Key::name).collect(Collectors.toSet());
            for (Key key : kind.shape().keys()) {
                if (!asked.contains(key.name())) {
                    List<Problem> problems =
                            read(kind.word(), key.name() + "=x").problems();
                    assertTrue(
                            problems.stream()
                                    .anyMatch(problem -> problem.code() == ProblemCode.NOT_ON_ITS_OWN
                                            && !problem.why().isEmpty()),
                            kind.word() + "." + key.name() + problems);
                }
            }
        }
    }

    @Test
    void rulesOfSeveralKeysSpeakTheLanguageOfTheCommand() {
        assertEquals(
                "write gap=5um, for example",
                only("flat-gap", "width=160mm", "length=4mm").mend());
        assertEquals(
                "write cracking-pressure=5psi, for example",
                only("check-valve", "seat=10mm", "spring-rate=0.3N/mm", "lift=3mm")
                        .mend());
        assertEquals(
                ProblemCode.BUSHING_OF_UNKNOWN_FILM,
                only("bushing", "bore=50.07mm", "hub=50mm", "length=2mm", "load=15N", "speed=2000rpm")
                        .code());
        assertEquals(
                "write openings.bypass.hole-diameter=3mm, for example",
                only(
                                "spool-valve",
                                "bore=20mm",
                                "valve=19.97mm",
                                "openings.bypass={from: line, to: sump, edge: 1 mm, holes: 2}",
                                "areas.line={node: line, area: 200 mm2, acts: open}",
                                "spring-rate=8N/mm",
                                "preload=120N",
                                "stops=[0mm,4mm]")
                        .mend());
    }

    @Test
    void anythingElseIsAMessageToo() {
        for (String wrong : List.of(
                "",
                "=",
                "=3",
                "bore",
                "bore=",
                "bore=[",
                "bore={",
                "bore=[1mm]",
                "bore.x=3mm",
                "bore..=3mm",
                ".=3",
                "bore=14mm=3",
                "length=*x",
                "length={a: &b 3}",
                "measured-at=ä",
                "a.b.c.d=1")) {
            ReadPart read = read("annular-gap", "valve=14mm", wrong);
            assertTrue(read.part().isEmpty() && !read.problems().isEmpty(), wrong);
            read.problems().forEach(problem -> assertTrue(problem.text().startsWith("hotidle part annular-gap: ")));
        }
    }

    @Test
    void theStockHasTheOilsOfTheLibraryAndTheMaterialsOfTheLanguage() {
        assertTrue(STOCK.oils().containsKey("shuttle-atf"));
        assertEquals(21.8e-6, STOCK.expansions().get("aluminium"));
    }
}
