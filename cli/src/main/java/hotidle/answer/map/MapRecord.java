package hotidle.answer.map;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hotidle.study.WindowMap;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Optional;

/** Maps as JSON. */
record MapRecord(String circuit, List<Build> builds) {

    /** The verdict of a point of which nothing is known. */
    static final String NOT_KNOWN = "not known";

    record Build(String build, Field map) {}

    record Field(String size, String sizeUnit, List<Named> namedPoints, List<Point> points) {}

    record Named(@JsonUnwrapped Point point, String name) {}

    record Point(
            double setPressurePa,
            double size,
            double headroom,
            String verdict,
            Optional<String> margin,
            Optional<String> part,
            Optional<String> duty,
            Optional<String> whyNotKnown) {

        static Point of(WindowMap.Cell cell) {
            return new Point(
                    cell.pressure(),
                    cell.value(),
                    cell.headroom(),
                    cell.least().map(least -> least.margin().verdict().word()).orElse(NOT_KNOWN),
                    cell.least().map(least -> least.key().kind().word()),
                    cell.least().map(least -> least.key().part()),
                    cell.least().map(least -> least.key().duty()),
                    Optional.of(cell.why()).filter(why -> !why.isEmpty()));
        }
    }

    static Build of(String build, WindowMap map) {
        return new Build(
                build,
                new Field(
                        map.axis().name(),
                        map.axis().dimension().kind() == WearSize.Kind.AREA ? "m2" : "m",
                        map.marks().stream()
                                .map(mark -> new Named(Point.of(mark.cell()), mark.name()))
                                .toList(),
                        map.cells().stream()
                                .flatMap(List::stream)
                                .map(Point::of)
                                .toList()));
    }
}
