package hotidle.cli.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** circuits/output.schema.json takes every JSON that is recorded, says what each key means, and takes no key that it does not say. */
class OutputSchemaTest {

    private static final Path FILE = Path.of("../circuits/output.schema.json");
    private static final SchemaRegistry FACTORY = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7);

    private final ObjectNode schema;
    private final Map<String, Schema> commands = new HashMap<>();

    OutputSchemaTest() throws IOException {
        schema = (ObjectNode) new ObjectMapper().readTree(Files.readString(FILE));
    }

    /** The schema of one command's output. */
    private Schema of(String command) {
        return commands.computeIfAbsent(command, name -> {
            ObjectNode one = schema.deepCopy();
            one.remove("oneOf");
            one.putArray("allOf").addObject().put("$ref", "#/definitions/" + name);
            return FACTORY.getSchema(one);
        });
    }

    private static List<Case> recorded() throws IOException {
        return Case.recorded().stream().filter(GoldenTest::json).toList();
    }

    /** Leaks answer by jobs and torque answers by stages in another shape. */
    private static String command(Case one) {
        if (one.command().contains("--stages")) {
            return "stages";
        }
        return one.command().contains("--by job") ? "jobs" : one.words().get(0);
    }

    private static JsonNode output(Case one) throws IOException {
        return GoldenTest.recorded(GoldenTest.file(one)).get("output");
    }

    private static JsonNode output(String name) throws IOException {
        return GoldenTest.recorded(GoldenFiles.ROOT.resolve("json").resolve(name + ".json"))
                .get("output");
    }

    @Test
    void everyRecordedJsonIsTakenAsThatOfItsCommand() throws IOException {
        List<String> wrong = new ArrayList<>();
        for (Case one : recorded()) {
            of(command(one)).validate(output(one)).forEach(fault -> wrong.add(one.name() + ": " + fault));
        }
        assertEquals("", String.join("\n", wrong));
    }

    @Test
    void theWholeSchemaKnowsOneCommandFromAnother() throws IOException {
        Schema whole = FACTORY.getSchema(schema);
        for (String name : List.of(
                "compare-training-rig",
                "sweep-training-rig",
                "margins-training-rig",
                "sensitivity-training-rig",
                "leaks-training-rig",
                "window-vane-six",
                "map-vane-six",
                "wear-training-rig",
                "part-bushing")) {
            assertEquals(List.of(), List.copyOf(whole.validate(output(name))), name);
        }
    }

    @Test
    void aKeyThatNoOneDescribedIsRefused() throws IOException {
        for (String place : List.of(
                "", "/builds/0", "/builds/0/states/0", "/builds/0/states/0/figures", "/builds/0/states/0/margins/0")) {
            JsonNode output = output("margins-training-rig");
            ((ObjectNode) output.at(place)).put("line_psi", 1);
            assertFalse(of("margins").validate(output).isEmpty(), place);
        }
        JsonNode output = output("margins-training-rig");
        ((ObjectNode) output.at("/builds/0/states/0/parts/pump")).put("torque_lbf_ft", 1);
        assertFalse(of("margins").validate(output).isEmpty());
    }

    @Test
    void aKeyThatIsMissingOrAnotherWordIsRefused() throws IOException {
        JsonNode gone = output("compare-training-rig");
        ((ObjectNode) gone.at("/builds/0/states/0")).remove("pressures_pa");
        assertFalse(of("compare").validate(gone).isEmpty());
        JsonNode word = output("margins-training-rig");
        ((ObjectNode) word.at("/builds/0/states/0/margins/0")).put("verdict", "passes");
        assertFalse(of("margins").validate(word).isEmpty());
    }

    @Test
    void anUnsolvedStateHasAReasonAndNoNumbers() throws IOException {
        JsonNode output = output("compare-training-rig");
        ObjectNode state = (ObjectNode) output.at("/builds/0/states/0");
        state.put("solved", false);
        assertFalse(of("compare").validate(output).isEmpty());
        state.retain(
                "duty",
                "engine_speed_rpm",
                "range",
                "lockup",
                "temperatures_c",
                "engine_torque_n_m",
                "commanded_pilot_pa",
                "set_pressure_pa",
                "solved");
        state.putObject("unsolved")
                .put("residual", 0.3)
                .put("culprit", "node line")
                .putArray("tried");
        assertEquals(List.of(), List.copyOf(of("compare").validate(output)));
    }

    @Test
    void everyKeyHasAMeaning() {
        List<String> dumb = new ArrayList<>();
        describe(schema, "", dumb);
        assertEquals(List.of(), dumb);
    }

    /** Finds keys without a description, and maps with fixed keys that take others. */
    private void describe(JsonNode node, String path, List<String> dumb) {
        for (String keys : List.of("properties", "patternProperties")) {
            if (node.path(keys).isObject() && !path.matches(".*/(then|else|if)")) {
                node.get(keys).properties().forEach(one -> {
                    if (!described(one.getValue())) {
                        dumb.add(path + "/" + one.getKey() + " has no description");
                    }
                });
                if (!node.path("additionalProperties").isBoolean()
                        || node.get("additionalProperties").asBoolean()) {
                    dumb.add(path + " takes keys that are not described");
                }
            }
        }
        for (JsonNode element : node.isArray() ? node : schema.arrayNode()) {
            describe(element, path + "[]", dumb);
        }
        node.properties().forEach(one -> describe(one.getValue(), path + "/" + one.getKey(), dumb));
    }

    private boolean described(JsonNode property) {
        String meant = property.path("$ref").asText("#/none");
        return property.has("description") || schema.at(meant.substring(1)).has("description");
    }
}
