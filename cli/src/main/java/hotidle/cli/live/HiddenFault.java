package hotidle.cli.live;

import hotidle.fault.UnitFault;
import hotidle.study.gauge.LessonFaults;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A fault of a build, as numbers: which build of the circuit, which of its faults, how large. Beside them stand some bytes by which a
 * code of another circuit, or of an older version of it with other faults, is told.
 *
 * @param build number of the build
 * @param fault number of the fault among those of the build
 * @param size  in what its kind counts
 */
record HiddenFault(int build, int fault, double size) {

    /** Bytes of {@link #bytes}. */
    static final int LENGTH = 15;

    private static final int MARK = 4;

    /** The fault of a build. */
    static HiddenFault of(int build, LessonFaults lesson, UnitFault.Sized fault) {
        List<String> names = names(lesson);
        return new HiddenFault(build, names.indexOf(fault.fault().name()), fault.size());
    }

    private static List<String> names(LessonFaults lesson) {
        return lesson.faults().stream().map(UnitFault::name).toList();
    }

    /** The fault that it stands for. */
    UnitFault.Sized in(LessonFaults lesson) {
        return lesson.faults().get(fault).of(size);
    }

    /**
     * As few bytes, always as many.
     *
     * @param circuit its name
     */
    byte[] bytes(String circuit, LessonFaults lesson) {
        return ByteBuffer.allocate(LENGTH)
                .put((byte) build)
                .put(mark(circuit, lesson))
                .putShort((short) fault)
                .putDouble(size)
                .array();
    }

    /** Number of the build that some bytes are of. */
    static int build(byte[] bytes) {
        return bytes[0];
    }

    /** What some bytes stand for; empty where they are of another circuit. */
    static Optional<HiddenFault> read(byte[] bytes, String circuit, LessonFaults lesson) {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        int build = buffer.get();
        byte[] mark = new byte[MARK];
        buffer.get(mark);
        return MessageDigest.isEqual(mark, mark(circuit, lesson))
                ? Optional.of(new HiddenFault(build, buffer.getShort(), buffer.getDouble()))
                : Optional.empty();
    }

    private static byte[] mark(String circuit, LessonFaults lesson) {
        String all = lesson.faults().stream()
                .map(fault -> fault.name() + " " + fault.least() + " " + fault.most())
                .collect(Collectors.joining(
                        "\n", circuit + "\n" + lesson.build().unit().build() + "\n", ""));
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(all.getBytes(StandardCharsets.UTF_8));
            return java.util.Arrays.copyOf(digest, MARK);
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java has SHA-256", missing);
        }
    }
}
