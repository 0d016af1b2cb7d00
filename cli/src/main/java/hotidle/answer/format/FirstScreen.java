package hotidle.answer.format;

import java.util.ArrayList;
import java.util.List;

/** A first screen while it is written: it knows how many of its lines are left. */
public final class FirstScreen {

    private final List<String> lines = new ArrayList<>();
    private final List<String> foot;

    /** A screen that ends with some lines. */
    public FirstScreen(String foot) {
        this.foot = foot.lines().toList();
    }

    /** Adds lines that have to be there. */
    public FirstScreen add(String text) {
        text.lines().forEach(lines::add);
        return this;
    }

    /**
     * Adds lines where all of them have room.
     *
     * @return whether they had
     */
    public boolean addWhereRoom(String text) {
        boolean room = text.lines().count() <= room();
        if (room) {
            add(text);
        }
        return room;
    }

    /** Lines that are left. */
    public int room() {
        return Wrap.LINES - lines.size() - foot.size();
    }

    /** All of it, with a line feed at its end. */
    public String text() {
        List<String> all = new ArrayList<>(lines);
        all.addAll(foot);
        return String.join("\n", all) + "\n";
    }
}
