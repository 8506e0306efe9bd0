package seamsoak.chart;

import java.awt.geom.Rectangle2D;
import seamsoak.chart.figure.FaceFigure;
import seamsoak.face.FaceSize;

/** Draws a {@link FaceFigure}: long faces one below the other, others side by side. */
final class FaceDrawing implements Drawing {
  private static final double LEFT = 24;
  private static final double GAP = 20;

  /** So much longer than high, a face takes the whole width. */
  private static final double LONG = 1.6;

  private static final int ACROSS = 3;

  private final FaceFigure figure;
  private final Heading heading;
  private final double scale;
  private final PanelGrid grid;

  FaceDrawing(FaceFigure figure) {
    this.figure = figure;
    heading = Heading.of(figure);
    double widest = 1;
    boolean wide = false;
    for (FaceFigure.Panel p : figure.panels()) {
      widest = Math.max(widest, p.picture().size().acrossMm());
      wide |= p.picture().size().acrossMm() > LONG * p.picture().size().upMm();
    }
    int columns = wide ? 1 : ACROSS;
    double room = (WIDTH - 2 * LEFT - (columns - 1) * GAP) / columns;
    scale = room / widest;
    grid =
        new PanelGrid(
            figure.panels().stream()
                .map(p -> Block.of(p.name(), room, 2, Ink.NAME).and(p.note(), room, 4, Ink.NOTE))
                .toList(),
            columns,
            LEFT,
            room + GAP,
            heading.bottom() + GAP,
            GAP,
            i -> figure.panels().get(i).picture().size().upMm() * scale);
  }

  @Override
  public double height() {
    return grid.bottom();
  }

  @Override
  public void draw(Canvas canvas) {
    heading.draw(canvas);
    for (int i = 0; i < figure.panels().size(); i++) {
      FaceFigure.Panel panel = figure.panels().get(i);
      FaceSize size = panel.picture().size();
      canvas.block(grid.words().get(i), grid.left(i), grid.top(i));
      Rectangle2D place =
          new Rectangle2D.Double(
              grid.left(i), grid.shownTop(i), size.acrossMm() * scale, size.upMm() * scale);
      canvas.picture(GrayPng.of(panel.picture(), panel.name(), panel.note()), place);
      canvas.outline(place, Ink.DARK, Ink.solid(1.2));
    }
  }
}
