package seamsoak.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What each step is called: above its panel while there is room, else a number there and the words
 * in a key below the chart.
 */
final class PanelTexts {
  private static final int NAME_LINES = 2;
  private static final int DETAIL_LINES = 4;
  private static final double KEY_COLUMN = 452;

  private final Panels panels;
  private final List<Block> above = new ArrayList<>();
  private final List<Block> key = new ArrayList<>();

  private PanelTexts(Panels panels) {
    this.panels = panels;
  }

  /**
   * @param first number of the first step
   */
  static PanelTexts of(List<ScheduleFigure.Step> steps, int first, Panels panels, Type type) {
    PanelTexts texts = new PanelTexts(panels);
    boolean room =
        IntStream.range(0, steps.size())
            .allMatch(i -> fits(steps.get(i), panels.list().get(i).width(), type));
    for (int i = 0; i < steps.size(); i++) {
      ScheduleFigure.Step step = steps.get(i);
      if (room) {
        double width = panels.list().get(i).width();
        texts.above.add(words(type, step.name(), step.detail(), width, NAME_LINES, DETAIL_LINES));
      } else {
        String number = Integer.toString(first + i);
        String time = Tick.duration(step.minutes()) + " in all";
        String detail = step.detail().isBlank() ? time : step.detail() + "; " + time;
        texts.above.add(words(type, number, "", 60, 1, 1));
        texts.key.add(words(type, number + "  " + step.name(), detail, KEY_COLUMN, 1, 2));
      }
    }
    return texts;
  }

  private static boolean fits(ScheduleFigure.Step step, double width, Type type) {
    return type.fits(step.name(), width, NAME_LINES, Ink.LABEL, true)
        && type.fits(step.detail(), width, DETAIL_LINES, Ink.NOTE, false);
  }

  private static Block words(
      Type type, String name, String detail, double width, int nameLines, int detailLines) {
    List<Block.Line> lines =
        new ArrayList<>(Block.wrap(type, name, width, nameLines, Ink.LABEL, true, Ink.DARK));
    if (!detail.isBlank()) {
      lines.addAll(Block.wrap(type, detail, width, detailLines, Ink.NOTE, false, Ink.DARK));
    }
    return Block.of(type, lines);
  }

  double topHeight() {
    return above.stream().mapToDouble(Block::height).max().orElse(0);
  }

  double keyHeight() {
    double height = 0;
    for (int row = 0; row < rows(); row++) {
      height += rowHeight(row);
    }
    return height == 0 ? 0 : height + 10;
  }

  private int rows() {
    return (key.size() + 1) / 2;
  }

  private double rowHeight(int row) {
    double left = key.get(row).height();
    int beside = row + rows();
    return 6 + (beside < key.size() ? Math.max(left, key.get(beside).height()) : left);
  }

  void draw(Canvas canvas, double top, double keyTop) {
    for (int i = 0; i < above.size(); i++) {
      Block block = above.get(i);
      double left = panels.list().get(i).middle() - block.width() / 2;
      canvas.block(block, left, top + topHeight() - block.height(), Letters.Anchor.MIDDLE);
    }
    double y = keyTop;
    for (int row = 0; row < rows() && !key.isEmpty(); row++) {
      canvas.block(key.get(row), 24, y, Letters.Anchor.START);
      if (row + rows() < key.size()) {
        canvas.block(key.get(row + rows()), 24 + KEY_COLUMN + 8, y, Letters.Anchor.START);
      }
      y += rowHeight(row);
    }
  }
}
