package seamsoak.data;

import java.util.Comparator;

/**
 * One thing that is wrong with the user's data.
 *
 * @param place where it stands
 * @param field the entry meant, such as {@code steps[1].heats[0].at}; empty where there are none
 * @param found what was found there
 * @param expected what should stand there, or what to do
 */
public record Mistake(Place place, String field, String found, String expected) {
  /** In the order in which a file is read. */
  public static final Comparator<Mistake> BY_PLACE =
      Comparator.comparingInt((Mistake m) -> m.place().line())
          .thenComparing(m -> m.place().column());

  /** In one sentence, with the line that it stands in. */
  public String sentence() {
    return place.words() + ": " + said();
  }

  /** What was found and what is expected. */
  public String said() {
    return found + "; " + expected;
  }
}
