package hotidle.answer.report;

import hotidle.answer.phrase.FaultMeasurePhrase;
import hotidle.answer.phrase.LessonPhrase;
import hotidle.answer.phrase.UnitFaultPhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.fault.UnitFault;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What the gauges of a handout cannot tell apart, and what would.
 *
 * @param cases its units, in the order of the letters
 * @param named whether it names faults to choose from
 */
record LessonAlike(DescribedCircuit circuit, List<LessonUnit> cases, boolean named) {

    /** In sentences: a unit and a fault that it has not, and two units that read alike; none of one unit that stands alone. */
    List<String> said() {
        List<String> said = new ArrayList<>();
        for (int i = 0; i < cases.size(); i++) {
            LessonUnit one = cases.get(i);
            List<UnitFault> open = open(one);
            if (!open.isEmpty()) {
                Set<String> measured = new LinkedHashSet<>();
                one.laid().ifPresent(own -> measured.add(measured(own.fault())));
                open.forEach(fault -> measured.add(measured(fault)));
                said.add(LessonPhrase.readsAs(
                        LessonPhrase.unit(i),
                        open.stream()
                                .map(fault -> UnitFaultPhrase.brief(fault.kind(), fault.part()))
                                .toList(),
                        List.copyOf(measured)));
            }
        }
        for (int i = 0; i < cases.size(); i++) {
            for (int k = i + 1; k < cases.size(); k++) {
                if (alike(cases.get(i), cases.get(k))) {
                    said.add(LessonPhrase.twoAlike(
                            LessonPhrase.unit(i), LessonPhrase.unit(k), measured(cases.get(i), cases.get(k))));
                }
            }
        }
        if (said.isEmpty() && (named || cases.size() > 1)) {
            said.add(named ? LessonPhrase.ALL_TOLD : LessonPhrase.UNITS_TOLD);
        }
        return said;
    }

    /**
     * Faults that a unit may be taken to have: each unit has its own, so that one that another unit has is none of them, but where the
     * two can be changed for each other.
     */
    private List<UnitFault> open(LessonUnit one) {
        return one.readsAs().stream()
                .filter(fault -> cases.stream()
                        .filter(other -> !other.equals(one) && has(other, fault))
                        .allMatch(other -> one.laid()
                                .filter(own -> other.readsAs().stream().anyMatch(as -> same(as, own.fault())))
                                .isPresent()))
                .toList();
    }

    private static boolean has(LessonUnit unit, UnitFault fault) {
        return unit.laid().filter(laid -> same(laid.fault(), fault)).isPresent();
    }

    private static boolean same(UnitFault one, UnitFault other) {
        return one.name().equals(other.name());
    }

    private static boolean alike(LessonUnit one, LessonUnit other) {
        return IntStream.range(0, one.sweeps().size())
                .allMatch(
                        range -> one.sweeps().get(range).readsAs(other.sweeps().get(range)));
    }

    private static String measured(UnitFault fault) {
        return FaultMeasurePhrase.of(fault.kind(), fault.part());
    }

    /** Where they have a fault, what shows it; of two builds the sizes in which they differ. */
    private List<String> measured(LessonUnit one, LessonUnit other) {
        List<String> faults = List.of(one, other).stream()
                .flatMap(unit -> unit.laid().stream())
                .map(laid -> measured(laid.fault()))
                .toList();
        return faults.isEmpty() ? different(one.sweep().unit(), other.sweep().unit()) : faults;
    }

    private List<String> different(Transmission one, Transmission other) {
        Map<String, Double> sizes = circuit.adjustable(one.build()).dimensions().stream()
                .collect(Collectors.toMap(WearSize::name, WearSize::value));
        return circuit.adjustable(other.build()).dimensions().stream()
                .filter(size -> Optional.ofNullable(sizes.get(size.name()))
                        .filter(value -> value == size.value())
                        .isEmpty())
                .map(WearSize::name)
                .toList();
    }
}
