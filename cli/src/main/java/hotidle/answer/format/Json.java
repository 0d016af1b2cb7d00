package hotidle.answer.format;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.util.OptionalDouble;

/**
 * Writes records as JSON. A component's name becomes the key in small letters with underscores: {@code setPressurePa} is
 * {@code set_pressure_pa}. The unit stands at the end of each key: SI, but rpm and °C; every digit is written. What is absent, or no
 * finite number, is null.
 */
public final class Json {

    private static final ObjectMapper MAPPER = new ObjectMapper()
            .enable(SerializationFeature.INDENT_OUTPUT)
            .setPropertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
            .registerModule(new Jdk8Module())
            .registerModule(new SimpleModule()
                    .addSerializer(double.class, new Finite())
                    .addSerializer(Double.class, new Finite())
                    .addSerializer(OptionalDouble.class, new FiniteOrEmpty()));

    private static final String NO_JSON = "this is not what was asked for, in JSON";

    private Json() {}

    /** The record's JSON, with a line feed at its end. */
    public static String text(Object record) {
        try {
            return MAPPER.writeValueAsString(record) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("an answer could not be written as JSON", e);
        }
    }

    /**
     * A record from JSON that somebody sent.
     *
     * @throws IllegalArgumentException where it is no JSON, or not of that record
     */
    public static <T> T read(byte[] text, Class<T> record) {
        try {
            T read = MAPPER.readValue(text, record);
            if (read == null) {
                throw new IllegalArgumentException(NO_JSON);
            }
            return read;
        } catch (IOException broken) {
            throw new IllegalArgumentException(NO_JSON, broken);
        }
    }

    /** The record's JSON in one line, in UTF-8. */
    public static byte[] bytes(Object record) {
        try {
            return MAPPER.writer().without(SerializationFeature.INDENT_OUTPUT).writeValueAsBytes(record);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("an answer could not be written as JSON", e);
        }
    }

    /** The record as a tree to which keys can be added. */
    public static ObjectNode tree(Object record) {
        return MAPPER.valueToTree(record);
    }

    /** JSON has no word for a number that is not finite. */
    private static final class Finite extends JsonSerializer<Double> {
        @Override
        public void serialize(Double value, JsonGenerator out, SerializerProvider provider) throws IOException {
            if (Double.isFinite(value)) {
                out.writeNumber(value);
            } else {
                out.writeNull();
            }
        }
    }

    /** The same where there may be none. */
    private static final class FiniteOrEmpty extends JsonSerializer<OptionalDouble> {
        @Override
        public void serialize(OptionalDouble value, JsonGenerator out, SerializerProvider provider) throws IOException {
            if (value.isPresent() && Double.isFinite(value.getAsDouble())) {
                out.writeNumber(value.getAsDouble());
            } else {
                out.writeNull();
            }
        }
    }
}
