package hotidle.cli;

import hotidle.assess.Margin;
import hotidle.study.Judgement;
import hotidle.study.spread.ExactSum;
import hotidle.study.spread.MarginTally;
import hotidle.study.spread.SobolSums;
import hotidle.study.spread.SpreadQuestion;
import hotidle.study.spread.SpreadRun;
import hotidle.study.spread.SpreadTally;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What came of parts of a run as text, every digit of it: lines of words with blanks between them. */
final class SpreadParts {

    private static final String FIRST = "hotidle-spread";

    private SpreadParts() {}

    /** A part as it is kept. */
    static String text(SpreadQuestion question, SpreadRun.RunPart part, SpreadTally tally) {
        StringBuilder text = new StringBuilder();
        line(text, FIRST, fingerprint(question), part.number(), part.of());
        line(
                text,
                tally.drawn(),
                tally.impossible(),
                tally.unsolved(),
                tally.sound(),
                tally.failing(),
                tally.rows(),
                tally.solves());
        for (MarginTally margin : tally.margins()) {
            line(text, margin.key().kind(), margin.holds(), margin.fails(), margin.unknown());
            line(text, margin.key().duty());
            line(text, margin.key().part());
            sum(text, margin.headroom());
            sums(text, margin.drivers());
            sums(text, margin.deciders());
        }
        return text.toString();
    }

    private static void line(StringBuilder text, Object... words) {
        text.append(Stream.of(words).map(Object::toString).collect(Collectors.joining(" ")))
                .append("\n");
    }

    private static void sums(StringBuilder text, SobolSums sums) {
        line(text, sums.left());
        sum(text, sums.values());
        sums.first().forEach(one -> sum(text, one));
        sums.total().forEach(one -> sum(text, one));
    }

    private static void sum(StringBuilder text, ExactSum sum) {
        line(text, sum.count(), sum.sum(), sum.squares());
    }

    /** What tells one question from another: what is drawn, how it may lie, and at which conditions it is judged. */
    private static String fingerprint(SpreadQuestion question) {
        String all = String.join(
                "\n",
                question.build().unit().circuit(),
                question.build().unit().build(),
                question.sizes().toString(),
                question.duties().toString(),
                question.samples() + " " + question.rows() + " " + question.seed());
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(all.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest, 0, 12);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /**
     * All parts of a run added up.
     *
     * @throws WrongInputException where a file is none of a part of this run, or a part is missing or there twice
     */
    static SpreadTally joined(SpreadQuestion question, List<Path> files) {
        Optional<SpreadTally> sum = Optional.empty();
        Set<Integer> there = new TreeSet<>();
        int of = 0;
        for (Path file : files) {
            KeptReader reader = new KeptReader(file, question.sizes().size());
            SpreadRun.RunPart part = reader.part(fingerprint(question));
            if (!there.add(part.number()) || (of != 0 && of != part.of())) {
                throw reader.wrong(
                        "is part " + part.number() + " of " + part.of() + ", which does not go with the others");
            }
            of = part.of();
            SpreadTally tally = reader.tally();
            try {
                sum = Optional.of(sum.map(before -> before.plus(tally)).orElse(tally));
            } catch (IllegalArgumentException other) {
                throw reader.wrong("does not go with the others: other limits were judged");
            }
        }
        if (there.size() < of) {
            Set<Integer> missing = new TreeSet<>();
            for (int i = 1; i <= of; i++) {
                missing.add(i);
            }
            missing.removeAll(there);
            throw new WrongInputException("hotidle: --join: of " + of + " parts these are missing: "
                    + missing.stream().map(String::valueOf).collect(Collectors.joining(", ")));
        }
        return sum.orElseThrow();
    }

    /** A kept part while it is read. */
    private static final class KeptReader {
        private final Path file;
        private final int sizes;
        private final List<String> lines;
        private int next;

        KeptReader(Path file, int sizes) {
            this.file = file;
            this.sizes = sizes;
            if (!Files.isRegularFile(file)) {
                throw wrong("is not there");
            }
            try {
                lines = Files.readAllLines(file, StandardCharsets.UTF_8);
            } catch (IOException e) {
                throw wrong("cannot be read: " + FileReason.of(e));
            }
        }

        WrongInputException wrong(String why) {
            return new WrongInputException("hotidle: --join " + file + " " + why);
        }

        private WrongInputException damaged() {
            return wrong("is damaged at line " + next + "\nmend: run its part again");
        }

        private String line() {
            if (next >= lines.size()) {
                throw damaged();
            }
            return lines.get(next++);
        }

        private String[] words(int count) {
            String[] words = line().split(" ", -1);
            if (words.length != count) {
                throw damaged();
            }
            return words;
        }

        SpreadRun.RunPart part(String fingerprint) {
            String[] words = lines.isEmpty() ? new String[0] : line().split(" ", -1);
            if (words.length != 4 || !words[0].equals(FIRST)) {
                throw wrong("was not written by --keep");
            }
            if (!words[1].equals(fingerprint)) {
                throw wrong("is of another run: circuit, build, sheet, sizes, --duty, --samples, --pairs, --seed and"
                        + " --unmeasured must be the same");
            }
            long number = whole(words[2]);
            long of = whole(words[3]);
            if (number < 1 || number > of || of > Integer.MAX_VALUE) {
                throw damaged();
            }
            return new SpreadRun.RunPart((int) number, (int) of);
        }

        SpreadTally tally() {
            String[] all = words(7);
            List<MarginTally> margins = new ArrayList<>();
            while (next < lines.size()) {
                String[] counts = words(4);
                Judgement.Key key = new Judgement.Key(line(), kind(counts[0]), line());
                margins.add(new MarginTally(
                        key, whole(counts[1]), whole(counts[2]), whole(counts[3]), sum(), sums(), sums()));
            }
            return new SpreadTally(
                    whole(all[0]),
                    whole(all[1]),
                    whole(all[2]),
                    whole(all[3]),
                    whole(all[4]),
                    whole(all[5]),
                    whole(all[6]),
                    margins);
        }

        private Margin.Kind kind(String word) {
            return Stream.of(Margin.Kind.values())
                    .filter(kind -> kind.name().equals(word))
                    .findFirst()
                    .orElseThrow(this::damaged);
        }

        private SobolSums sums() {
            long left = whole(words(1)[0]);
            ExactSum values = sum();
            List<ExactSum> first = new ArrayList<>();
            List<ExactSum> total = new ArrayList<>();
            for (int i = 0; i < sizes; i++) {
                first.add(sum());
            }
            for (int i = 0; i < sizes; i++) {
                total.add(sum());
            }
            return new SobolSums(values, first, total, left);
        }

        private ExactSum sum() {
            String[] words = words(3);
            try {
                return new ExactSum(whole(words[0]), new BigDecimal(words[1]), new BigDecimal(words[2]));
            } catch (NumberFormatException e) {
                throw damaged();
            }
        }

        private long whole(String word) {
            try {
                return Long.parseLong(word);
            } catch (NumberFormatException e) {
                throw damaged();
            }
        }
    }
}
