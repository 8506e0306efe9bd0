package seamsoak.data;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word that a misspelt one was meant to be. */
public final class Nearest {
  private Nearest() {}

  /** The known word with the fewest slips, if they are few for its length; case does not count. */
  public static Optional<String> of(String word, Collection<String> known) {
    String meant = word.toLowerCase(Locale.ROOT);
    String best = null;
    int fewest = Integer.MAX_VALUE;
    for (String candidate : known) {
      int most = Math.max(1, candidate.length() / 3);
      if (Math.abs(candidate.length() - meant.length()) > most) {
        continue;
      }
      int slips = slips(meant, candidate.toLowerCase(Locale.ROOT));
      if (slips <= most && slips < fewest) {
        best = candidate;
        fewest = slips;
      }
    }
    return Optional.ofNullable(best);
  }

  /** Letters to insert, drop, replace or swap with their neighbour to turn one into the other. */
  private static int slips(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          d[i][j] = i + j;
          continue;
        }
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(d[i - 1][j - 1] + change, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
        boolean swapped =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        if (swapped) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
