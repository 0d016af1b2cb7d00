package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** Numbers of a report's tables are those that the commands give as JSON, in SI and unrounded. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ReportNumbersTest {

    private static final double PSI = 6894.757293168;
    private static final double POUND_FOOT = 1.3558179483314;
    private static final double BTU_A_MINUTE = 17.584264;

    /** The pressures that a report tries. */
    private static final String PRESSURES = "60..400/40psi";

    @TempDir
    static Path folder;

    private ReportPage page;

    @BeforeAll
    void report() throws Exception {
        page = ReportPage.made(folder.resolve("two.html"), "shuttle-five", "--build", "worn", "--build", "restored");
    }

    private static JsonNode builds(String... words) throws Exception {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--format", "json"));
        return new ObjectMapper()
                .readTree(Run.of(all.toArray(String[]::new)).out())
                .get("builds");
    }

    private static JsonNode ofTwo(String command, String... more) throws Exception {
        List<String> words =
                new ArrayList<>(List.of(command, "shuttle-five", "--build", "worn", "--build", "restored"));
        words.addAll(List.of(more));
        return builds(words.toArray(String[]::new));
    }

    private static String whole(JsonNode si, double unit) {
        return String.valueOf(Math.round(si.doubleValue() / unit));
    }

    /** The number that a cell begins with, without signs that lead or follow it. */
    private static String number(String cell) {
        return cell.replaceAll("^[<>=~ ]*(-?[0-9.]+).*", "$1");
    }

    @Test
    void torqueOfEachRangeIsThatOfTorque() throws Exception {
        List<List<String>> rows = page.table("torque", "");
        int row = 0;
        for (JsonNode build : ofTwo("torque", "--try", PRESSURES)) {
            for (JsonNode range : build.get("ranges")) {
                List<String> cells = rows.get(row++);
                assertEquals(build.get("build").textValue(), cells.get(0));
                assertEquals(range.get("range").textValue(), cells.get(1));
                assertEquals(whole(range.get("engine_torque_n_m"), POUND_FOOT), number(cells.get(3)), cells.toString());
                assertEquals(whole(range.get("line_pressure_pa"), PSI), number(cells.get(4)), cells.toString());
                assertEquals(
                        range.get("links").get(0).get("link").textValue(),
                        cells.get(7).split(" ", -1)[0]);
            }
        }
        assertEquals(rows.size(), row);
    }

    @Test
    void pressuresThatEachLimitAllowsAreThoseOfWindow() throws Exception {
        for (JsonNode build : ofTwo("window", "--try", PRESSURES)) {
            Set<String> shown = page.table("pressures", build.get("build").textValue() + ":").stream()
                    .filter(cells -> !cells.get(2).equals("none"))
                    .map(cells -> cells.get(1) + " " + number(cells.get(2)) + " " + number(cells.get(4)))
                    .collect(Collectors.toCollection(TreeSet::new));
            Set<String> answered = new TreeSet<>();
            for (JsonNode limit : build.get("limits")) {
                for (JsonNode range : limit.get("holds")) {
                    answered.add(limit.get("part").textValue() + " " + whole(range.get("low_pa"), PSI) + " "
                            + whole(range.get("high_pa"), PSI));
                }
            }
            assertFalse(answered.isEmpty());
            assertEquals(answered, shown, build.get("build").textValue());
        }
    }

    /** Who subtracts two temperatures of the table finds the difference that is told. */
    @Test
    void aDifferenceOfTemperaturesIsThatOfTheTable() {
        List<String> idle = page.table("heat", "Sump /").get(0);
        String[] worn = idle.get(idle.size() - 2).split("[^-0-9]+", -1);
        String[] restored = idle.get(idle.size() - 1).split("[^-0-9]+", -1);
        int sump = Integer.parseInt(restored[0]) - Integer.parseInt(worn[0]);
        int converter = Integer.parseInt(restored[1]) - Integer.parseInt(worn[1]);
        String said = page.section("heat").getTextContent();
        String told = String.format(
                Locale.ROOT,
                "restored differs from worn by %+d degF in the sump and %+d degF from the converter",
                sump,
                converter);
        assertTrue(said.contains(told), told + " is not in " + said);
    }

    @Test
    void heatBySourceAndSinkIsThatOfHeat() throws Exception {
        List<List<String>> rows = page.table("heat", "Where heat comes from");
        JsonNode builds = ofTwo("heat");
        String duty = head("heat", "Where heat comes from").split(",", -1)[0];
        List<JsonNode> watts = new ArrayList<>();
        for (JsonNode build : builds) {
            for (JsonNode one : build.get("duties")) {
                if (one.get("duty").textValue().equals(duty)) {
                    watts.add(one.get("heat_w"));
                }
            }
        }
        assertEquals(2, watts.size(), duty);
        int row = 0;
        for (Map.Entry<String, JsonNode> kind : watts.get(0).properties()) {
            JsonNode other = watts.get(1).get(kind.getKey());
            if (kind.getValue().doubleValue() != 0 || other.doubleValue() != 0) {
                List<String> cells = rows.get(row++);
                assertEquals(whole(kind.getValue(), BTU_A_MINUTE), cells.get(1), kind.getKey());
                assertEquals(whole(other, BTU_A_MINUTE), cells.get(2), kind.getKey());
            }
        }
        assertEquals(rows.size(), row);
    }

    @Test
    void temperaturesAreThoseOfHeat() throws Exception {
        List<List<String>> rows = page.table("heat", "Sump");
        JsonNode builds = ofTwo("heat");
        int compared = 0;
        for (int i = 0; i < rows.size(); i++) {
            List<String> cells = rows.get(i);
            for (int b = 0; b < 2; b++) {
                JsonNode duty = builds.get(b).get("duties").get(i);
                assertEquals(duty.get("duty").textValue(), cells.get(0));
                JsonNode nodes = duty.get("nodes_c");
                String cell = cells.get(cells.size() - 2 + b);
                if (!nodes.isNull()) {
                    compared++;
                    assertEquals(
                            String.valueOf(Math.round(nodes.get("sump").doubleValue() * 1.8 + 32)), number(cell), cell);
                }
            }
        }
        assertTrue(compared > 4, compared + " compared");
    }

    private String head(String section, String caption) {
        return ReportPage.all(page.section(section), "table").stream()
                .filter(table ->
                        ReportPage.all(table, "caption").get(0).getTextContent().startsWith(caption))
                .map(table -> ReportPage.all(table, "th").get(0).getTextContent())
                .findFirst()
                .orElseThrow();
    }
}
