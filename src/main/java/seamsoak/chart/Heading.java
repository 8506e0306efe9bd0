package seamsoak.chart;

import java.util.ArrayList;
import java.util.List;

/** Title and answer above a chart. A chart without an answer sets its title large instead. */
record Heading(Block block) {
  private static final double LEFT = 24;
  private static final double TOP = 14;

  static Heading of(Figure figure, Type type, double pageWidth) {
    double width = pageWidth - 2 * LEFT;
    List<Block.Line> lines = new ArrayList<>();
    if (!figure.answer().isBlank()) {
      lines.addAll(Block.wrap(type, figure.title(), width, 2, Ink.TITLE, false, Ink.SOFT));
      lines.addAll(large(type, figure.answer(), width));
    } else {
      lines.addAll(large(type, figure.title(), width));
    }
    return new Heading(Block.of(type, lines));
  }

  /** One large line if that will do, else two smaller ones. */
  private static List<Block.Line> large(Type type, String text, double width) {
    for (double size = Ink.ANSWER; size >= 20; size--) {
      if (type.fits(text, width, 1, size, true)) {
        return Block.wrap(type, text, width, 1, size, true, Ink.DARK);
      }
    }
    return Block.wrap(type, text, width, 2, 20, true, Ink.DARK);
  }

  double bottom() {
    return TOP + block.height();
  }

  void draw(Canvas canvas) {
    canvas.block(block, LEFT, TOP, Letters.Anchor.START);
  }
}
