package hotidle.answer;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hotidle.answer.format.Json;
import hotidle.result.Outcome;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;

/** States as JSON: SI but rpm and °C, every digit, the unit at the end of each key. */
public final class StateJson {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private StateJson() {}

    public static ObjectNode object() {
        return JSON.objectNode();
    }

    public static String text(ObjectNode node) {
        try {
            return MAPPER.writeValueAsString(node) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a state could not be written as JSON", e);
        }
    }

    /** One state, solved or not, as a tree to which keys can be added. */
    public static ObjectNode state(Transmission unit, DutyPoint duty, Outcome outcome) {
        return Json.tree(StateRecord.of(unit, duty, outcome));
    }

    public static void putFinite(ObjectNode node, String key, double value) {
        if (Double.isFinite(value)) {
            node.put(key, value);
        } else {
            node.putNull(key);
        }
    }
}
