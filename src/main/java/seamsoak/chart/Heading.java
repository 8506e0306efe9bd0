package seamsoak.chart;

import seamsoak.chart.figure.Figure;

/** Title and answer above a chart. A chart without an answer sets its title large instead. */
record Heading(Block block) {
  private static final double LEFT = 24;
  private static final double TOP = 14;
  private static final double WIDTH = Drawing.WIDTH - 2 * LEFT;

  static Heading of(Figure figure) {
    return new Heading(
        figure.answer().isBlank()
            ? large(Block.EMPTY, figure.title())
            : large(Block.of(figure.title(), WIDTH, 2, Ink.TITLE), figure.answer()));
  }

  /** One large line if that will do, else two smaller ones. */
  private static Block large(Block above, String text) {
    for (double size = 25; size >= 20; size--) {
      Print print = new Print(size, true, Ink.DARK);
      if (print.fits(text, WIDTH, 1)) {
        return above.and(text, WIDTH, 1, print);
      }
    }
    return above.and(text, WIDTH, 2, new Print(20, true, Ink.DARK));
  }

  double bottom() {
    return TOP + block.height();
  }

  void draw(Canvas canvas) {
    canvas.block(block, LEFT, TOP);
  }
}
