package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MarginsCommandTest {

    private static final String[] COARSE = {"margins", "shuttle-five", "--speed", "400..4000/200rpm"};

    private static Run run(String... more) {
        String[] all = java.util.Arrays.copyOf(COARSE, COARSE.length + more.length);
        System.arraycopy(more, 0, all, COARSE.length, more.length);
        return Run.of(all);
    }

    @Test
    void wornFailsAtHotIdleAndRestoredHoldsEverywhere() {
        Run run = run("--build", "worn", "--build", "restored", "--full");
        assertEquals(0, run.code(), run.err());
        String said = run.out().replaceAll("\\s+", " ");
        assertTrue(
                said.contains(
                        "worn: FAILS. First limit: regulation (primary + secondary) at hot-idle: line pressure is not"
                                + " held, 111 psi of the 150 psi commanded; with the line held at 150 psi the pump delivers 1.41 gpm"
                                + " where 4.18 gpm is needed (-66 %)."
                                + " Short because of that: lubrication, cooler, converter charge."),
                run.out());
        assertTrue(said.contains("restored: NARROW as far as is known. First limit: hub film oil"), run.out());
        assertTrue(said.contains("The line settles at 111 psi"), run.out());
        assertTrue(said.contains(" 14 psi abs 9 psi abs "), "the inlet's pressure says that it is absolute");
        assertTrue(run.out().contains("of all builds at the same speed"), run.out());
        assertTrue(said.contains("Trumpler's rule for ground journals, from which on it is known to hold"), run.out());
        int caution = run.out().indexOf("wheels blocked");
        assertTrue(said.contains("IDLE PRESSURE IS LOW with worn: no stall test"), run.out());
        assertTrue(caution > 0 && caution < run.out().indexOf("stall ("), "the cautions come before the stall");
        assertTrue(run.out().lines().allMatch(line -> line.length() <= 120), "a line is too long to read");
        assertTrue(
                said.contains(
                        "that is all that comes through the pump's inlet with nothing sent back to it, enough to fill the pump to"),
                said);
        assertTrue(
                said.matches(".*hub film at 1[3-6]\\d\\d rpm hub-bushing.*"),
                "the film is not that of the duty's 650 rpm");
        assertTrue(
                said.contains("apply, holding and slipping low-clutch 109 psi 16 psi"),
                "with one coefficient of friction a clutch has one limit");
        assertFalse(said.contains("apply, slipping low-clutch"), said);
        assertTrue(said.contains("apply, slipping second-brake"), said);
    }

    @Test
    void jsonHasValueNeedHeadroomAndVerdictOfEveryMarginInItsState() throws Exception {
        Run run = run("--build", "worn", "--format", "json");
        JsonNode states = new ObjectMapper().readTree(run.out()).at("/builds/0/states");
        assertEquals(11, states.size());
        int margins = 0;
        for (JsonNode state : states) {
            for (JsonNode margin : state.get("margins")) {
                margins++;
                double value = margin.get("value").doubleValue();
                double needed = margin.get("needed").doubleValue();
                boolean upper = margin.get("limit").textValue().equals("upper");
                double headroom = (upper ? needed / value : value / needed) - 1;
                assertEquals(headroom, margin.get("headroom").doubleValue(), 1e-12, margin.toString());
                String verdict = headroom < 0 ? "fails" : headroom <= 0.1 ? "close" : "holds";
                String told = margin.get("verdict").textValue();
                boolean film = margin.get("margin").textValue().startsWith("film");
                assertEquals(film && told.equals("not_known") ? "not_known" : verdict, told);
                if (margin.get("margin").textValue().equals("apply")) {
                    assertTrue(margin.get("why").textValue().contains("return spring included"));
                }
            }
        }
        assertTrue(margins > 40, margins + " margins");
    }

    @Test
    void csvHasOneLineAMargin() {
        Run run = run("--build", "worn", "--format", "csv", "--units", "metric");
        assertTrue(run.out().startsWith("build,duty,limit,part,is,needed or allowed,unit,headroom,verdict,rpm,why\n"));
        assertTrue(run.out().contains("worn,hot-idle,converter-charge,converter,"), run.out());
    }

    @Test
    void sensitivityRanksSizesByWhatAThousandthMovesAndGivesAllSlopesInJsonAndCsv() throws Exception {
        String[] asked = {"sensitivity", "crescent-four", "--full", "--build", "worn", "--speed", "600..3000/1200rpm"};
        Run run = Run.of(asked);
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().replaceAll("\\s+", " ").contains("by 0.001 in (an"), run.out());
        assertTrue(run.out().replaceAll("\\s+", " ").contains("Before any test on the vehicle"), run.out());
        java.util.List<String> more = new java.util.ArrayList<>(java.util.List.of(asked));
        more.addAll(java.util.List.of("--format", "json", "--units", "metric"));
        JsonNode build = new ObjectMapper()
                .readTree(Run.of(more.toArray(new String[0])).out())
                .at("/builds/0");
        assertTrue(build.get("sensitivities").size() > 1000, "every size and limit");
        assertTrue(build.at("/least/headroom").isNumber());
        JsonNode first = build.at("/sensitivities/0");
        assertEquals("m", first.get("size_unit").textValue());
        assertTrue(first.get("headroom_by_size").isNumber());
    }

    /** A bushing that the file lets wear further than its film does: wear alone told it. */
    @Test
    void aBoreWithinItsWrittenLimitThatBringsTheFilmDownPointsToItsWear(@TempDir Path folder) throws Exception {
        Path sheet = folder.resolve("bore.csv");
        Files.writeString(sheet, "part,size,measured bore,unit\nhub-bushing,bore,1.7000,in\n");
        Run run = Run.of("margins", "crescent-four", "--sheet", sheet.toString());
        assertEquals(HotIdle.DONE, run.code(), run.err());
        String said = run.out().replaceAll("\\s+", " ");
        assertTrue(said.contains("FAILS. First limit: hub film (hub-bushing)"), said);
        assertTrue(
                said.contains(
                        "hub-bushing.bore is within its written limit, but with it new this would not fail: hub film"
                                + " (hub-bushing) at backing-up. 'hotidle wear' with this build and --fit hub-bushing.bore"),
                said);
        JsonNode json = new ObjectMapper()
                .readTree(Run.of("margins", "crescent-four", "--sheet", sheet.toString(), "--format", "json")
                        .out());
        assertEquals(
                "hub-bushing.bore",
                json.get("builds").get(0).get("worn_within_limit").get(0).textValue());
        Files.writeString(sheet, "part,size,measured bore,unit\nhub-bushing,bore,1.6980,in\n");
        String holds =
                Run.of("margins", "crescent-four", "--sheet", sheet.toString()).out();
        assertTrue(!holds.contains("written limit"), holds);
    }
}
