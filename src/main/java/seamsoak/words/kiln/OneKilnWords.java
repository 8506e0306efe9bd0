package seamsoak.words.kiln;

/** What the page says around the answer of one kiln. */
public final class OneKilnWords {
  public static final String NOT_THERE = "it is not on the shelf";

  private OneKilnWords() {}

  /** That there is no question yet. */
  public static String tick(int most) {
    return "Tick two billets or more on the shelf, up to " + most + ".";
  }
}
