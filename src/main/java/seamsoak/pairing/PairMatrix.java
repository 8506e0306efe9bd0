package seamsoak.pairing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import seamsoak.state.Progress;

/**
 * Every steel of a list against every other.
 *
 * @param steels their names, in order
 * @param cells by row and column, the lower triangle: row i has i + 1 cells, the last of them the
 *     steel with itself
 */
public record PairMatrix(List<String> steels, List<List<Cell>> cells) {
  public PairMatrix {
    steels = List.copyOf(steels);
    cells = cells.stream().map(List::copyOf).toList();
  }

  /**
   * One pair.
   *
   * @param first steel of the row
   * @param second steel of the column
   * @param rating of the pair
   * @param check that decides; blank where it fits
   * @param title of that check
   * @param letter that stands for it; a point where it fits
   */
  public record Cell(
      String first, String second, Rating rating, String check, String title, String letter) {}

  /** Checks all pairs of a list, each put together as is usual for the two. */
  static PairMatrix of(
      PairCheck check, PairTable practice, List<PairSteel> steels, Progress progress) {
    List<List<Cell>> all = new ArrayList<>();
    for (int i = 0; i < steels.size(); i++) {
      List<Cell> row = new ArrayList<>();
      for (int j = 0; j <= i; j++) {
        PairSteel a = steels.get(i);
        PairSteel b = steels.get(j);
        Optional<Practice> said = practice.of(a.steel().key(), b.steel().key());
        row.add(cell(check.of(a, b, PairAdvisor.usual(said))));
      }
      all.add(row);
      progress.at("Checking steel", i + 1, steels.size());
    }
    return new PairMatrix(steels.stream().map(PairSteel::id).toList(), all);
  }

  /** How a result stands in a table. */
  static Cell cell(PairResult result) {
    String first = result.first().id();
    String second = result.second().id();
    Rating rating = result.rating();
    return result
        .deciding()
        .map(
            f ->
                new Cell(
                    first,
                    second,
                    rating,
                    f.check().key(),
                    f.limit().title(),
                    letter(f.limit().letter(), rating)))
        .orElse(new Cell(first, second, rating, "", "", "."));
  }

  /** A capital letter clashes, a small one is to be watched. */
  private static String letter(char letter, Rating rating) {
    return String.valueOf(rating == Rating.CLASH ? letter : Character.toLowerCase(letter));
  }

  /** The cell of two steels by their places, in either order. */
  public Cell at(int i, int j) {
    return i >= j ? cells.get(i).get(j) : cells.get(j).get(i);
  }

  /** All pairs of two different steels. */
  public List<Cell> pairs() {
    List<Cell> all = new ArrayList<>();
    cells.forEach(row -> all.addAll(row.subList(0, row.size() - 1)));
    return all;
  }

  /** What the letters of its pairs stand for, each a capital here. */
  public SortedMap<String, Set<String>> letters() {
    SortedMap<String, Set<String>> all = new TreeMap<>();
    for (Cell c : pairs()) {
      if (c.rating() != Rating.FITS) {
        String letter = c.letter().toUpperCase(Locale.ROOT);
        all.computeIfAbsent(letter, l -> new LinkedHashSet<>()).add(c.title());
      }
    }
    return all;
  }
}
