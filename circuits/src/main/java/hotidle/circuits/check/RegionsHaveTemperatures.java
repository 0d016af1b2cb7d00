package hotidle.circuits.check;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Every region that a part lies in has a temperature at each duty point. */
final class RegionsHaveTemperatures implements Rule.OfDuty {

    @Override
    public void check(Attributes file, Attributes duty, Parts parts) {
        if (!duty.has("temperatures")) {
            return;
        }
        Set<String> regions = new LinkedHashSet<>(Set.of(SumpIsARegion.PAN));
        parts.all().values().forEach(part -> part.given().wordIf("region").ifPresent(regions::add));
        List<String> missing = regions.stream()
                .filter(region -> !duty.numbers("temperatures").containsKey(region))
                .toList();
        if (!missing.isEmpty()) {
            duty.error(
                    ProblemCode.REGION_WITHOUT_TEMPERATURE,
                    "temperatures",
                    "has no temperature for region " + String.join(", ", missing),
                    "parts lie there, and their oil needs one",
                    "add " + missing.get(0) + ": 90 degC, for example");
        }
    }
}
