package hotidle.circuits;

import java.util.Optional;

/** Finds the files that a circuit is based on. */
public interface BaseFiles {

    /** Ready circuits only, by name. */
    BaseFiles LIBRARY = (name, from) -> Library.text(name).map(text -> new FoundFile(name + ".yaml", text));

    /**
     * A file.
     *
     * @param name what it is called in messages, and what files that it is based on are looked for beside
     * @param text what stands in it
     */
    record FoundFile(String name, String text) {}

    /**
     * Finds a file.
     *
     * @param name as written behind based-on
     * @param from the file that names it, as it is called in messages
     */
    Optional<FoundFile> find(String name, String from);
}
