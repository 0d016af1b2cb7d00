package hotidle.circuits.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No rule is forgotten: each class that is one stands in a list of {@link Rules}. */
class RulesTest {

    @Test
    void everyRuleIsAsked() {
        Set<String> written = new ClassFileImporter()
                .importPackages("hotidle.circuits.check").stream()
                        .filter(type -> type.isAssignableTo(Rule.class) && !type.isInterface())
                        .map(JavaClass::getSimpleName)
                        .collect(Collectors.toCollection(TreeSet::new));
        Set<String> asked = Stream.of(
                        Rules.OF_FILE,
                        Rules.OF_PARTS,
                        Rules.OF_SOUND_FILE,
                        Rules.OF_DUTY,
                        Rules.OF_CHANGED_DUTY,
                        Rules.OF_COMMAND,
                        Rules.OF_BUILD,
                        Rules.OF_UNITS)
                .flatMap(rules -> rules.stream())
                .map(rule -> rule.getClass().getSimpleName())
                .collect(Collectors.toCollection(TreeSet::new));
        assertTrue(written.size() > 15, written.size() + " rules");
        assertEquals(written, asked, "a rule that no list of hotidle.circuits.check.Rules names: add it there");
    }
}
