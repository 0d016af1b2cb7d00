package hotidle.cli;

import hotidle.answer.list.ListAnswer.Listing;
import hotidle.circuits.Library;
import hotidle.circuits.text.Nearest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What can be listed of the program itself. */
enum ListWord {
    CIRCUITS(Listing.CIRCUITS),
    PARTS(Listing.PARTS),
    FAULTS(Listing.FAULTS),
    UNITS(Listing.UNITS),
    ALL(Listing.values());

    /** In front of a circuit whose jobs are listed. */
    static final String JOBS = "jobs";

    private final Set<Listing> sections;

    ListWord(Listing... sections) {
        this.sections = Set.of(sections);
    }

    /** Which of them it asks for. */
    Set<Listing> sections() {
        return sections;
    }

    /** The word as it is written; empty where it is none. */
    static Optional<ListWord> of(String word) {
        return Arrays.stream(values())
                .filter(one -> one.name().equalsIgnoreCase(word))
                .findFirst();
    }

    /**
     * Refuses a word that is neither what can be listed nor a circuit, with the nearest of all.
     *
     * @throws WrongInputException where it is not
     */
    static void refuseUnknown(String word) {
        if (!Library.names().contains(word) && !Files.exists(Path.of(word))) {
            List<String> words = new ArrayList<>();
            Arrays.stream(values()).forEach(one -> words.add(one.name().toLowerCase(Locale.ROOT)));
            words.add(JOBS);
            words.addAll(Library.names());
            throw new WrongInputException(
                    "hotidle: " + word + " is none of its words\nmend: " + Nearest.mend(word, words));
        }
    }
}
