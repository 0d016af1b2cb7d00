package hotidle.answer.draw;

import hotidle.network.Group;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The frames of a drawing: what is built together and what its oil is booked under. */
public enum Frames {
    PUMP("pump"),
    VALVE_BODY("valve body"),
    PLATE("plate"),
    CLUTCHES("clutches"),
    CONVERTER_AND_COOLER("converter and cooler"),
    LUBRICATION("lubrication");

    private final String label;

    Frames(String label) {
        this.label = label;
    }

    /** What is written in it. */
    public String label() {
        return label;
    }

    /** The word by which it is asked for. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The frame of a word; empty where there is none. */
    public static Optional<Frames> asked(String word) {
        return Stream.of(values()).filter(frame -> frame.word().equals(word)).findFirst();
    }

    /** All words by which one is asked for, from the pump on. */
    public static List<String> words() {
        return Stream.of(values()).map(Frames::word).toList();
    }

    /** All labels, from the pump on. */
    static List<String> labels() {
        return List.of(values()).stream().map(Frames::label).toList();
    }

    /** The frame of a part whose oil is booked so. */
    static Frames of(Group group) {
        return switch (group) {
            case PUMP, HUB -> PUMP;
            case VALVE_BODY, SOLENOIDS -> VALVE_BODY;
            case PLATE -> PLATE;
            case RINGS -> CLUTCHES;
            case CONVERTER, COOLER -> CONVERTER_AND_COOLER;
            case LUBE -> LUBRICATION;
        };
    }
}
