package hotidle.study.spread;

import hotidle.assess.Margin;
import hotidle.study.DutyMargins;
import hotidle.study.Judgement;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Units drawn and judged, each for itself. Keep one for each thread. */
final class DrawnUnits {

    private final SpreadQuestion question;
    private final Map<String, DutyMargins> judges = new LinkedHashMap<>();

    DrawnUnits(SpreadQuestion question) {
        this.question = question;
        Transmission first = question.median();
        question.duties().forEach(duty -> judges.put(duty, new DutyMargins(first, duty)));
    }

    /** The unit at some shares. */
    DrawnUnit at(double[] shares) {
        Optional<Transmission> unit = question.unit(shares);
        if (unit.isEmpty()) {
            return new DrawnUnit(shares, true, List.of(), Map.of());
        }
        List<String> unsolved = new ArrayList<>();
        Map<Judgement.Key, Margin> margins = new LinkedHashMap<>();
        judges.forEach(
                (duty, judge) -> judge.of(unit.get()).ifPresentOrElse(margins::putAll, () -> unsolved.add(duty)));
        return new DrawnUnit(shares, false, unsolved, margins);
    }

    /** States asked for. */
    long solves() {
        return judges.values().stream().mapToLong(DutyMargins::solves).sum();
    }
}
