package hotidle.circuits;

import static hotidle.circuits.Golden.resource;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import hotidle.circuits.text.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** circuit.schema.json is written from the declarations, takes every good file, and refuses nothing that the reader takes. */
class SchemaTest {

    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    /** Bad files of the corpus that the schema alone refuses today; the rest needs the reader. */
    private static final int REFUSED = 33;

    private static final Schema SCHEMA =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7).getSchema(SchemaWriter.schema());

    private static Optional<JsonNode> tree(String yaml) {
        try {
            Object value =
                    new Load(LoadSettings.builder().setAllowDuplicateKeys(true).build()).loadFromString(yaml);
            return Optional.of(MAPPER.valueToTree(value));
        } catch (YamlEngineException noYaml) {
            return Optional.empty();
        }
    }

    private static List<Error> refusals(String yaml) {
        return SCHEMA.validate(tree(yaml).orElseThrow());
    }

    @Test
    void theSchemaIsWhatTheDeclarationsSay() throws IOException {
        Golden.check(Path.of("circuit.schema.json"), MAPPER.writeValueAsString(SchemaWriter.schema()) + "\n");
    }

    @Test
    void everyGoodFileIsTaken() throws IOException {
        for (String name : Library.names()) {
            assertEquals(List.of(), refusals(Library.text(name).orElseThrow()), name);
        }
        assertEquals(List.of(), refusals(resource("every-kind.yaml")));
        assertEquals(List.of(), refusals("""
                circuit: mine
                based-on: shuttle-five
                leave-out: [parts.lockup-pilot-land]
                parts:
                  manual-valve-front: {bore: {measured: 14.060 mm}}
                  bore-19: {like: manual-valve-front, kind: annular-gap, from: low}
                duty: {hot-idle: {speed: 700 rpm}}
                """));
    }

    @Test
    void whatTheSchemaRefusesOfTheBadFilesTheReaderRefusesToo() throws IOException {
        List<String> refused = new ArrayList<>();
        for (BadFilesTest.Fault fault : BadFilesTest.faults()) {
            String bad = BadFilesTest.with(fault, BadFilesTest.good());
            if (tree(bad).filter(tree -> !SCHEMA.validate(tree).isEmpty()).isPresent()) {
                refused.add(fault.title());
                assertTrue(
                        CircuitReader.read(bad, "x.yaml").problems().stream()
                                .anyMatch(problem -> problem.severity() == Problem.Severity.ERROR),
                        fault.title() + ": " + SCHEMA.validate(tree(bad).orElseThrow()));
            }
        }
        assertTrue(refused.size() >= REFUSED, refused.size() + " refused: " + refused);
    }

    @Test
    void aSlipIsRefusedAtItsKey() throws IOException {
        String good = resource("every-kind.yaml");
        for (String[] slip : new String[][] {
            {"diameter: 1.5 mm, length: 1.2 mm, cd", "diameter: 1.5, length: 1.2 mm, cd", "/parts/leak-off/diameter"},
            {"shim: 0.5 mm", "shims: 0.5 mm", "/parts/regulator"},
            {"kind: passage", "kind: pasage", "/parts/return/kind"},
            {"speed: 650 rpm", "speed: 650 mm", "/duty/hot-idle/speed"},
            {"width: 160 mm, length", "length", "/parts/plate"}
        }) {
            assertTrue(
                    refusals(good.replace(slip[0], slip[1])).stream()
                            .anyMatch(one -> one.getInstanceLocation()
                                            .toString()
                                            .startsWith("$" + slip[2].replace('/', '.'))
                                    || one.getInstanceLocation().toString().startsWith(slip[2])),
                    slip[1] + ": " + refusals(good.replace(slip[0], slip[1])));
        }
    }
}
