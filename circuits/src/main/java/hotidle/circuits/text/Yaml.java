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
import org.snakeyaml.engine.v2.exceptions.ReaderException;
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
    private final int source;
    private final Iterator<Event> events;
    private Event last;

    private Yaml(String text, Problems problems, int source) {
        this.problems = problems;
        this.source = source;
        LoadSettings settings = LoadSettings.builder()
                .setUseMarks(true)
                .setCodePointLimit(LONGEST + 1)
                // the whole text at once: the library throws where a pair of surrogates is cut by the end of its buffer
                .setBufferSize(text.length() + 2)
                .build();
        events = new Parse(settings).parseString(text).iterator();
        last = events.next();
    }

    /** The tree of a file; empty where it is no YAML, which the problems then say. */
    public static Optional<Value> read(String text, Problems problems) {
        return read(text, problems, 0);
    }

    /** The same of a further file of a reading. */
    public static Optional<Value> read(String text, Problems problems, int source) {
        Syntax syntax = new Syntax(text, problems, source);
        if (text.length() > LONGEST) {
            String size = "the file has " + text.length() + " characters";
            problems.error(
                    new Place(1, 1, 1, source),
                    ProblemCode.TOO_LONG,
                    size,
                    "a circuit file has at most " + LONGEST,
                    "");
            return Optional.empty();
        }
        try {
            return Optional.of(new Yaml(text, problems, source).document());
        } catch (TooMuchException much) {
            problems.error(much.place, ProblemCode.TOO_MUCH, much.getMessage(), much.why, "");
        } catch (MarkedYamlEngineException fault) {
            syntax.add(fault);
        } catch (ReaderException character) {
            syntax.add(character);
        } catch (YamlEngineException fault) {
            syntax.add(fault.getMessage());
        }
        return Optional.empty();
    }

    private Value document() {
        while (last.getEventId() != Event.ID.DocumentStart && last.getEventId() != Event.ID.StreamEnd) {
            last = events.next();
        }
        if (last.getEventId() == Event.ID.StreamEnd) {
            return new Value.Text("", new Place(1, 1, 1, source));
        }
        last = events.next();
        Value value = value(0);
        if (events.next().getEventId() == Event.ID.DocumentEnd) {
            Event after = events.next();
            if (after.getEventId() != Event.ID.StreamEnd) {
                problems.error(
                        place(after),
                        ProblemCode.SECOND_DOCUMENT,
                        "a second document begins here",
                        OWN_LANGUAGE,
                        "one file, one circuit");
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
            problems.error(place, ProblemCode.ALIAS, "an alias (*...) stands here", OWN_LANGUAGE, mend);
        } else if (last instanceof NodeEvent node && node.getAnchor().isPresent()) {
            String mend = "leave it out; put text that begins with & in quotes";
            problems.error(place, ProblemCode.ANCHOR, "an anchor (&...) stands here", OWN_LANGUAGE, mend);
        } else if (tag().isPresent()) {
            String mend = "leave it out; put text that begins with ! in quotes";
            problems.error(place, ProblemCode.TAG, "a tag (!...) stands here", OWN_LANGUAGE, mend);
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
            Value item = value(depth + 1);
            Optional<Value> whole = items.isEmpty() ? Optional.empty() : comma(items.get(items.size() - 1), item);
            whole.ifPresent(joined -> items.set(items.size() - 1, joined));
            if (whole.isEmpty()) {
                items.add(item);
            }
            last = events.next();
        }
        return new Value.Items(items, place);
    }

    private Value mapping(int depth, Place place) {
        List<Value.Entry> entries = new ArrayList<>();
        Map<String, Integer> known = new HashMap<>();
        last = events.next();
        while (last.getEventId() != Event.ID.MappingEnd) {
            refuseTooMany(place, known.size());
            Value key = value(depth + 1);
            last = events.next();
            Value value = value(depth + 1);
            last = events.next();
            Optional<Value.Entry> before =
                    entries.isEmpty() ? Optional.empty() : Optional.of(entries.get(entries.size() - 1));
            Optional<Value> whole =
                    empty(value) ? before.flatMap(entry -> comma(entry.value(), key)) : Optional.empty();
            if (whole.isPresent()) {
                Value.Entry entry = before.get();
                entries.set(entries.size() - 1, new Value.Entry(entry.key(), entry.keyPlace(), whole.get()));
            } else if (!(key instanceof Value.Text text) || text.text().isEmpty()) {
                problems.error(key.place(), ProblemCode.KEY_IS_NO_WORD, "a key must be a word", OWN_LANGUAGE, "");
            } else if (known.containsKey(text.text())) {
                twice(text, value, entries, known.get(text.text()));
            } else {
                known.put(text.text(), entries.size());
                entries.add(new Value.Entry(text.text(), key.place(), value));
            }
        }
        return new Value.Entries(entries, place);
    }

    private static boolean empty(Value value) {
        return value instanceof Value.Text text && text.text().isEmpty();
    }

    /** A number that YAML has cut at its decimal comma, put together again; empty where the two are no such halves. */
    private static Optional<Value> comma(Value before, Value after) {
        boolean halves = before instanceof Value.Text one
                && after instanceof Value.Text other
                && one.place().line() == other.place().line()
                && one.place().column() + one.place().width() + 1
                        == other.place().column()
                && one.text().matches("[+-]?\\d{1,9}")
                && other.text().matches("\\d.*");
        if (!halves) {
            return Optional.empty();
        }
        Place at = before.place();
        int width = after.place().column() + after.place().width() - at.column();
        String text = ((Value.Text) before).text() + "," + ((Value.Text) after).text();
        return Optional.of(new Value.Text(text, new Place(at.line(), at.column(), width, at.source())));
    }

    /** Notes a key that stands twice; where both hold keys they are read as one, so that nothing else seems to be missing. */
    private void twice(Value.Text key, Value value, List<Value.Entry> entries, int index) {
        Value.Entry first = entries.get(index);
        String where = "it stands first at " + problems.at(first.keyPlace());
        boolean groups = first.value() instanceof Value.Entries && value instanceof Value.Entries;
        String mend = groups ? "put all of it under one of them" : "leave one of them out";
        problems.error(key.place(), ProblemCode.TWICE, "key '" + key.text() + "' stands twice", where, mend);
        if (groups) {
            Value.Entries all = (Value.Entries) first.value();
            for (Value.Entry entry : ((Value.Entries) value).entries()) {
                all = all.entry(entry.key()).isPresent() ? all : all.with(entry);
            }
            entries.set(index, new Value.Entry(first.key(), first.keyPlace(), all));
        }
    }

    private Place place(Event event) {
        Mark start = event.getStartMark().orElseThrow();
        boolean collection = event instanceof CollectionStartEvent;
        return place(start, collection ? start : event.getEndMark().orElse(start));
    }

    private Place place(Mark start, Mark end) {
        int width = end.getLine() == start.getLine() ? Math.max(end.getColumn() - start.getColumn(), 1) : 1;
        return new Place(start.getLine() + 1, start.getColumn() + 1, width, source);
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
