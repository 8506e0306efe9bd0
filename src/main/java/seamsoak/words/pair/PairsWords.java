package seamsoak.words.pair;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import seamsoak.pairing.PairList;
import seamsoak.pairing.Rating;

/** Many pairs at once. */
public record PairsWords(PairList list) {
  /** How many there are of each rating. */
  public String counts() {
    return "%d %s: %d fit, %d to watch, %d clash."
        .formatted(
            list.pairs().size(),
            list.pairs().size() == 1 ? "pair" : "pairs",
            count(Rating.FITS),
            count(Rating.WATCH),
            count(Rating.CLASH));
  }

  private long count(Rating rating) {
    return list.pairs().stream().filter(r -> r.rating() == rating).count();
  }

  /** Those of each rating. */
  public List<String> byRating() {
    Map<Rating, List<String>> byRating = new EnumMap<>(Rating.class);
    for (PairList.Row row : list.pairs()) {
      byRating
          .computeIfAbsent(row.rating(), r -> new ArrayList<>())
          .add(row.first() + " with " + row.second());
    }
    List<String> ratings = new ArrayList<>();
    byRating.forEach((r, pairs) -> ratings.add(r.word() + ": " + String.join(", ", pairs) + "."));
    return ratings;
  }

  /** What the letters mean, of those that stand in the matrix. */
  public String key() {
    List<String> said = new ArrayList<>();
    list.matrix()
        .letters()
        .forEach((letter, titles) -> said.add(letter + " " + String.join(" or ", titles)));
    return "A row's steels stand above it in the same order: read across to a letter and down to the"
        + " backslash below it. A point fits, a small letter is to be watched, a capital clashes, by "
        + String.join(", ", said)
        + ".";
  }
}
