package hotidle.circuits.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads YAML 1.2 into a tree with places. Not part of the language, and refused with a message: anchors and aliases, tags,
 * several documents, keys that are not text, keys that stand twice, nesting beyond {@value #DEEPEST},
 * mappings and lists beyond {@value #MOST} entries, files beyond
 * {@value #LONGEST} characters.
 */
public final class Yaml {

    /** Longest file [characters]: some hundred times a circuit. */
    public static final int LONGEST = 1_000_000;

    /** Deepest nesting; the language itself needs seven levels. */
    static final int DEEPEST = 16;

    /** Most keys of a mapping and items of a list; a large circuit has a tenth of it. */
    static final int MOST = 2000;

    private static final String OWN_LANGUAGE = "the circuit language has plain keys, text and lists only";

    private final Problems problems;
    private final Iterator<Event> events;
    private Event last;

    private Yaml(String text, Problems problems) {
        this.problems = problems;
        LoadSettings settings = LoadSettings.builder()
                .setUseMarks(true)
                .setCodePointLimit(LONGEST + 1)
                .build();
        events = new Parse(settings).parseString(text).iterator();
        last = events.next();
    }

    /** The tree of a text; empty where it is no YAML, which the problems then say. */
    public static Optional<Value> read(String text, Problems problems) {
        if (text.length() > LONGEST) {
            String size = "the file has " + text.length() + " characters";
            problems.error(Place.START, size, "a circuit file has at most " + LONGEST, "");
            return Optional.empty();
        }
        try {
            return Optional.of(new Yaml(text, problems).document());
        } catch (TooMuchException much) {
            problems.error(much.place, much.getMessage(), much.why, "");
        } catch (MarkedYamlEngineException fault) {
            Optional<Mark> mark = fault.getProblemMark().or(fault::getContextMark);
            syntax(problems, mark.map(at -> place(at, at)).orElse(Place.START), fault.getProblem());
        } catch (YamlEngineException fault) {
            syntax(problems, Place.START, fault.getMessage().lines().findFirst().orElse(""));
        }
        return Optional.empty();
    }

    private Value document() {
        while (last.getEventId() != Event.ID.DocumentStart && last.getEventId() != Event.ID.StreamEnd) {
            last = events.next();
        }
        if (last.getEventId() == Event.ID.StreamEnd) {
            return new Value.Text("", Place.START);
        }
        last = events.next();
        Value value = value(0);
        if (events.next().getEventId() == Event.ID.DocumentEnd) {
            Event after = events.next();
            if (after.getEventId() != Event.ID.StreamEnd) {
                problems.error(place(after), "a second document begins here", OWN_LANGUAGE, "one file, one circuit");
            }
        }
        return value;
    }

    /** The value that begins at the last event; afterwards the last event is the one that ends it. */
    private Value value(int depth) {
        Place place = place(last);
        if (depth > DEEPEST) {
            throw new TooMuchException(
                    place, "nesting goes deeper than " + DEEPEST + " levels", "the circuit language needs seven");
        }
        refuseExtras(place);
        return switch (last.getEventId()) {
            case Scalar -> new Value.Text(((ScalarEvent) last).getValue().strip(), place);
            case SequenceStart -> list(depth, place);
            case MappingStart -> mapping(depth, place);
            default -> new Value.Text("", place);
        };
    }

    private void refuseExtras(Place place) {
        if (last.getEventId() == Event.ID.Alias) {
            String mend = "write the value out; put a name that begins with * in quotes";
            problems.error(place, "an alias (*...) stands here", OWN_LANGUAGE, mend);
        } else if (last instanceof NodeEvent node && node.getAnchor().isPresent()) {
            String mend = "leave it out; put text that begins with & in quotes";
            problems.error(place, "an anchor (&...) stands here", OWN_LANGUAGE, mend);
        } else if (tag().isPresent()) {
            String mend = "leave it out; put text that begins with ! in quotes";
            problems.error(place, "a tag (!...) stands here", OWN_LANGUAGE, mend);
        }
    }

    private Optional<String> tag() {
        if (last instanceof ScalarEvent scalar) {
            return scalar.getTag();
        }
        return last instanceof CollectionStartEvent start ? start.getTag() : Optional.empty();
    }

    private static void refuseTooMany(Place place, int size) {
        if (size >= MOST) {
            throw new TooMuchException(
                    place, "more than " + MOST + " entries stand here", "a large circuit has 200 parts");
        }
    }

    private Value list(int depth, Place place) {
        List<Value> items = new ArrayList<>();
        last = events.next();
        while (last.getEventId() != Event.ID.SequenceEnd) {
            refuseTooMany(place, items.size());
            items.add(value(depth + 1));
            last = events.next();
        }
        return new Value.Items(items, place);
    }

    private Value mapping(int depth, Place place) {
        List<Value.Entry> entries = new ArrayList<>();
        Map<String, Place> known = new HashMap<>();
        last = events.next();
        while (last.getEventId() != Event.ID.MappingEnd) {
            refuseTooMany(place, known.size());
            Value key = value(depth + 1);
            last = events.next();
            Value value = value(depth + 1);
            last = events.next();
            if (!(key instanceof Value.Text text) || text.text().isEmpty()) {
                problems.error(key.place(), "a key must be a word", OWN_LANGUAGE, "");
            } else if (known.putIfAbsent(text.text(), key.place()) != null) {
                String first = "it stands first at " + problems.at(known.get(text.text()));
                problems.error(key.place(), "key '" + text.text() + "' stands twice", first, "leave one of them out");
            } else {
                entries.add(new Value.Entry(text.text(), key.place(), value));
            }
        }
        return new Value.Entries(entries, place);
    }

    private static Place place(Event event) {
        Mark start = event.getStartMark().orElseThrow();
        boolean collection = event instanceof CollectionStartEvent;
        return place(start, collection ? start : event.getEndMark().orElse(start));
    }

    private static Place place(Mark start, Mark end) {
        int width = end.getLine() == start.getLine() ? Math.max(end.getColumn() - start.getColumn(), 1) : 1;
        return new Place(start.getLine() + 1, start.getColumn() + 1, width);
    }

    private static void syntax(Problems problems, Place place, String why) {
        String mend = "";
        if (why.contains("mapping values are not allowed")) {
            mend = "put text that holds a colon and a blank in quotes, and look at the indentation";
        } else if (why.contains("TAB") || why.contains("\\t")) {
            mend = "indent with blanks, not with tabs";
        } else if (why.contains("unexpected character")) {
            mend = "put text that begins with * or & in quotes";
        }
        problems.error(place, "this is not YAML", why, mend);
    }

    private static final class TooMuchException extends RuntimeException {
        private final transient Place place;
        private final String why;

        TooMuchException(Place place, String message, String why) {
            super(message);
            this.place = place;
            this.why = why;
        }
    }
}
