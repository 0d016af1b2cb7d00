package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.transmission.QuotedSet;
import hotidle.transmission.SpringChange;
import hotidle.transmission.SpringChange.Lever;
import hotidle.transmission.Transmission;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Ways to another set pressure by the regulator of ten nodes. */
class SpringOfTenNodesTest {

    private static final Transmission UNIT = TenNodes.worn(1);

    @Test
    void everyChangeAloneBalancesAtThePressureAskedFor() {
        double asked = QuotedSet.now(UNIT) + 30 * TenNodes.PSI;
        Set<Lever> levers = EnumSet.noneOf(Lever.class);
        for (SpringChange change : SpringChange.of(UNIT, asked)) {
            change.unit().ifPresent(made -> {
                levers.add(change.lever());
                assertEquals(
                        asked,
                        QuotedSet.now(made),
                        0.1 * TenNodes.PSI,
                        change.lever().toString());
            });
        }
        assertEquals(EnumSet.allOf(Lever.class), levers);
    }

    @Test
    void aStrongerSpringRaisesTheLineAtHotIdle() {
        SpringStudy study = SpringStudy.of(UNIT, QuotedSet.now(UNIT) + 30 * TenNodes.PSI);
        double now = line(study.asIs());
        assertTrue(study.known());
        study.ways().stream()
                .filter(way -> way.effect().isPresent())
                .forEach(way -> assertTrue(
                        line(way.effect().get()) > now + 20 * TenNodes.PSI,
                        way.change().toString()));
    }

    private static double line(SpringStudy.ChangeEffect effect) {
        return effect.idle().figures().orElseThrow().line();
    }
}
