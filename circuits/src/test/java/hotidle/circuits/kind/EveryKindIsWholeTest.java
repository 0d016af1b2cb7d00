package hotidle.circuits.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import hotidle.circuits.Library;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Type;
import hotidle.circuits.single.LibraryMaterials;
import hotidle.circuits.single.OnePart;
import hotidle.circuits.single.PartKeys;
import hotidle.circuits.single.ReadPart;
import hotidle.oil.Oil;
import hotidle.oil.OilAt;
import hotidle.part.Form;
import hotidle.part.Part;
import hotidle.part.Reading;
import hotidle.part.Setting;
import hotidle.part.Stamp;
import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a kind of part needs besides its keys; each message says what is left to do. DEVELOPERS.md has the steps in order. */
class EveryKindIsWholeTest {

    private static final String HOW = " (DEVELOPERS.md, Add a kind of part)";

    /** Kinds of which no published value was found; they rest on laws of the others, or on a point that the user measures. */
    private static final Set<String> NO_ROWS =
            Set.of("filter", "solenoid", "throttle-valve", "vacuum-modulator", "converter");

    private static final LibraryMaterials STOCK = LibraryMaterials.ofLibrary();

    /** Fails with what is left to do for every kind for which something is. */
    private static void none(String toDo, Predicate<Kind> undone) {
        Set<String> words =
                Kinds.ALL.stream().filter(undone).map(Kind::word).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), words, () -> toDo + HOW + ": " + String.join(", ", words));
    }

    @Test
    void everyDeclarationStandsInKinds() throws ReflectiveOperationException {
        Set<String> forgotten = new TreeSet<>();
        for (var file : new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("hotidle.circuits.kind")) {
            for (Field field : Class.forName(file.getName()).getDeclaredFields()) {
                if (field.getType() == Kind.class && field.getName().equals("KIND")) {
                    field.setAccessible(true);
                    Object kind = field.get(null);
                    if (Kinds.ALL.stream().noneMatch(known -> known == kind)) {
                        forgotten.add(file.getSimpleName() + ".KIND");
                    }
                }
            }
        }
        assertEquals(Set.of(), forgotten, "add to the list ALL of circuits/.../kind/Kinds.java" + HOW);
    }

    @Test
    void everyPartOfTheSolverHasAKind() {
        Set<Class<?>> declared = Kinds.ALL.stream().map(Kind::part).collect(Collectors.toSet());
        List<String> without = Arrays.stream(Part.class.getPermittedSubclasses())
                .filter(part -> !declared.contains(part))
                .map(Class::getSimpleName)
                .toList();
        assertEquals(
                List.of(),
                without,
                "declare in circuits/.../kind a ...Kind.java and add it to the list in Kinds" + HOW);
    }

    @Test
    void everyKindStandsInACircuit() throws IOException {
        StringBuilder samples =
                new StringBuilder(Files.readString(Path.of("src/test/resources/hotidle/circuits/every-kind.yaml")));
        Library.names().forEach(name -> samples.append(Library.text(name).orElseThrow()));
        none(
                "add a part of it to the parts of circuits/src/test/resources/hotidle/circuits/every-kind.yaml",
                kind -> samples.indexOf("kind: " + kind.word()) < 0);
    }

    @Test
    void theLawOfEveryKindStandsBesidePublishedValuesOrIsNamedAsHavingNone() throws IOException {
        String sheet = Files.readString(Path.of("../solver/VALIDATION.md"));
        none(
                "write rows of published values in solver/src/test/java/hotidle/validation, run ValidationTest with"
                        + " -Dhotidle.rewrite=true and say .checkedIn(SECTION) in its LawText; where no published value is"
                        + " found, name it in NO_ROWS",
                kind -> kind.physics().rows().isEmpty() && !NO_ROWS.contains(kind.word()));
        none(
                "the section that .checkedIn names is not in solver/VALIDATION.md: write its rows in"
                        + " solver/src/test/java/hotidle/validation, enter them in ValidationTest and run it with"
                        + " -Dhotidle.rewrite=true",
                kind -> kind.physics()
                        .rows()
                        .filter(rows -> !sheet.contains("\n## " + rows + "\n"))
                        .isPresent());
        none(
                "it has rows of published values: take it out of NO_ROWS",
                kind -> kind.physics().rows().isPresent() && NO_ROWS.contains(kind.word()));
        assertEquals(
                Set.of(),
                NO_ROWS.stream().filter(word -> Kinds.of(word).isEmpty()).collect(Collectors.toSet()),
                "NO_ROWS names what is no kind");
    }

    /** Behind each part of a source, or it is ours, assumed or common practice. */
    @Test
    void everySourceOfALawSaysWhetherItWasReadOrIsQuotedFromMemory() {
        Pattern mark = Pattern.compile(
                "\\((?:both )?(?:found|from memory|assumed|common practice|our own form)|, from memory\\)|our own form|no law of its own");
        none(
                "write (found) or (from memory) behind each source of its LawText, parts of it divided by ';'",
                kind -> Stream.of(kind.physics().source().split("; "))
                        .anyMatch(part -> !mark.matcher(part).find()));
    }

    @Test
    void everyKindSaysHowItPassesOil() {
        none(
                "say .passing(...) in its declaration, so that check knows what a clutch behind it gets",
                kind -> kind.facts().stated().isEmpty() && !kind.isPump());
    }

    @Test
    void kindsOfOnePartAreNamedAndTurnAlike() {
        none(
                "say .turning() in its declaration as the other kinds of its part do",
                differs(kind -> kind.facts().turns()));
        none(
                "say .role(...) in its declaration as the other kinds of its part do",
                differs(kind -> kind.facts().role()));
    }

    private static Predicate<Kind> differs(Function<Kind, Object> fact) {
        return kind -> Kinds.ALL.stream()
                .filter(other -> other.part() == kind.part())
                .anyMatch(other -> !fact.apply(other).equals(fact.apply(kind)));
    }

    @Test
    void everyNameOfAPartIsTheRoleOfAKind() {
        Set<Names> others = EnumSet.of(
                Names.OIL,
                Names.MATERIAL,
                Names.BEARING_MATERIAL,
                Names.REGION,
                Names.NODE,
                Names.PART,
                Names.RANGE,
                Names.BUILD,
                Names.DUTY,
                Names.MEMBER);
        assertEquals(
                EnumSet.complementOf(EnumSet.copyOf(others)),
                Set.copyOf(Kinds.ROLES),
                "a kind says .role(Names....) in its declaration for every name of a part" + HOW);
    }

    @Test
    void onItsOwnNoKindAsksForAnythingThatOnlyACircuitHas() {
        Set<Names> circuit = Set.of(
                Names.REGION,
                Names.PART,
                Names.RANGE,
                Names.CLUTCH,
                Names.SOLENOID,
                Names.SPOOL_VALVE,
                Names.FACE_GAP,
                Names.PUMP_CHAMBER,
                Names.PUMP_INLET,
                Names.BUSHING);
        none(
                "a key names another part, a region or a range: say .alone(Alone....without(REASON, KEY)) in its declaration",
                kind -> PartKeys.of(kind).stream()
                        .anyMatch(key -> names(key).filter(circuit::contains).isPresent()));
    }

    private static Optional<Names> names(Key key) {
        if (key.type() instanceof Type.NameList list) {
            return Optional.of(list.of());
        }
        return key.type() instanceof Type.Name name ? Optional.of(name.of()) : Optional.empty();
    }

    private static ReadPart example(Kind kind) {
        List<String> words = Arrays.stream(kind.facts().example().split(" "))
                .takeWhile(word -> !word.startsWith("--"))
                .toList();
        return OnePart.read(kind.word(), words, STOCK);
    }

    @Test
    void everyKindHasAnExampleOfThePartCommand() {
        none(
                "say .example(\"KEY=VALUE ... --drop 5psi\") in its declaration: a good part behind 'hotidle part KIND'",
                kind -> kind.facts().example().isBlank());
        for (Kind kind : Kinds.ALL) {
            ReadPart read = example(kind);
            assertEquals(
                    List.of(), read.problems(), "mend the .example(...) in the declaration of " + kind.word() + HOW);
        }
    }

    /** A law that is another at another engine speed belongs to a kind that turns; what is asked of a kind may do so too. */
    @Test
    void aKindOnWhichEngineSpeedActsSaysSo() {
        none(
                "engine speed changes its law: say .turning() in its declaration",
                kind -> !kind.facts().turns() && !law(kind, 10).equals(law(kind, 50)));
        none(
                "it asks for a speed on its own: say .turning() in its declaration",
                kind -> !kind.facts().turns() && kind.asks(DutyKey.SPEED));
    }

    /** What the law of the example says at pressures and states of its own [flow kg/s, balances], and what it sweeps. */
    private static List<Double> law(Kind kind, double speed) {
        ReadPart read = example(kind);
        if (read.part().isEmpty()) {
            return List.of(); // what is wrong with the example is told by another test
        }
        Part part = read.part().get().placed().part();
        Oil oil = STOCK.oils().values().iterator().next();
        Setting setting = new Setting(speed, "any", Setting.Lockup.OFF, oil.at(363, OilAt.STANDARD_ATMOSPHERE), 3e5);
        Reading reading = new Reading(part.form());
        for (int column = 0; column < reading.size(); column++) {
            reading.set(column, 1e5 * (column + 1));
        }
        for (int own = 0; own < part.form().states().size(); own++) {
            Form.Unknown state = part.form().states().get(own);
            reading.set(reading.own(own), (state.low() + state.high()) / 2);
        }
        for (int signal = 0; signal < part.form().signals().size(); signal++) {
            reading.set(reading.read(signal), 0.5);
        }
        Part.Law law = part.law(setting);
        Stamp stamp = new Stamp(part.form());
        law.evaluate(reading, stamp);
        List<Double> said = new ArrayList<>(List.of(law.delivery()));
        for (int row = 0; row < stamp.rows(); row++) {
            said.add(stamp.value(row));
        }
        return said;
    }
}
