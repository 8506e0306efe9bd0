package seamsoak.chart;

/** A figure laid out on a page of its own, ready to be drawn. */
interface Drawing {
  double WIDTH = 960;

  double height();

  void draw(Canvas canvas);

  static Drawing of(Figure figure) {
    if (figure instanceof ScheduleFigure schedule) {
      return new ScheduleDrawing(schedule);
    }
    if (figure instanceof SeamFigure seam) {
      return new SeamDrawing(seam);
    }
    if (figure instanceof MatrixFigure matrix) {
      return new MatrixDrawing(matrix);
    }
    if (figure instanceof FadingFigure fading) {
      return new FadingDrawing(fading);
    }
    if (figure instanceof SectionFigure section) {
      return new SectionDrawing(section);
    }
    return new SoakDrawing((SoakFigure) figure);
  }
}
