package hotidle.answer.map;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hotidle.answer.LimitRecord;
import hotidle.study.WindowMap;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Maps as JSON. */
record MapRecord(String circuit, List<BuildMap> builds) {

    /** The verdict of a point of which nothing is known. */
    static final String NOT_KNOWN = "not known";

    record BuildMap(String build, SolvedMap map) {}

    record SolvedMap(String size, String sizeUnit, List<Named> namedPoints, List<MapPoint> points) {}

    record Named(@JsonUnwrapped MapPoint point, String name) {}

    record MapPoint(
            double setPressurePa,
            double size,
            OptionalDouble headroom,
            String verdict,
            Optional<String> margin,
            Optional<String> part,
            Optional<String> duty,
            Optional<String> whyNotKnown,
            List<LimitRecord> notKnown) {

        static MapPoint of(WindowMap.MapCell cell) {
            return new MapPoint(
                    cell.pressure(),
                    cell.value(),
                    cell.headroom(),
                    cell.least().map(least -> least.margin().verdict().word()).orElse(NOT_KNOWN),
                    cell.least().map(least -> least.key().kind().word()),
                    cell.least().map(least -> least.key().part()),
                    cell.least().map(least -> least.key().duty()),
                    Optional.of(WhyNotKnown.of(cell)).filter(why -> !why.isEmpty()),
                    LimitRecord.of(cell.undecided()));
        }
    }

    static BuildMap of(String build, WindowMap map) {
        return new BuildMap(
                build,
                new SolvedMap(
                        map.axis().name(),
                        map.axis().dimension().kind() == WearSize.SizeKind.AREA ? "m2" : "m",
                        map.marks().stream()
                                .map(mark -> new Named(MapPoint.of(mark.cell()), mark.name()))
                                .toList(),
                        map.cells().stream()
                                .flatMap(List::stream)
                                .map(MapPoint::of)
                                .toList()));
    }
}
