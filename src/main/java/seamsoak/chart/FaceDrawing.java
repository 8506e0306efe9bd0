package seamsoak.chart;

import java.awt.geom.Rectangle2D;
import java.util.List;
import seamsoak.chart.figure.FaceFigure;

/** Draws a {@link FaceFigure}: long faces one below the other, others side by side. */
final class FaceDrawing implements Drawing {
  private static final double LEFT = 24;
  private static final double GAP = 20;

  /** So much longer than high, a face takes the whole width. */
  private static final double LONG = 1.6;

  private static final int ACROSS = 3;
  private static final double WORDS_GAP = 6;

  private final FaceFigure figure;
  private final Heading heading;
  private final int columns;
  private final double room;
  private final double scale;
  private final List<Block> words;

  FaceDrawing(FaceFigure figure) {
    this.figure = figure;
    heading = Heading.of(figure);
    double widest = 1;
    boolean wide = false;
    for (FaceFigure.Panel p : figure.panels()) {
      widest = Math.max(widest, p.picture().size().acrossMm());
      wide |= p.picture().size().acrossMm() > LONG * p.picture().size().upMm();
    }
    columns = wide ? 1 : ACROSS;
    room = (WIDTH - 2 * LEFT - (columns - 1) * GAP) / columns;
    scale = room / widest;
    words =
        figure.panels().stream()
            .map(p -> Block.of(p.name(), room, 2, Ink.NAME).and(p.note(), room, 4, Ink.NOTE))
            .toList();
  }

  private double high(int panel) {
    return figure.panels().get(panel).picture().size().upMm() * scale;
  }

  private double wordsHeight(int row) {
    return words.stream()
        .skip((long) row * columns)
        .limit(columns)
        .mapToDouble(Block::height)
        .max()
        .orElse(0);
  }

  private double top(int row) {
    double top = heading.bottom() + GAP;
    for (int r = 0; r < row; r++) {
      double pictures = 0;
      for (int i = r * columns; i < Math.min(words.size(), (r + 1) * columns); i++) {
        pictures = Math.max(pictures, high(i));
      }
      top += wordsHeight(r) + WORDS_GAP + pictures + GAP;
    }
    return top;
  }

  @Override
  public double height() {
    return top((words.size() + columns - 1) / columns);
  }

  @Override
  public void draw(Canvas canvas) {
    heading.draw(canvas);
    for (int i = 0; i < words.size(); i++) {
      double left = LEFT + (i % columns) * (room + GAP);
      double top = top(i / columns);
      canvas.block(words.get(i), left, top);
      FaceFigure.Panel panel = figure.panels().get(i);
      double across = panel.picture().size().acrossMm() * scale;
      Rectangle2D place =
          new Rectangle2D.Double(left, top + wordsHeight(i / columns) + WORDS_GAP, across, high(i));
      canvas.picture(GrayPng.of(panel.picture(), panel.name(), panel.note()), place);
      canvas.outline(place, Ink.DARK, Ink.solid(1.2));
    }
  }
}
