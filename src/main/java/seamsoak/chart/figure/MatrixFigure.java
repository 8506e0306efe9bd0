package seamsoak.chart.figure;

import java.util.Locale;
import seamsoak.pairing.PairMatrix;
import seamsoak.pairing.Rating;

/** Every steel of a list against every other, with what decides where two do not fit. */
public record MatrixFigure(
    String id, String title, String answer, String description, PairMatrix matrix)
    implements Figure {

  public MatrixFigure {
    Figure.check(id, title, description);
    if (matrix.steels().size() < 2) {
      throw new IllegalArgumentException("a matrix has two steels or more");
    }
  }

  /** The chart of who fits whom. */
  public static MatrixFigure of(PairMatrix m) {
    long fits = count(m, Rating.FITS);
    long clash = count(m, Rating.CLASH);
    int all = m.pairs().size();
    return new MatrixFigure(
        "pairs",
        "Which steels go together, and what decides where they do not",
        fits + " of " + all + " pairs fit, " + clash + " clash",
        String.format(
            Locale.ROOT,
            "A triangle of %d steels. Of %d pairs %d fit, %d are to be watched and %d clash. Each"
                + " cell has the letter of the check that decides.",
            m.steels().size(),
            all,
            fits,
            all - fits - clash,
            clash),
        m);
  }

  private static long count(PairMatrix m, Rating rating) {
    return m.pairs().stream().filter(c -> c.rating() == rating).count();
  }
}
