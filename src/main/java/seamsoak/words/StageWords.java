package seamsoak.words;

import seamsoak.billet.Stage;

/** What is said of a billet after a step. */
public final class StageWords {
  private StageWords() {}

  public static String remark(Stage.Remark remark) {
    return switch (remark) {
      case JACKET_SCALED_AWAY -> "the jacket is scaled away: the body below is bare";
    };
  }
}
