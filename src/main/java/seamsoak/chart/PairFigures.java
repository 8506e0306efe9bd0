package seamsoak.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import seamsoak.pairing.PairMatrix;
import seamsoak.pairing.Rating;

/** The chart of who fits whom: nothing is computed here, only put into the chart's words. */
public final class PairFigures {
  private PairFigures() {}

  /** The matrix. */
  public static MatrixFigure matrix(PairMatrix m) {
    List<List<MatrixFigure.Cell>> cells = new ArrayList<>();
    for (int i = 0; i < m.steels().size(); i++) {
      List<MatrixFigure.Cell> row = new ArrayList<>();
      for (int j = 0; j < i; j++) {
        row.add(cell(m.at(i, j)));
      }
      cells.add(row);
    }
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
        m.steels(),
        cells,
        m.letters().entrySet().stream()
            .map(e -> new MatrixFigure.Key(e.getKey(), String.join("; ", e.getValue())))
            .toList());
  }

  private static long count(PairMatrix m, Rating rating) {
    return m.pairs().stream().filter(c -> c.rating() == rating).count();
  }

  private static MatrixFigure.Cell cell(PairMatrix.Cell c) {
    return switch (c.rating()) {
      case FITS -> new MatrixFigure.Cell(MatrixFigure.Grade.GOOD, "", "");
      case WATCH -> new MatrixFigure.Cell(MatrixFigure.Grade.MIDDLING, c.letter(), c.title());
      case CLASH -> new MatrixFigure.Cell(MatrixFigure.Grade.BAD, c.letter(), c.title());
    };
  }
}
