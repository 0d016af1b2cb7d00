package hotidle.answer.draw;

import hotidle.plots.scheme.SchemeNet;
import hotidle.plots.scheme.SchemePart;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;

/** The answer of {@code draw} as JSON. */
record DrawRecord(
        String circuit,
        String build,
        Optional<String> duty,
        Optional<String> against,
        boolean solved,
        String file,
        String paper,
        List<String> parts,
        List<String> nodes,
        int leaksGathered,
        List<String> changedParts,
        List<String> changedNodes) {

    static DrawRecord of(DrawAnswer answer) {
        return new DrawRecord(
                answer.shown().unit().circuit(),
                answer.shown().unit().build(),
                answer.shown().duty().map(DutyPoint::name),
                answer.shown().against().map(Transmission::build),
                answer.shown().state().isPresent(),
                answer.file(),
                answer.paper(),
                answer.scheme().parts().stream().map(SchemePart::name).toList(),
                answer.scheme().nets().stream()
                        .filter(net -> net.look() != SchemeNet.Look.RESERVOIR)
                        .map(SchemeNet::name)
                        .toList(),
                answer.drawn().leaks(),
                answer.drawn().changed(),
                answer.scheme().nets().stream()
                        .filter(SchemeNet::changed)
                        .map(SchemeNet::name)
                        .toList());
    }
}
