package seamsoak.data;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds what a misspelt word was meant to be. */
public final class Nearest {
  private static final int EDIT = 2;
  private static final int LOOK_ALIKE = 1;

  private Nearest() {}

  /**
   * The candidate that is the fewest edits away, ignoring case; among equals the one that begins
   * most like the word. None when more than a third of the longer word, and more than one letter,
   * would have to change.
   */
  public static Optional<String> to(String word, Collection<String> candidates) {
    String best = null;
    int least = Integer.MAX_VALUE;
    int longest = 0;
    for (String candidate : candidates) {
      if (Math.abs(word.length() - candidate.length()) > Math.max(1, longer(word, candidate) / 3)) {
        continue; // so many letters would have to go that the rest need not be looked at
      }
      String a = word.toUpperCase(Locale.ROOT);
      String b = candidate.toUpperCase(Locale.ROOT);
      int edits = distance(a, b);
      int most = EDIT * Math.max(1, longer(a, b) / 3);
      int shared = sharedStart(a, b);
      if (edits <= most && (edits < least || edits == least && shared > longest)) {
        best = candidate;
        least = edits;
        longest = shared;
      }
    }
    return Optional.ofNullable(best);
  }

  private static int longer(String a, String b) {
    return Math.max(a.length(), b.length());
  }

  // Levenshtein's distance in half edits, with neighbors swapped as one edit; 0 for O and 1 for I
  // count half.
  private static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          d[i][j] = EDIT * (i + j);
          continue;
        }
        char x = a.charAt(i - 1);
        char y = b.charAt(j - 1);
        int change = x == y ? 0 : alike(x, y) ? LOOK_ALIKE : EDIT;
        d[i][j] = Math.min(d[i - 1][j - 1] + change, Math.min(d[i - 1][j], d[i][j - 1]) + EDIT);
        if (i > 1 && j > 1 && x == b.charAt(j - 2) && y == a.charAt(i - 2)) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + EDIT);
        }
      }
    }
    return d[a.length()][b.length()];
  }

  private static int sharedStart(String a, String b) {
    int n = 0;
    while (n < a.length() && n < b.length() && a.charAt(n) == b.charAt(n)) {
      n++;
    }
    return n;
  }

  private static boolean alike(char x, char y) {
    return look(x) == look(y);
  }

  private static char look(char c) {
    return c == '0' ? 'O' : c == '1' ? 'I' : c;
  }
}
