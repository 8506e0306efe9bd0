package seamsoak.data;

import seamsoak.unit.Printable;

/**
 * What is wrong with the user's data, in one clear sentence: where, what was found, what was
 * expected. The only exception of ours that reaches the command line (exit code 3).
 */
public final class Fault extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private static final int SHOWN = 40;

  private final transient Place place;

  public Fault(Place place, String found, String expected) {
    super(place + ": " + found + "; " + expected);
    this.place = place;
  }

  /** For a sentence that already says what was found and what is expected. */
  public Fault(Place place, String sentence) {
    super(place + ": " + sentence);
    this.place = place;
  }

  /** The user's text as a sentence may repeat it: printable, and cut when it is long. */
  public static String shown(String text) {
    return Printable.of(text, SHOWN);
  }

  public Place place() {
    return place;
  }
}
