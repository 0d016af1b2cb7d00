package hotidle.answer.page;

import java.util.List;

/**
 * A part of a page under a heading of its own.
 *
 * @param id     by which it is jumped to
 * @param title  its heading
 * @param closed what is clicked on to see it on a screen, once or never; on paper it is there in any case
 * @param blocks in reading order
 */
public record Section(String id, String title, List<String> closed, List<Block> blocks) {

    /** One that is seen at once. */
    public Section(String id, String title, List<Block> blocks) {
        this(id, title, List.of(), blocks);
    }

    /** One that a screen shows when asked to. */
    public static Section shownWhenAsked(String id, String title, String ask, List<Block> blocks) {
        return new Section(id, title, List.of(ask), blocks);
    }

    public Section {
        closed = List.copyOf(closed);
        blocks = List.copyOf(blocks);
    }
}
