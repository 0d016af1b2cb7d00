package hotidle.circuits.text;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** The names that a mistyped one may have meant. */
public final class Nearest {

    private static final int MOST_LISTED = 12;

    /** Longest name for which near ones are looked for. */
    private static final int LONGEST = 60;

    /** Most names among which near ones are looked for. */
    private static final int MOST_COMPARED = 500;

    private Nearest() {}

    /** What to write instead of an unknown name: the nearest ones first, then what there is. */
    public static String mend(String wrong, Collection<String> valid) {
        if (valid.isEmpty()) {
            return "there is none yet";
        }
        List<String> near = to(wrong, valid);
        String all = String.join(", ", valid.stream().limit(MOST_LISTED).toList())
                + (valid.size() > MOST_LISTED ? " and " + (valid.size() - MOST_LISTED) + " more" : "");
        return near.isEmpty() ? "valid: " + all : "did you mean " + String.join(" or ", near) + "? valid: " + all;
    }

    /** Up to three names close to a wrong one, the closest first. */
    public static List<String> to(String wrong, Collection<String> valid) {
        if (wrong.length() > LONGEST || valid.size() > MOST_COMPARED) {
            return List.of();
        }
        int limit = wrong.length() < 3 ? 1 : Math.max(wrong.length() / 3, 1) + 1;
        return valid.stream()
                .filter(name -> Math.abs(name.length() - wrong.length()) <= limit && distance(wrong, name) <= limit)
                .sorted(Comparator.comparingInt((String name) -> distance(wrong, name))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(3)
                .toList();
    }

    /** Of the names close to a wrong one those that are as close as the closest. */
    static List<String> closest(String wrong, Collection<String> valid) {
        List<String> near = to(wrong, valid);
        return near.stream()
                .filter(name -> distance(wrong, name) == distance(wrong, near.get(0)))
                .toList();
    }

    /** Edit distance: insertions, deletions, replacements and swaps of neighbours, without regard to upper and lower case. */
    static int distance(String one, String other) {
        String a = one.toLowerCase(java.util.Locale.ROOT);
        String b = other.toLowerCase(java.util.Locale.ROOT);
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : step(a, b, d, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int step(String a, String b, int[][] d, int i, int j) {
        boolean same = a.charAt(i - 1) == b.charAt(j - 1);
        int least = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + (same ? 0 : 1));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
    }
}
