package hotidle.answer.air;

import com.fasterxml.jackson.annotation.JsonProperty;
import hotidle.answer.Answer;
import hotidle.answer.format.Digits;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.AirPhrase;
import hotidle.answer.phrase.Caution;
import hotidle.study.AirTest;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The oil that leaks past a land by what a stand read of it.
 *
 * @param units    of the user
 * @param circuit  its name
 * @param land     the part
 * @param valve    diameter of the valve as the build has it [m]
 * @param limit    wear limit of the bore [m], where one is written
 * @param drop     under which the oil leaks [Pa]
 * @param oil      its viscosity [Pa·s]
 * @param growth   of the diametral clearance from the room's temperature to the oil's [m]
 * @param duty     duty point whose temperature that is at
 * @param holes    that calibrated the stand, the blocked port among them
 * @param readings in the order in which they were given
 */
public record AirAnswer(
        Quantity.UnitSystem units,
        String circuit,
        String land,
        double valve,
        OptionalDouble limit,
        double drop,
        double oil,
        double growth,
        String duty,
        int holes,
        List<Tested> readings)
        implements Answer {

    /**
     * A reading.
     *
     * @param reading as the user wrote it
     * @param test    what it says; empty beyond the stand's calibration
     */
    public record Tested(String reading, Optional<AirTest> test) {}

    public AirAnswer {
        readings = List.copyOf(readings);
    }

    @Override
    public String full() {
        StringBuilder text = new StringBuilder(Wrap.lines(
                AirPhrase.asked(
                        land, circuit, Quantity.PRESSURE.with(units, drop), Digits.four(1000 * oil), duty, holes),
                "",
                "  "));
        text.append(shown().fitted(Wrap.WIDTH));
        notes().forEach(note -> text.append(Wrap.lines(note, "", "  ")));
        return text.append(Caution.LINE).append("\n").toString();
    }

    private TextTable shown() {
        TextTable table = new TextTable(List.of(
                "reading",
                "free air",
                "oil leak, gap as tested",
                "gap hot",
                "clearance, centred",
                "as in the file",
                "bore to write"));
        for (Tested one : readings) {
            table.add(one.test()
                    .map(test -> List.of(
                            one.reading(),
                            Quantity.SEEPAGE.with(units, test.freeAir()),
                            Quantity.SEEPAGE.with(units, test.oil(drop, oil)),
                            Quantity.SEEPAGE.with(units, hot(test)),
                            Quantity.FILM.with(units, test.concentric()),
                            Quantity.FILM.with(units, test.asInTheFile()),
                            Quantity.SIZE.with(units, bore(test)) + (past(test) ? " *" : "")))
                    .orElse(List.of(one.reading(), "-", "-", "-", "-", "-", "-")));
        }
        return table;
    }

    private double hot(AirTest test) {
        return test.oilWarm(drop, oil, growth);
    }

    private double bore(AirTest test) {
        return valve + 2 * test.asInTheFile();
    }

    private boolean past(AirTest test) {
        return limit.isPresent() && bore(test) > limit.getAsDouble();
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add(AirPhrase.hot(Quantity.FILM.with(units, growth)));
        notes.add(AirPhrase.onTheSheet(land, Quantity.SIZE.with(units, valve)));
        if (readings.stream().anyMatch(one -> one.test().filter(this::past).isPresent())) {
            notes.add(AirPhrase.past(Quantity.SIZE.with(units, limit.orElseThrow())));
        }
        if (!complete()) {
            notes.add(AirPhrase.BEYOND);
        }
        Set<AirTest.AirDoubt> doubts = EnumSet.noneOf(AirTest.AirDoubt.class);
        readings.forEach(one -> one.test().ifPresent(test -> doubts.addAll(test.doubts())));
        doubts.forEach(doubt -> notes.add(said(doubt)));
        if (holes == 2) {
            notes.add(AirPhrase.TWO_POINTS);
        }
        notes.add(AirPhrase.ASSUMED);
        return notes;
    }

    private static String said(AirTest.AirDoubt doubt) {
        return switch (doubt) {
            case SLIPS -> AirPhrase.SLIPS;
            case CHOKES -> AirPhrase.CHOKES;
            case TURBULENT -> AirPhrase.TURBULENT;
        };
    }

    @Override
    public TextTable table() {
        TextTable table = new TextTable(List.of(
                "land",
                "reading",
                "free air",
                "oil leak, gap as tested",
                "oil leak, gap hot",
                "unit",
                "clearance, centred",
                "clearance as in the file",
                "bore to write",
                "unit of sizes",
                "doubts"));
        for (Tested one : readings) {
            Optional<AirTest> test = one.test();
            table.add(List.of(
                    land,
                    one.reading(),
                    test.map(found -> number(Quantity.SEEPAGE, found.freeAir())).orElse("-"),
                    test.map(found -> number(Quantity.SEEPAGE, found.oil(drop, oil)))
                            .orElse("-"),
                    test.map(found -> number(Quantity.SEEPAGE, hot(found))).orElse("-"),
                    Quantity.SEEPAGE.in(units).unit(),
                    test.map(found -> number(Quantity.TRAVEL, found.concentric()))
                            .orElse("-"),
                    test.map(found -> number(Quantity.TRAVEL, found.asInTheFile()))
                            .orElse("-"),
                    test.map(found -> number(Quantity.TRAVEL, bore(found))).orElse("-"),
                    Quantity.TRAVEL.in(units).unit(),
                    String.join(" ", test.map(AirAnswer::words).orElse(List.of()))));
        }
        return table;
    }

    private String number(Quantity quantity, double si) {
        return Digits.four(quantity.value(units, si));
    }

    private static List<String> words(AirTest test) {
        return test.doubts().stream().map(AirTest.AirDoubt::word).toList();
    }

    /** As JSON; what is null lies beyond the stand's calibration. */
    record AirRecord(
            String circuit,
            String land,
            String duty,
            double dropPa,
            double viscosityPaS,
            double valveM,
            List<ReadingRecord> readings) {}

    record ReadingRecord(
            String reading,
            @JsonProperty("free_air_m3_s") Optional<Double> freeAir,
            @JsonProperty("oil_leak_m3_s") Optional<Double> oilLeak,
            @JsonProperty("oil_leak_hot_m3_s") Optional<Double> oilLeakHot,
            Optional<Double> clearanceCentredM,
            Optional<Double> clearanceAsInTheFileM,
            Optional<Double> boreM,
            List<String> doubts) {}

    @Override
    public Object json() {
        return new AirRecord(
                circuit,
                land,
                duty,
                drop,
                oil,
                valve,
                readings.stream().map(this::json).toList());
    }

    private ReadingRecord json(Tested one) {
        return new ReadingRecord(
                one.reading(),
                one.test().map(AirTest::freeAir),
                one.test().map(test -> test.oil(drop, oil)),
                one.test().map(this::hot),
                one.test().map(AirTest::concentric),
                one.test().map(AirTest::asInTheFile),
                one.test().map(this::bore),
                one.test().map(AirAnswer::words).orElse(List.of()));
    }

    @Override
    public boolean complete() {
        return readings.stream().allMatch(one -> one.test().isPresent());
    }
}
