package drivetrain.refusal;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Names near a misspelt one, for suggestions that are never run by themselves.
 *
 * <p>Distance is optimal string alignment (insert, delete, replace, swap of neighbours), upper and lower case alike. A name is near when
 * the distance is at most a third of the longer length, and at most 3; nonsense has no near names.
 */
public final class NearNames {

    private static final int LONGEST_WORD = 60;
    private static final int MOST_EDITS = 3;
    private static final int MOST_NAMES = 3;

    private NearNames() {}

    private record Near(String name, int distance) {}

    /**
     * Returns the near names.
     *
     * @param word the word as typed
     * @param known the names that would be right
     * @return at most three, nearest first, then in alphabetical order; empty for a very long word
     */
    public static List<String> of(String word, Collection<String> known) {
        if (word.isBlank() || word.length() > LONGEST_WORD) {
            return List.of();
        }
        String asked = word.toLowerCase(Locale.ROOT);
        return known.stream()
                .distinct()
                .filter(name -> Math.abs(name.length() - asked.length()) <= MOST_EDITS)
                .map(name -> new Near(name, distance(asked, name.toLowerCase(Locale.ROOT))))
                .filter(near -> near.distance <= Math.min(MOST_EDITS, Math.max(asked.length(), near.name.length()) / 3))
                .sorted(Comparator.comparingInt(Near::distance).thenComparing(Near::name))
                .limit(MOST_NAMES)
                .map(Near::name)
                .toList();
    }

    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            d[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            d[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int replace = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                int best = Math.min(Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1), d[i - 1][j - 1] + replace);
                boolean swapped =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                d[i][j] = swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
            }
        }
        return d[a.length()][b.length()];
    }
}
