package seamsoak.words;

import seamsoak.schedule.Hardens;

/** What the steel of a blade is by then, and what to do with it when the kiln is done. */
public final class BladeWords {
  private BladeWords() {}

  /** Whether it hardens. */
  public static String hardens(Hardens hardens) {
    return switch (hardens) {
      case NO -> "no";
      case PERHAPS -> "perhaps";
      case YES -> "yes";
    };
  }
}
