package hotidle.cli.live;

import hotidle.answer.phrase.HiddenFaultPhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.UnknownBuildException;
import hotidle.circuits.WrittenFault;
import hotidle.fault.UnitFault;
import hotidle.study.gauge.LessonFaults;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * Lessons of a circuit: a unit of one of its builds as written, with one fault, of which a page knows a ticket.
 *
 * <p>The ticket is the fault sealed under a secret of this run, {@link LessonSeal}: nothing is remembered here, and until the fault is
 * revealed, nothing that is sent holds it. A ticket ends with the program. What can be begun again after a restart:
 * <ul>
 * <li>a lesson by its number: the number tells nothing of the fault but to the program, which gives it away by revealing it alone;
 * <li>a teacher's code made with a phrase, which is sealed under that phrase: without the phrase it opens nothing, here or elsewhere.
 * </ul>
 * A teacher's code made without a phrase is sealed as a ticket is, and ends as one.
 */
final class Lessons {

    /** A build's number is sent as one byte. */
    private static final int MOST_BUILDS = 127;

    private final LiveUnit unit;
    private final LessonSeal run = LessonSeal.ofThisRun();
    private final Map<String, LessonFaults> lessons = new ConcurrentHashMap<>();

    Lessons(LiveUnit unit) {
        this.unit = unit;
    }

    /**
     * A lesson that is on.
     *
     * @param lesson what its build can have
     * @param fault  that it has
     */
    record OpenLesson(LessonFaults lesson, UnitFault.Sized fault) {
        Transmission sound() {
            return lesson.build().unit();
        }

        Transmission faulty() {
            return fault.fault().in(lesson.build(), fault.size()).orElseThrow();
        }
    }

    /** Names of builds of which a lesson can be. */
    List<String> builds() {
        return unit.circuit().builds().stream()
                .map(DescribedCircuit.Build::name)
                .limit(MOST_BUILDS)
                .toList();
    }

    /**
     * What a build can have; the circuit's first where none is named.
     *
     * @throws WrongStateException where there is none, or nothing can be read on it
     */
    LessonFaults of(String build) {
        String named = build == null || build.isEmpty() ? builds().get(0) : build;
        try {
            return lessons.computeIfAbsent(named, name -> {
                if (unit.circuit().unit(name).taps().isEmpty()) {
                    throw new WrongStateException(HiddenFaultPhrase.NO_TAPS);
                }
                return LessonFaults.of(unit.circuit().adjustable(name));
            });
        } catch (UnknownBuildException none) {
            throw new WrongStateException(none.problem().text());
        }
    }

    /** A ticket of a lesson that the program draws. */
    String drawn(LessonQuestion asked, Runnable step) {
        LessonFaults lesson = of(asked.build());
        LessonFaults.Difficulty difficulty = Stream.of(LessonFaults.Difficulty.values())
                .filter(one -> one.name().toLowerCase(Locale.ROOT).equals(asked.difficulty()))
                .findFirst()
                .orElseThrow(() -> new WrongStateException(HiddenFaultPhrase.NO_DIFFICULTY));
        return run.sealed(bytes(
                lesson,
                lesson.drawn(difficulty, asked.number(), step)
                        .orElseThrow(() -> new WrongStateException(HiddenFaultPhrase.NONE_FOUND))));
    }

    /** A code of a lesson that a teacher sets. */
    String code(LessonQuestion asked) {
        LessonFaults lesson = of(asked.build());
        UnitFault.Sized fault;
        try {
            fault = WrittenFault.read(lesson.faults(), asked.fault());
        } catch (WrittenFault.NoFaultException none) {
            throw new WrongStateException(none.getMessage() + "; " + none.mend());
        }
        if (!lesson.shows(fault)) {
            throw new WrongStateException(HiddenFaultPhrase.DOES_NOT_SHOW);
        }
        return seal(asked.phrase()).sealed(bytes(lesson, fault));
    }

    private LessonSeal seal(String phrase) {
        return phrase.isBlank() ? run : LessonSeal.of(phrase);
    }

    private byte[] bytes(LessonFaults lesson, UnitFault.Sized fault) {
        int build = builds().indexOf(lesson.build().unit().build());
        return HiddenFault.of(build, lesson, fault).bytes(unit.circuit().name(), lesson);
    }

    /** A ticket for a teacher's code. */
    String ticket(LessonQuestion asked) {
        byte[] hidden = seal(asked.phrase())
                .opened(asked.code(), HiddenFault.LENGTH)
                .orElseThrow(() -> new WrongStateException(HiddenFaultPhrase.WRONG_CODE));
        read(hidden);
        return run.sealed(hidden);
    }

    /**
     * The lesson of a ticket.
     *
     * @throws WrongStateException where it is none of this run
     */
    OpenLesson open(String ticket) {
        return read(run.opened(ticket, HiddenFault.LENGTH)
                .orElseThrow(() -> new WrongStateException(HiddenFaultPhrase.OVER)));
    }

    private OpenLesson read(byte[] hidden) {
        Optional<String> build =
                builds().stream().skip(HiddenFault.build(hidden)).findFirst();
        return build.map(this::of)
                .flatMap(lesson -> HiddenFault.read(hidden, unit.circuit().name(), lesson)
                        .map(fault -> new OpenLesson(lesson, fault.in(lesson))))
                .orElseThrow(() -> new WrongStateException(HiddenFaultPhrase.OTHER_CIRCUIT));
    }
}
