package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.transmission.QuotedSet;
import hotidle.transmission.SpringChange;
import hotidle.transmission.SpringChange.Lever;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is said of the regulator's spring, written into the file and solved. */
class SpringStudyTest {

    private static final double PSI = 6894.757293168361;

    /** A tenth of a psi. */
    private static final double NEAR = 0.1 * PSI;

    private static DescribedCircuit library(String name) {
        return CircuitReader.read(Library.text(name).orElseThrow(), name + ".yaml")
                .circuit()
                .orElseThrow();
    }

    private static SpringChange by(Lever lever, List<SpringChange> changes) {
        return changes.stream()
                .filter(change -> change.lever() == lever)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void eachChangeAloneBalancesAtThePressureAskedFor() {
        int made = 0;
        for (String name : List.of("shuttle-five", "crescent-four", "vane-six", "valve-body-bench")) {
            Transmission unit = library(name).unit();
            if (unit.commanded().isEmpty()) {
                continue;
            }
            double now = QuotedSet.now(unit);
            for (double pressure : new double[] {now - 10 * PSI, now + 15 * PSI, now + 60 * PSI}) {
                for (SpringChange change : SpringChange.of(unit, pressure)) {
                    if (change.unit().isPresent()) {
                        assertEquals(pressure, QuotedSet.now(change.unit().get()), NEAR, name + change);
                        made++;
                    }
                }
            }
        }
        assertTrue(made >= 30, made + " changes");
    }

    /** The file's own word for each change, so that a printed answer is what a user would write. */
    private static String words(SpringChange change) {
        String key =
                switch (change.lever()) {
                    case PRELOAD -> "regulator.preload: {to: %.3f N";
                    case SHIM -> "regulator.shim: {to: %.5f m";
                    case RATE -> "regulator.spring-rate: {to: %.3f N/m";
                    case BOOST -> "regulator.areas.boost.area: {to: %.12f m2";
                };
        String changed = String.format(
                Locale.ROOT, key + ", because: tried}", change.needed().orElseThrow());
        return change.lever() == Lever.RATE
                ? changed
                        + String.format(
                                Locale.ROOT,
                                "\n      regulator.preload: {to: %.6f N, because: same length}",
                                change.needed().orElseThrow() / change.now() * PRELOAD)
                : changed;
    }

    private static final double PRELOAD = 118.106;

    @Test
    void writtenAsABuildEachAnswerGivesTheSetPressureWithinATenthOfAPsi() {
        double pressure = 240 * PSI;
        String text = Library.text("shuttle-five").orElseThrow();
        assertTrue(text.contains("preload: 118.106 N"), "the preload that this test multiplies");
        for (SpringChange change : SpringChange.of(library("shuttle-five").unit("fresh"), pressure)) {
            String more = text + "\n  tried:\n    on: fresh\n    changes:\n      " + words(change) + "\n";
            Transmission tried =
                    CircuitReader.read(more, "x.yaml").circuit().orElseThrow().unit("tried");
            assertEquals(pressure, QuotedSet.now(tried), NEAR, change.lever().toString());
        }
    }

    @Test
    void solvedWithTheLineHeldThereTheSpoolStandsAtItsFirstEdge() {
        double pressure = 240 * PSI;
        for (SpringChange change : SpringChange.of(library("shuttle-five").unit("fresh"), pressure)) {
            Transmission unit = change.unit().orElseThrow();
            double below = SpoolAlone.position(unit, pressure - NEAR);
            double above = SpoolAlone.position(unit, pressure + NEAR);
            double edge = SpoolAlone.edge(unit);
            assertTrue(below < edge && edge < above, change.lever() + ": " + below + " " + edge + " " + above);
        }
    }

    @Test
    void theSpringRaisesEveryTorqueAlikeTheBoostOnlyWhereItIsAskedFor() {
        Transmission unit = library("vane-six").unit("fresh");
        SpringStudy study = SpringStudy.of(unit, QuotedSet.now(unit) + 60 * PSI);
        double before = study.asIs().noTorque();
        SpringStudy.ChangeEffect spring = study.ways().get(0).effect().orElseThrow();
        assertEquals(60 * PSI, spring.noTorque() - before, NEAR);
        SpringStudy.ChangeEffect boost = study.ways().get(3).effect().orElseThrow();
        assertTrue(boost.noTorque() - before < 30 * PSI, (boost.noTorque() - before) / PSI + " psi");
        assertTrue(spring.reverse().getAsDouble() > study.asIs().reverse().getAsDouble() + 30 * PSI);
    }

    @Test
    void aStifferSpringOfTheSameLengthHasMoreRateAndAsMuchMorePreload() {
        Transmission unit = library("vane-six").unit();
        List<SpringChange> all = SpringChange.of(unit, QuotedSet.now(unit) + 20 * PSI);
        SpringChange rate = by(Lever.RATE, all);
        assertTrue(rate.needed().orElseThrow() > rate.now());
        assertTrue(by(Lever.SHIM, all).needed().orElseThrow() > 0);
    }

    @Test
    void shimsThatWouldPressTheCoilsTogetherAreNoAnswer() {
        String text = Library.text("shuttle-five").orElseThrow();
        String with = "preload: 118.106 N\n    installed-height: 40 mm\n    solid-height: ";
        double far = 160 * PSI;
        SpringChange solid = by(Lever.SHIM, changes(text.replace("preload: 118.106 N", with + "37.5 mm"), far));
        assertEquals(Optional.of(SpringChange.SpringObstacle.COILS_TOUCH), solid.obstacle());
        SpringChange free = by(Lever.SHIM, changes(text.replace("preload: 118.106 N", with + "25 mm"), far));
        assertEquals(
                40e-3 - 25e-3 - 5e-3 - free.needed().orElseThrow(),
                free.overStop().getAsDouble(),
                1e-12);
        SpringChange unknown = by(Lever.SHIM, changes(text, far));
        assertTrue(unknown.overStop().isEmpty());
    }

    private static List<SpringChange> changes(String text, double pressure) {
        Transmission unit =
                CircuitReader.read(text, "x.yaml").circuit().orElseThrow().unit("fresh");
        return SpringChange.of(unit, pressure);
    }
}
