package seamsoak.billet;

import java.util.Comparator;
import seamsoak.data.Place;

/**
 * A word of an older file that is understood and has another today.
 *
 * @param place where it stands
 * @param kind which it is
 */
public record OldWord(Place place, Kind kind) {
  /** From the top of the file down. */
  public static final Comparator<OldWord> AS_WRITTEN =
      Comparator.comparingInt((OldWord w) -> w.place().line())
          .thenComparingInt(w -> w.place().column());

  /** What was written otherwise once. */
  public enum Kind {
    /** {@code seams}, where {@code where} is written now. */
    SEAMS,
    /** {@code clear} for a line that is plain to see. */
    CLEAR,
    /** The steel that cuts, named under {@code edge}. */
    EDGE
  }
}
