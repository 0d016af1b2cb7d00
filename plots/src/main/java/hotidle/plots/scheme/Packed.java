package hotidle.plots.scheme;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A drawing whose pieces no line joins, put in rows and columns: those with as many parts side by side at one height, as many to a row
 * as make the drawing largest on the smallest paper, of equal ones most. One that hangs together, or has several frames, stays as it is.
 */
final class Packed {

    /** Between two pieces, and between a piece and its frame [mm] (chosen). */
    private static final double GAP = 3;

    private Packed() {}

    /**
     * What hangs together.
     *
     * @param tags  nets, one at least
     * @param area  around all of it
     */
    private record Piece(List<Sheet.Box> boxes, List<Sheet.Tag> tags, List<Sheet.Wire> wires, Rectangle2D area) {}

    /** A piece and where its upper left corner goes. */
    private record Put(Piece piece, Point2D to) {}

    /**
     * The drawing packed.
     *
     * @param more height that heading and key take [mm]
     */
    static Sheet of(Sheet sheet, double more) {
        List<Piece> pieces = pieces(sheet);
        if (sheet.frames().size() > 1 || pieces.size() < 2) {
            return sheet;
        }
        // as it was laid out where rows would take a larger paper
        Stream<Sheet> packed = IntStream.range(0, pieces.size())
                .mapToObj(fewer -> sheet(rows(pieces, pieces.size() - fewer), sheet.frames()));
        return Stream.concat(packed, Stream.of(sheet))
                .min(Comparator.comparingInt((Sheet one) -> Paper.step(one.width(), one.height() + more))
                        .thenComparingDouble(one -> -Drawing.factor(one, more)))
                .orElseThrow();
    }

    /** Those of most parts first, otherwise in the order of the description. */
    private static List<Piece> pieces(Sheet sheet) {
        List<Piece> pieces = new ArrayList<>();
        List<Sheet.Tag> left = new ArrayList<>(sheet.tags());
        List<Sheet.Box> boxesLeft = new ArrayList<>(sheet.boxes());
        while (!left.isEmpty() || !boxesLeft.isEmpty()) {
            List<Sheet.Tag> tags = new ArrayList<>();
            List<Sheet.Box> boxes = new ArrayList<>();
            if (left.isEmpty()) {
                boxes.add(boxesLeft.remove(0));
            } else {
                tags.add(left.remove(0));
            }
            boolean more = true;
            while (more) {
                List<Sheet.Box> joined = boxesLeft.stream()
                        .filter(box -> tags.stream().anyMatch(tag -> joins(sheet, box, tag)))
                        .toList();
                boxesLeft.removeAll(joined);
                boxes.addAll(joined);
                List<Sheet.Tag> reached = left.stream()
                        .filter(tag -> boxes.stream().anyMatch(box -> joins(sheet, box, tag)))
                        .toList();
                left.removeAll(reached);
                tags.addAll(reached);
                more = !joined.isEmpty() || !reached.isEmpty();
            }
            pieces.add(piece(boxes, tags, sheet));
        }
        return pieces.stream()
                .sorted(Comparator.comparingInt(piece -> -piece.boxes().size()))
                .toList();
    }

    private static boolean joins(Sheet sheet, Sheet.Box box, Sheet.Tag tag) {
        return sheet.wires().stream()
                .anyMatch(wire -> wire.part().equals(box.part().name())
                        && wire.pin().net().equals(tag.net().name()));
    }

    private static Piece piece(List<Sheet.Box> boxes, List<Sheet.Tag> tags, Sheet sheet) {
        List<Sheet.Wire> wires = sheet.wires().stream()
                .filter(wire -> boxes.stream().anyMatch(box -> box.part().name().equals(wire.part())))
                .toList();
        List<Rectangle2D> areas = new ArrayList<>();
        boxes.forEach(box -> areas.add(box.area()));
        tags.forEach(tag -> areas.add(tag.area()));
        Rectangle2D all = (Rectangle2D) areas.get(0).clone();
        areas.forEach(all::add);
        wires.forEach(wire -> wire.corners().forEach(all::add));
        return new Piece(boxes, tags, wires, all);
    }

    /** So many to a row at most; a row has pieces of as many parts only, and pieces below each other begin at one upright. */
    private static List<Put> rows(List<Piece> pieces, int inRow) {
        double[] columns = new double[inRow];
        List<List<Piece>> rows = new ArrayList<>();
        for (Piece piece : pieces) {
            List<Piece> last = rows.isEmpty() ? List.of() : rows.get(rows.size() - 1);
            if (last.isEmpty()
                    || last.size() == inRow
                    || last.get(0).boxes().size() != piece.boxes().size()) {
                rows.add(new ArrayList<>());
            }
            List<Piece> row = rows.get(rows.size() - 1);
            columns[row.size()] = Math.max(columns[row.size()], piece.area().getWidth());
            row.add(piece);
        }
        List<Put> all = new ArrayList<>();
        double y = GAP;
        for (List<Piece> row : rows) {
            double x = GAP;
            double height = 0;
            for (int i = 0; i < row.size(); i++) {
                all.add(new Put(row.get(i), new Point2D.Double(x, y)));
                x += columns[i] + GAP;
                height = Math.max(height, row.get(i).area().getHeight());
            }
            y += height + GAP;
        }
        return all;
    }

    private static Sheet sheet(List<Put> puts, List<Sheet.Frame> frames) {
        double head = frames.isEmpty() ? 0 : Layered.FRAME_HEAD;
        List<Sheet.Box> boxes = new ArrayList<>();
        List<Sheet.Tag> tags = new ArrayList<>();
        List<Sheet.Wire> wires = new ArrayList<>();
        double width = 0;
        double height = 0;
        for (Put put : puts) {
            Piece piece = put.piece();
            double x = put.to().getX() - piece.area().getX();
            double y = put.to().getY() + head - piece.area().getY();
            piece.boxes().forEach(box -> boxes.add(new Sheet.Box(box.part(), box.plan(), moved(box.area(), x, y))));
            piece.tags().forEach(tag -> tags.add(new Sheet.Tag(tag.net(), tag.plan(), moved(tag.area(), x, y))));
            piece.wires()
                    .forEach(wire -> wires.add(new Sheet.Wire(
                            wire.part(),
                            wire.pin(),
                            wire.corners().stream()
                                    .map(at -> (Point2D) new Point2D.Double(at.getX() + x, at.getY() + y))
                                    .toList())));
            width = Math.max(width, put.to().getX() + piece.area().getWidth() + GAP);
            height = Math.max(height, put.to().getY() + head + piece.area().getHeight() + GAP);
        }
        Rectangle2D whole = new Rectangle2D.Double(0, 0, width, height);
        return new Sheet(
                width,
                height,
                frames.stream()
                        .map(frame -> new Sheet.Frame(
                                frame.name(), whole, new Point2D.Double(1, Layered.FRAME_HEAD - Layered.FRAME_FOOT)))
                        .toList(),
                boxes,
                tags,
                wires);
    }

    private static Rectangle2D moved(Rectangle2D area, double x, double y) {
        return new Rectangle2D.Double(area.getX() + x, area.getY() + y, area.getWidth(), area.getHeight());
    }
}
