package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.StringReader;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** A gauge is where the file puts it, whether or not the line is commanded. */
class CompareGaugesTest {

    private static Run compare(String format) {
        return Run.of("compare", "crescent-four", "--build", "fresh", "--units", "si", "--format", format);
    }

    @Test
    void aCommandedCircuitShowsEveryGaugeButTheOneOfTheLineWhichHasItsOwnRow() throws Exception {
        List<CSVRecord> csv =
                CSVFormat.RFC4180.parse(new StringReader(compare("csv").out())).getRecords();
        List<String> heads = csv.get(0).toList();
        assertTrue(
                heads.containsAll(List.of("gauge at throttle [Pa]", "gauge at governor [Pa]", "gauge at lube [Pa]")),
                heads.toString());
        assertTrue(!heads.contains("gauge at line [Pa]") && heads.contains("line pressure [Pa]"), heads.toString());
        JsonNode states = new ObjectMapper().readTree(compare("json").out()).at("/builds/0/states");
        assertTrue(states.size() >= 4);
        for (int i = 0; i < states.size(); i++) {
            double shown = Double.parseDouble(csv.get(i + 1).get(heads.indexOf("gauge at lube [Pa]")));
            double solved = states.get(i).at("/pressures_pa/lube").doubleValue();
            assertEquals(solved, shown, 1 + 1e-3 * solved, csv.get(i + 1).toString());
        }
    }
}
