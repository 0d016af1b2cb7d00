package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.result.Solution;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** A state that a study starts from is a first guess: it does not choose between two steady states of a ready circuit. */
class SameBranchTest {

    private static final List<Double> SPEEDS =
            DoubleStream.of(600, 1100, 2000, 4000).map(rpm -> rpm / 60).boxed().toList();

    @Test
    void aWarmStartTakesTheSameBranchAsAColdOneAtEveryReadyDuty() {
        int compared = 0;
        for (String name : Library.names()) {
            DescribedCircuit circuit = CircuitReader.read(Library.text(name).orElseThrow(), name)
                    .circuit()
                    .orElseThrow();
            for (DescribedCircuit.Build build : circuit.builds()) {
                Transmission unit = circuit.unit(build.name());
                if (unit.commanded().isEmpty()) {
                    continue;
                }
                for (DutyPoint duty : unit.duties()) {
                    DutyChain chain = new DutyChain(duty.name(), SPEEDS);
                    for (double share : new double[] {0.6, 1, 1.6}) {
                        Transmission set = SetPressure.of(unit, share * unit.highestSet());
                        Judgement warm = chain.judged(set);
                        Judgement cold = Judgement.of(set, duty, SPEEDS);
                        String where = name + " " + build.name() + " " + duty.name() + " " + share;
                        assertEquals(cold.known(), warm.known(), where);
                        if (cold.outcome().state().isPresent()) {
                            same(
                                    cold.outcome().state().get(),
                                    warm.outcome().state().orElseThrow(),
                                    where);
                            sameHub(cold, warm, where);
                            compared++;
                        }
                    }
                }
            }
        }
        assertTrue(compared > 100, compared + " states");
    }

    /** As torque is asked of one set pressure after the other. */
    @Test
    void aWarmSearchForTorqueTakesTheSameBranchAsAColdOne() {
        int compared = 0;
        for (String name : Library.names()) {
            DescribedCircuit circuit = CircuitReader.read(Library.text(name).orElseThrow(), name)
                    .circuit()
                    .orElseThrow();
            Transmission unit = circuit.unit();
            if (unit.commanded().isEmpty() || !TorqueConditions.given(unit)) {
                continue;
            }
            double torque = unit.duties().stream()
                    .mapToDouble(DutyPoint::engineTorque)
                    .max()
                    .orElseThrow();
            double speed = TorqueConditions.USUAL_SPEED;
            for (Range range : unit.ranges()) {
                TorqueSearch search = new TorqueSearch(unit, range, speed);
                for (double share : new double[] {0.6, 1, 1.6}) {
                    search = search.onwards(SetPressure.of(unit, share * unit.highestSet()));
                    TorqueSearch alone = new TorqueSearch(search.unit(), search.range(), speed);
                    for (double asked : new double[] {torque / 4, torque}) {
                        same(
                                alone.tried(asked, speed).outcome().state().orElseThrow(),
                                search.tried(asked, speed).outcome().state().orElseThrow(),
                                name + " " + range.name() + " " + share + " " + asked);
                        compared++;
                    }
                    for (double slower : new double[] {0.3 * speed, 0.6 * speed}) {
                        same(
                                new TorqueSearch(search.unit(), search.range(), speed)
                                        .tried(torque, slower)
                                        .outcome()
                                        .state()
                                        .orElseThrow(),
                                search.tried(torque, slower).outcome().state().orElseThrow(),
                                name + " " + range.name() + " " + share + " from the nearest speed to " + slower);
                        compared++;
                    }
                }
            }
        }
        assertTrue(compared > 100, compared + " states");
    }

    /** As wear goes on: each size a little, then far beyond what the build has, and back to new. */
    @Test
    void aWarmStartTakesTheSameBranchAsAColdOneWhereASizeHasChanged() {
        int compared = 0;
        for (String name : Library.names()) {
            DescribedCircuit circuit = CircuitReader.read(Library.text(name).orElseThrow(), name)
                    .circuit()
                    .orElseThrow();
            Adjustable build = circuit.adjustable(
                    circuit.builds().get(circuit.builds().size() - 1).name());
            DutyPoint duty = build.unit().duties().get(0);
            DutyChain before = new DutyChain(duty.name(), SPEEDS);
            before.judged(build.unit());
            for (WearSize size : Wear.fits(build)) {
                DutyChain chain = before.branch();
                for (double share : new double[] {0.1, 4, 0}) {
                    double changed = share == 0 ? size.fresh() : size.value() + share * size.allowance();
                    Optional<Transmission> unit = build.with(size, changed);
                    if (unit.isPresent()) {
                        Judgement warm = chain.judged(unit.get());
                        Judgement cold = Judgement.of(unit.get(), duty, SPEEDS);
                        String where = name + " " + size.name() + " " + share;
                        assertEquals(cold.known(), warm.known(), where);
                        if (cold.outcome().state().isPresent()) {
                            same(
                                    cold.outcome().state().get(),
                                    warm.outcome().state().orElseThrow(),
                                    where);
                            sameLine(cold, warm, where);
                            sameHub(cold, warm, where);
                            compared++;
                        }
                    }
                }
            }
        }
        assertTrue(compared > 100, compared + " states");
    }

    /** The line held is found to 1e-9 of the regulator's way; supply and demand then to ten times that. */
    private static void sameLine(Judgement cold, Judgement warm, String where) {
        cold.held().flatMap(HeldLine::balance).ifPresent(line -> {
            HeldLine.LineBalance other = warm.held().flatMap(HeldLine::balance).orElseThrow();
            assertEquals(line.supply(), other.supply(), 1e-8 * Math.abs(line.supply()), where + " supply");
            assertEquals(line.demand(), other.demand(), 1e-8 * Math.abs(line.demand()), where + " demand");
        });
    }

    /** The hub's film is found to half a revolution a minute, over which film and load move no faster than in proportion to speed. */
    private static void sameHub(Judgement cold, Judgement warm, String where) {
        assertEquals(cold.hub().map(HubOverSpeed::contact), warm.hub().map(HubOverSpeed::contact), where + " contact");
        cold.margins().stream()
                .filter(margin ->
                        List.of(Margin.Kind.FILM, Margin.Kind.UNIT_LOAD).contains(margin.kind()))
                .filter(margin -> margin.value().isPresent())
                .forEach(margin -> {
                    Margin other = warm.margins().stream()
                            .filter(one ->
                                    one.kind() == margin.kind() && one.part().equals(margin.part()))
                            .findFirst()
                            .orElseThrow();
                    double value = margin.value().getAsDouble();
                    assertEquals(value, other.value().orElseThrow(), 1e-3 * value, where + " " + margin.kind());
                });
    }

    private static void same(Solution cold, Solution warm, String where) {
        cold.pressures()
                .forEach((node, pressure) -> assertEquals(
                        pressure, warm.pressure(node), 1e-7 * (1e5 + Math.abs(pressure)), where + " " + node));
    }
}
