package hotidle.circuits.kind;

import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** All kinds of part that the circuit language knows. */
public final class Kinds {

    private Kinds() {}

    /** In the order of the reference. */
    public static final List<Kind> ALL = List.of(
            OrificeKind.KIND,
            AnnularGapKind.KIND,
            FlatGapKind.KIND,
            FaceGapKind.KIND,
            SealingRingKind.KIND,
            PassageKind.KIND,
            FilterKind.KIND,
            CoolerKind.KIND,
            LubeBranchKind.KIND,
            PumpInletKind.KIND,
            PumpChamberKind.KIND,
            CrescentPumpKind.KIND,
            VanePumpKind.KIND,
            BushingKind.KIND,
            SpoolValveKind.KIND,
            SelectorKind.KIND,
            CheckValveKind.KIND,
            ReliefValveKind.KIND,
            SolenoidKind.KIND,
            ThrottleValveKind.KIND,
            VacuumModulatorKind.KIND,
            GovernorKind.KIND,
            ClutchKind.KIND,
            BandKind.KIND,
            ConverterKind.KIND);

    /** As what keys elsewhere in the file name parts. */
    public static final List<Names> ROLES = ALL.stream()
            .flatMap(kind -> kind.facts().role().stream())
            .distinct()
            .toList();

    /** Names of the keys of what runs in a bore and wears smaller: valve, hub. */
    public static final List<String> RUN_IN_A_BORE =
            ALL.stream().flatMap(kind -> shrinking(kind.shape())).distinct().toList();

    private static Stream<String> shrinking(Shape shape) {
        return shape.keys().stream().flatMap(key -> {
            if (key.type() instanceof Type.NamedGroups groups) {
                return shrinking(groups.shape());
            }
            return Stream.of(key)
                    .filter(one -> one.type() instanceof Type.Wearing size && size.shrinks())
                    .map(Key::name);
        });
    }

    /** Names of the keys of sizes that no gauge reads: they stand for what leaks. */
    private static final Set<String> NOT_GAUGED = ALL.stream()
            .flatMap(kind -> kind.shape().keys().stream())
            .filter(key -> !key.gauged())
            .map(Key::name)
            .collect(Collectors.toUnmodifiableSet());

    /** Whether a gauge reads the sizes of a key. */
    public static boolean gauged(String key) {
        return !NOT_GAUGED.contains(key);
    }

    /** The kind of a word. */
    public static Optional<Kind> of(String word) {
        return ALL.stream().filter(kind -> kind.word().equals(word)).findFirst();
    }

    /** The words of the kinds that a name of a part stands for. */
    public static List<String> words(Names of) {
        return ALL.stream().filter(kind -> kind.is(of)).map(Kind::word).toList();
    }

    /** The words of all kinds. */
    public static List<String> words() {
        return ALL.stream().map(Kind::word).toList();
    }
}
