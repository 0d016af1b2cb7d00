package hotidle.answer.leaks;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.RepairPhrase;
import hotidle.study.Repairs;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What a repair is called, and its sizes.
 *
 * @param abouts what the file says of each part
 */
record RepairNames(Map<String, String> abouts, Quantity.UnitSystem units) {

    /** Longest note of a part that stands beside a repair. */
    private static final int SHORT = 24;

    /** Name of a repair, and what the file says of its part, where that is short. */
    String called(Repairs.Repair repair) {
        String about = abouts.getOrDefault(repair.dimensions().get(0).part(), "");
        return HeadingPhrase.titled(repair.name(), about.length() > SHORT ? "" : about);
    }

    /** A repair as work to do, for example "bore-14.bore back to 0.8677 in". */
    String job(Repairs.Repair repair) {
        return RepairPhrase.job(called(repair), repair.dimensions().size() == 1, to(repair));
    }

    /** The same without what the file says of the part. */
    String shortJob(Repairs.Repair repair) {
        return RepairPhrase.job(repair.name(), repair.dimensions().size() == 1, to(repair));
    }

    /** The size that is worn, or how many are. */
    String from(Repairs.Repair repair) {
        List<WearSize> sizes = repair.dimensions();
        return sizes.size() == 1 ? size(sizes.get(0), sizes.get(0).value()) : sizes.size() + " sizes";
    }

    /** The size that it leaves behind. */
    String to(Repairs.Repair repair) {
        List<WearSize> sizes = repair.dimensions();
        return sizes.size() == 1 ? size(sizes.get(0), sizes.get(0).fresh()) : "new";
    }

    /** Every size with both values. */
    String sizes(Repairs.Repair repair) {
        return repair.dimensions().stream()
                .map(size -> RepairPhrase.size(size.key(), size(size, size.value()), size(size, size.fresh())))
                .collect(Collectors.joining("; "));
    }

    private String size(WearSize size, double value) {
        Quantity quantity = size.kind() == WearSize.SizeKind.AREA ? Quantity.AREA : Quantity.SIZE;
        return quantity.with(units, value);
    }
}
