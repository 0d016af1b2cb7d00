package hotidle.cli.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the comparison of recorded JSON takes as the same and what it does not. */
class JsonDifferenceTest {

    private static JsonNode json(String text) {
        try {
            return new ObjectMapper().readTree(text.replace('\'', '"'));
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(text, e);
        }
    }

    private static List<String> between(String expected, String actual) {
        return JsonDifference.between(json(expected), json(actual));
    }

    private static void assertSame(String expected, String actual) {
        assertEquals(List.of(), between(expected, actual));
    }

    private static void assertDiffers(String expected, String actual, String... says) {
        List<String> found = between(expected, actual);
        assertEquals(1, found.size(), found.toString());
        for (String word : says) {
            assertTrue(found.get(0).contains(word), word + " is not in: " + found.get(0));
        }
    }

    @Test
    void aPressureMayMoveByABillionthOfTheHighestBesideIt() {
        assertSame(
                "{'pressures_pa': {'line': 1e6, 'sump': 0}}", "{'pressures_pa': {'line': 1000000.0009, 'sump': 1e-4}}");
        assertDiffers(
                "{'pressures_pa': {'line': 1e6, 'sump': 0}}", "{'pressures_pa': {'line': 1000000.0011, 'sump': 0}}");
        assertDiffers("{'pressures_pa': {'line': 1e6, 'sump': 0}}", "{'pressures_pa': {'line': 1e6, 'sump': 2e-3}}");
    }

    @Test
    void aDifferenceIsNamedByItsPathWithBothNumbers() {
        assertDiffers(
                "{'builds': [{'states': [{'pressures_pa': {'line': 2e5}}]}]}",
                "{'builds': [{'states': [{'pressures_pa': {'line': 3e5}}]}]}",
                "$.builds[0].states[0].pressures_pa.line: ",
                "expected 200000.0",
                "actual 300000.0");
    }

    @Test
    void aLeakOfNothingBesideAFlowIsNoDifference() {
        assertSame("{'flows_m3_s': {'pump': 1e-5, 'seal': 1e-20}}", "{'flows_m3_s': {'pump': 1e-5, 'seal': -3e-21}}");
        assertSame(
                "{'paths': [{'flow_m3_s': 1e-5}, {'flow_m3_s': 0}]}",
                "{'paths': [{'flow_m3_s': 1e-5}, {'flow_m3_s': 1e-20}]}");
        assertDiffers("{'flow_m3_s': 1e-20}", "{'flow_m3_s': 2e-20}");
    }

    @Test
    void aFilmIsNotMeasuredByABore() {
        String states =
                "{'states': [{'states': {'hub.eccentricity': 0.9, 'hub.film-rise': %s}, 'parts': {'hub': {'least_film_m': %s},"
                        + " 'valve': {'position_m': 0.01}}}]}";
        assertSame(states.formatted("20", "5e-6"), states.formatted("20.00000001", "5.000000004e-6"));
        assertDiffers(states.formatted("20", "5e-6"), states.formatted("20", "5.00000001e-6"), "least_film_m");
        assertDiffers(states.formatted("20", "5e-6"), states.formatted("20.0000001", "5e-6"), "film-rise");
    }

    @Test
    void aValueIsMeasuredByOthersOfItsUnit() {
        String margins =
                "{'margins': [{'margin': 'apply', 'value': 1e6, 'unit': 'Pa'}, {'margin': 'cooler', 'value': %s, 'unit': 'm3/s'}]}";
        assertDiffers(margins.formatted("1e-4"), margins.formatted("1.00001e-4"), "margins[1].value");
    }

    @Test
    void aSearchedFigureMayMoveWithinItsSearch() {
        assertSame("{'onset_rpm': {'idle': 812.5}}", "{'onset_rpm': {'idle': 812.9}}");
        assertDiffers("{'onset_rpm': {'idle': 812.5}}", "{'onset_rpm': {'idle': 813.1}}", "onset_rpm.idle");
        assertDiffers("{'onset_rpm': {'idle': 812.5}}", "{'onset_rpm': {'idle': null}}");
        String fit = "{'fits': [{'as_is': 0.05, 'gone_at': %s, 'searched_to': 0.0508}]}";
        assertSame(fit.formatted("0.0502"), fit.formatted("0.05020009"));
        assertDiffers(fit.formatted("0.0502"), fit.formatted("0.0502002"), "gone_at");
        assertSame("{'low_pa': 1e6}", "{'low_pa': 1000150}");
        assertDiffers("{'low_pa': 1e6}", "{'low_pa': 1000250}");
    }

    @Test
    void onlyFilmAndLoadAreSearchedOverSpeed() {
        String margin = "{'margins': [{'margin': '%s', 'engine_speed_rpm': %s}]}";
        assertSame(margin.formatted("film", "650"), margin.formatted("film", "650.4"));
        assertDiffers(margin.formatted("apply", "650"), margin.formatted("apply", "650.4"), "engine_speed_rpm");
    }

    @Test
    void theStepsOfTheSolverAreNoAnswer() {
        assertSame("{'method': 'Newton'}", "{'method': 'pseudo-transient continuation'}");
        assertDiffers("{'method': 'Newton'}", "{'method': null}");
        assertSame("{'steps': 7, 'largest_imbalance_m3_s': 1e-20}", "{'steps': 4, 'largest_imbalance_m3_s': 0}");
    }

    @Test
    void keysTheirOrderWordsAndNothingElseAreExact() {
        assertDiffers("{'a': 1, 'b': 2}", "{'b': 2, 'a': 1}", "order");
        assertDiffers("{'a': 1}", "{'a': 1, 'b': 2}", "new [b]");
        assertDiffers("{'a': 1, 'b': 2}", "{'a': 1}", "gone [b]");
        assertDiffers("{'verdict': 'holds'}", "{'verdict': 'close'}", "$.verdict", "holds", "close");
        assertDiffers("{'regulated': true}", "{'regulated': false}");
        assertDiffers("[1, 2]", "[1]", "2 elements");
        assertDiffers("{'a': null}", "{'a': 0}");
    }

    @Test
    void whatIsRecordedIsReadBack() throws JsonProcessingException {
        JsonNode rows = json(
                "{'command': 'x', 'rows': [{'a': 'one', 'b': 1.25}, {'a': 'two', 'b': null}], 'maps': [{'a': 1}, {'b': {}}],"
                        + " 'text': '" + "long ".repeat(60) + "', 'none': [], 'flag': true}");
        assertEquals(rows, GoldenJson.plain(new ObjectMapper().readTree(GoldenJson.text(rows))));
    }
}
