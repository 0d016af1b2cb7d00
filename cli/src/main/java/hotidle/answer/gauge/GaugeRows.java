package hotidle.answer.gauge;

import hotidle.answer.format.Digits;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.phrase.GaugePhrase;
import hotidle.study.gauge.Cause;
import hotidle.study.gauge.FitsTogether;
import hotidle.study.gauge.GaugeFindings;
import hotidle.study.gauge.GaugeReading;
import hotidle.study.gauge.Meter;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Locale;

/** Readings and causes as rows. */
record GaugeRows(GaugeAnswer answer) {

    /** Causes as a spreadsheet gets them. */
    TextTable table() {
        TextTable table = new TextTable(List.of(
                "fault",
                "part",
                "size",
                "from",
                "to",
                "size counts",
                "share",
                "misfit left",
                "hidden up to",
                "can show"));
        for (Cause cause : answer.findings().causes()) {
            table.add(List.of(
                    cause.fault().kind().word(),
                    cause.fault().part(),
                    Digits.four(cause.size()),
                    Digits.four(cause.low()),
                    Digits.four(cause.high()),
                    cause.fault().kind().sizeOf().name().toLowerCase(Locale.ROOT),
                    Digits.four(cause.share()),
                    Digits.four(cause.chiSquare()),
                    Digits.four(cause.hidden()),
                    cause.visible() ? "yes" : "no"));
        }
        return table;
    }

    /** Readings beside what a sound unit reads. */
    TextTable readings() {
        GaugePhrase phrase = new GaugePhrase(answer.units());
        TextTable table = new TextTable(List.of("tap", "range", "rpm", "oil", "reads", "sound", "off"));
        GaugeFindings found = answer.findings();
        for (int i = 0; i < found.readings().size(); i++) {
            GaugeReading reading = found.readings().get(i);
            GaugeFindings.ExpectedReading expected = found.expected().get(i);
            boolean pressure = reading.meter().reads() == Meter.Reads.PRESSURE;
            table.add(List.of(
                    reading.meter().name(),
                    reading.at().range(),
                    Quantity.SPEED.number(answer.units(), reading.at().speed()),
                    Quantity.TEMPERATURE.with(answer.units(), reading.at().temperature()),
                    (sense(reading) + " " + phrase.value(pressure, reading.value())).strip(),
                    phrase.sound(
                            pressure,
                            expected.mean() - 2 * expected.deviation(),
                            expected.mean() + 2 * expected.deviation()),
                    String.format(Locale.ROOT, "%+.1f", expected.off())));
        }
        return table;
    }

    /** Every fault, with what it could hide. */
    TextTable causes() {
        CauseWords words = new CauseWords(answer.units());
        TextTable table = new TextTable(List.of("fault", "share", "best size", "hidden up to"));
        for (Cause cause : answer.findings().causes()) {
            table.add(List.of(
                    cause.fault().name(),
                    answer.findings().agreement().agrees() ? "-" : GaugePhrase.share(cause.share()),
                    words.size(cause.fault(), cause.size()),
                    cause.visible()
                            ? Double.isNaN(cause.hidden()) ? "-" : words.size(cause.fault(), cause.hidden())
                            : "any size"));
        }
        return table;
    }

    /** Sizes of which the readings tell something, those that moved most first. */
    TextTable fits(FitsTogether fits) {
        TextTable table = new TextTable(List.of("size", "as is", "most likely", "from", "to", "held by"));
        for (FitsTogether.FittedSize fit : fits.told()) {
            Quantity quantity = fit.size().kind() == WearSize.SizeKind.AREA ? Quantity.AREA : Quantity.FIT;
            table.add(List.of(
                    fit.size().name(),
                    quantity.with(answer.units(), fit.size().value()),
                    quantity.with(answer.units(), fit.value()),
                    quantity.number(answer.units(), fit.low()),
                    quantity.number(answer.units(), fit.high()),
                    GaugePhrase.held(fit.held())));
        }
        return table;
    }

    /** What is said in front of a reading that is none of a value. */
    static String sense(GaugeReading reading) {
        return reading.sense() == GaugeReading.Sense.EXACT
                ? ""
                : reading.sense().name().toLowerCase(Locale.ROOT);
    }
}
