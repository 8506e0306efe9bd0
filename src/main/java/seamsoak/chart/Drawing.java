package seamsoak.chart;

/** A figure laid out on a page of its own, ready to be drawn. */
interface Drawing {
  double WIDTH = 960;

  double height();

  void draw(Canvas canvas);

  static Drawing of(Figure figure, Type type) {
    if (figure instanceof ScheduleFigure schedule) {
      return new ScheduleDrawing(schedule, type);
    }
    if (figure instanceof SeamFigure seam) {
      return new SeamDrawing(seam, type);
    }
    if (figure instanceof MatrixFigure matrix) {
      return new MatrixDrawing(matrix, type);
    }
    if (figure instanceof FadingFigure fading) {
      return new FadingDrawing(fading, type);
    }
    if (figure instanceof SectionFigure section) {
      return new SectionDrawing(section, type);
    }
    return new SoakDrawing((SoakFigure) figure, type);
  }
}
