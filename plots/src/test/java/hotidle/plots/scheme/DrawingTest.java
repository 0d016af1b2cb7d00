package hotidle.plots.scheme;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A circuit drawn: readable, true to its description, the same each time. */
class DrawingTest {

    private final Scheme scheme = Schemes.ofEverySymbol(true);

    @Test
    void symbolsLinesAndWritingKeepOutOfEachOthersWay() {
        assertEquals(List.of(), Flaws.of(scheme, Layered.sheet(scheme, 20)));
        Scheme still = Schemes.ofEverySymbol(false);
        assertEquals(List.of(), Flaws.of(still, Layered.sheet(still, 20)));
    }

    @Test
    void piecesThatNothingJoinsStandInRowsAndColumns() {
        Scheme clutches = Schemes.ofClutches();
        Sheet sheet = Layered.sheet(clutches, 20);
        assertEquals(List.of(), Flaws.of(clutches, sheet));
        List<Double> tops = sheet.boxes().stream()
                .map(box -> box.area().getMinY())
                .distinct()
                .toList();
        long columns = sheet.boxes().size() / tops.size();
        assertEquals(sheet.boxes().size(), tops.size() * columns, "full rows of clutches");
        assertTrue(Drawing.factor(sheet, 20) > 1.5, "a small drawing is drawn large: " + Drawing.factor(sheet, 20));
        Sheet.Tag alone = sheet.tags().get(sheet.tags().size() - 1);
        assertEquals("alone", alone.net().name());
        assertTrue(sheet.boxes().stream()
                .allMatch(box -> box.area().getMaxY() < alone.area().getMinY()));
    }

    @Test
    void aDrawingThatHangsTogetherIsNotPacked() {
        Sheet sheet = Layered.sheet(scheme, 20);
        assertEquals(sheet, Packed.of(sheet, 20));
    }

    /** Numbers that are known, or others, move nothing: two states lie over one another. */
    @Test
    void aDrawingWithPressuresLiesOverOneWithout() {
        Sheet known = Layered.sheet(scheme, 20);
        Sheet still = Layered.sheet(Schemes.ofEverySymbol(false), 20);
        assertEquals(areas(known), areas(still));
        assertEquals(
                known.wires().stream().map(Sheet.Wire::corners).toList(),
                still.wires().stream().map(Sheet.Wire::corners).toList());
    }

    private static List<Object> areas(Sheet sheet) {
        List<Object> areas = new ArrayList<>();
        sheet.frames().forEach(frame -> areas.add(frame.area()));
        sheet.boxes().forEach(box -> areas.add(box.area()));
        sheet.tags().forEach(tag -> areas.add(tag.area()));
        return areas;
    }

    /** Each kind of flaw, made by moving one thing of a good drawing. */
    @Test
    void aFlawIsSeen() {
        Sheet good = Layered.sheet(scheme, 20);
        Sheet.Box first = good.boxes().get(0);
        Sheet.Box moved =
                new Sheet.Box(first.part(), first.plan(), good.boxes().get(5).area());
        List<Sheet.Box> boxes = new ArrayList<>(good.boxes());
        boxes.set(0, moved);
        List<String> flaws = Flaws.of(
                scheme, new Sheet(good.width(), good.height(), good.frames(), boxes, good.tags(), good.wires()));
        assertTrue(flaws.stream().anyMatch(flaw -> flaw.contains("lies on")), flaws.toString());
        assertTrue(flaws.stream().anyMatch(flaw -> flaw.contains("is not joined")), flaws.toString());
        Sheet.Wire wire = good.wires().get(0);
        Point2D middle = point(
                good.boxes().get(7).area().getCenterX(),
                good.boxes().get(7).area().getCenterY());
        List<Sheet.Wire> wires = new ArrayList<>(good.wires());
        wires.set(
                0,
                new Sheet.Wire(wire.part(), wire.pin(), List.of(wire.corners().get(0), middle)));
        flaws = Flaws.of(
                scheme, new Sheet(good.width(), good.height(), good.frames(), good.boxes(), good.tags(), wires));
        assertTrue(flaws.stream().anyMatch(flaw -> flaw.contains("runs through")), flaws.toString());
        assertTrue(flaws.stream().anyMatch(flaw -> flaw.contains("neither level")), flaws.toString());
    }

    @Test
    void linesCrossNoMoreOftenThanInTheOrderOfTheDescription() {
        Sheet inOrder = Layered.inOrder(scheme);
        assertEquals(scheme.parts().size(), inOrder.boxes().size());
        assertTrue(new Drawing(scheme).crossings() <= inOrder.crossings(), inOrder.crossings() + " in order");
    }

    @Test
    void theSameCircuitGivesTheSameBytes() {
        for (String ending : Drawing.ENDINGS) {
            assertArrayEquals(
                    new Drawing(scheme).bytes("a." + ending), new Drawing(scheme).bytes("b." + ending), ending);
        }
    }

    @Test
    void eachPartAndEachNetHasATitleInTheSvg() {
        String svg = new String(new Drawing(scheme).bytes("a.svg"), StandardCharsets.UTF_8);
        scheme.parts().forEach(part -> assertTrue(svg.contains("<title>" + part.title() + "</title>"), part.name()));
        scheme.nets().stream()
                .filter(net -> net.look() != SchemeNet.Look.RESERVOIR)
                .forEach(net -> assertTrue(svg.contains("<title>" + net.title() + "</title>"), net.name()));
        assertTrue(svg.contains(">spool_valve<"), "writing stays writing");
    }

    @Test
    void aPdfCanBeSearched() throws IOException {
        try (PDDocument document = Loader.loadPDF(new Drawing(scheme).bytes("a.pdf"))) {
            assertEquals(1, document.getNumberOfPages());
            String text = new PDFTextStripper().getText(document);
            scheme.parts().forEach(part -> assertTrue(text.contains(part.name()), part.name()));
        }
    }

    @Test
    void aPngHas150DotsToTheInch() throws IOException {
        Drawing drawing = new Drawing(scheme);
        var image = ImageIO.read(new ByteArrayInputStream(drawing.bytes("a.png")));
        assertEquals(drawing.paper().width() / 25.4 * 150, image.getWidth(), 1);
        assertEquals(drawing.paper().height() / 25.4 * 150, image.getHeight(), 1);
    }

    @Test
    void lettersAreNotBelowTwoAndAHalfMillimetres() {
        assertTrue(Lettering.SMALL >= 2.5 && Lettering.FRAME >= 2.5 && Lettering.HEADING >= 2.5);
        assertTrue(new Drawing(scheme).factor() >= 1);
    }

    @Test
    void paperIsTheSmallestThatHolds() {
        assertEquals("A4", Paper.holding(200, 100).name());
        assertEquals("A3", Paper.holding(100, 400).name());
        assertEquals("a sheet of its own", Paper.holding(5000, 100).name());
        assertTrue(Paper.step(200, 100) < Paper.step(100, 400) && Paper.step(100, 400) < Paper.step(5000, 100));
    }

    @Test
    void higherPressureIsDarker() {
        double light = PressureScale.of(0).getRed();
        double middle = PressureScale.of(0.5).getRed();
        double dark = PressureScale.of(1).getRed();
        assertTrue(light > middle && middle > dark);
        assertEquals(Pen.INK, PressureScale.of(Double.NaN));
    }

    @Test
    void branchesOfANetHaveADotAndCrossingsHaveNone() {
        Pin pin = new Pin("line", Pin.Role.IN, 1);
        Sheet.Wire one = new Sheet.Wire("a", pin, List.of(point(0, 0), point(0, 10)));
        Sheet.Wire other = new Sheet.Wire("b", pin, List.of(point(0, 0), point(0, 5), point(5, 5)));
        assertEquals(List.of(point(0, 5)), Junctions.of(List.of(one, other)));
        Pin foreign = new Pin("lube", Pin.Role.IN, 1);
        Sheet.Wire across = new Sheet.Wire("c", foreign, List.of(point(-3, 2), point(3, 2)));
        assertEquals(1, Crossings.of(List.of(one, other, across)));
        assertEquals(0, Crossings.of(List.of(one, other)));
    }

    @Test
    void aFileIsWrittenWholeAndOnlyInAKnownFormat(@TempDir Path folder) throws IOException {
        Drawing drawing = new Drawing(scheme);
        drawing.write(folder.resolve("a.svg"));
        assertArrayEquals(drawing.bytes("a.svg"), Files.readAllBytes(folder.resolve("a.svg")));
        assertThrows(IllegalArgumentException.class, () -> drawing.bytes("a.gif"));
        try (var files = Files.list(folder)) {
            assertEquals(1, files.count());
        }
    }

    private static Point2D point(double x, double y) {
        return new Point2D.Double(x, y);
    }

    @Test
    void aReservoirHangsBetweenItsLineAndTheNextOne() {
        Pin drain = new Pin("pan", Pin.Role.OUT, Double.NaN);
        Pin next = new Pin("n1", Pin.Role.OUT, Double.NaN);
        SchemePart part = new SchemePart(
                "valve",
                Symbol.SELECTOR,
                "pump",
                List.of(),
                Widest.NOTHING,
                "",
                List.of(drain, next),
                List.of(new Envelope(List.of())),
                false,
                Double.NaN,
                false);
        BoxPlan plan = BoxPlan.of(part, Schemes.ofEverySymbol(false));
        double at = plan.tanks().get(drain).getX();
        assertTrue(
                at > plan.pins().get(drain).getX() && at < plan.pins().get(next).getX(), plan.toString());
    }
}
