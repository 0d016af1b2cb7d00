package hotidle.circuits.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.section.CircuitFile;
import hotidle.circuits.shape.Bounds;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.part.Part;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class KindsTest {

    @Test
    void everyPartOfTheSolverHasADeclarationAndEveryDeclarationAWordOfItsOwn() {
        Set<Class<?>> declared = Kinds.ALL.stream().map(Kind::part).collect(Collectors.toSet());
        assertEquals(
                Set.of(Part.class.getPermittedSubclasses()),
                declared,
                "declare its kind and add it to the list in Kinds");
        assertEquals(Kinds.ALL.size(), new HashSet<>(Kinds.words()).size(), "two kinds have one word");
    }

    /** All keys, those within keys among them. */
    static List<Key> allKeys() {
        List<Key> keys = new ArrayList<>();
        Kinds.ALL.forEach(kind -> collect(kind.shape(), keys));
        collect(CircuitFile.CIRCUIT, keys);
        return keys;
    }

    private static void collect(Shape shape, List<Key> keys) {
        for (Key key : shape.keys()) {
            keys.add(key);
            if (key.type() instanceof Type.OneGroup group) {
                collect(group.shape(), keys);
            } else if (key.type() instanceof Type.NamedGroups groups) {
                collect(groups.shape(), keys);
            }
        }
    }

    @Test
    void everyDefaultSaysWhereItComesFrom() {
        for (Key key : allKeys()) {
            key.fallback()
                    .ifPresent(fallback -> assertTrue(
                            fallback.source().matches(".*(common practice|assumed|ISO \\d+|Merritt 1967).*"),
                            key.name() + ": " + fallback.source()));
        }
    }

    @Test
    void everyKeyHasAMeaningAndAUsualRangeWithinWhatIsAllowed() {
        for (Key key : allKeys()) {
            assertFalse(key.meaning().isBlank(), key.name());
            assertTrue(key.name().matches("[a-z]+(-[a-z]+)*"), key.name());
            if (key.usual().isPresent() && key.allowed().isPresent()) {
                Bounds usual = key.usual().get();
                Bounds allowed = key.allowed().get();
                assertTrue(usual.from() >= allowed.from() && usual.to() <= allowed.to(), key.name());
            }
            key.allowed().ifPresent(limits -> assertTrue(limits.from() < limits.to(), key.name()));
        }
    }

    @Test
    void everyQuantityAndSizeOfAPartHasLimits() {
        for (Kind kind : Kinds.ALL) {
            for (Key key : kind.shape().keys()) {
                boolean number = key.type() instanceof Type.Dimensioned || key.type() instanceof Type.Wearing;
                assertTrue(!number || key.allowed().isPresent(), kind.word() + "." + key.name());
            }
        }
    }

    @Test
    void noShapeHasAKeyTwice() {
        for (Kind kind : Kinds.ALL) {
            assertEquals(kind.shape().names().size(), new HashSet<>(kind.shape().names()).size(), kind.word());
        }
    }
}
