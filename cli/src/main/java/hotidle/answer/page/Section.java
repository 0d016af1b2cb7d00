package hotidle.answer.page;

import java.util.List;

/**
 * A part of a page under a heading of its own.
 *
 * @param id     by which it is jumped to
 * @param title  its heading
 * @param blocks in reading order
 */
public record Section(String id, String title, List<Block> blocks) {

    public Section {
        blocks = List.copyOf(blocks);
    }
}
