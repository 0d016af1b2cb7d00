package hotidle.answer.page;

import java.util.List;

/**
 * A page, whole.
 *
 * @param title    of the document
 * @param question its heading
 * @param letterhead lines above all: the shop, the unit; may be empty
 * @param sections in reading order, the answer first
 */
public record Page(String title, String question, List<String> letterhead, List<Section> sections) {

    public Page {
        letterhead = List.copyOf(letterhead);
        sections = List.copyOf(sections);
    }

    /** How many tables it has. */
    public int tables() {
        return (int) blocks().stream().mapToLong(block -> block.tables().size()).sum();
    }

    /** How many pictures it has. */
    public int figures() {
        return (int)
                blocks().stream().mapToLong(block -> block.figures().size()).sum();
    }

    private List<Block> blocks() {
        return sections.stream().flatMap(section -> section.blocks().stream()).toList();
    }
}
