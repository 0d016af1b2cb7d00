package hotidle.assess;

import hotidle.transmission.WearSize;
import java.util.List;

/**
 * How far the fits of a build are worn.
 *
 * @param worn   fits that are not as new
 * @param shares of those with a written limit, the way from new to it [-], rising
 * @param past   how many lie beyond theirs
 */
public record WornShares(int worn, List<Double> shares, long past) {

    public WornShares {
        shares = List.copyOf(shares);
    }

    /** Of all sizes that wear. */
    public static WornShares of(List<WearSize> wearing) {
        List<WearSize> worn = wearing.stream().filter(WearSize::worn).toList();
        List<Double> shares = worn.stream()
                .filter(size -> size.limit().isPresent())
                .map(size -> (size.value() - size.fresh()) / size.allowance())
                .sorted()
                .toList();
        return new WornShares(
                worn.size(), shares, shares.stream().filter(share -> share > 1).count());
    }
}
