package seamsoak.chart;

import java.util.ArrayList;
import java.util.List;
import seamsoak.chart.figure.ScheduleFigure;

/**
 * What each step is called: above its panel while there is room, else a number there and the words
 * in a key of two columns below the chart.
 */
record PanelTexts(List<Panels.Panel> panels, List<Block> above, List<Block> key) {
  private static final int NAME_LINES = 2;
  private static final int DETAIL_LINES = 4;
  private static final double KEY_COLUMN = 452;

  /**
   * @param first number of the first step
   */
  static PanelTexts of(List<Panels.Panel> panels, int first) {
    List<Block> above = new ArrayList<>();
    List<Block> key = new ArrayList<>();
    boolean room = panels.stream().allMatch(PanelTexts::fits);
    for (int i = 0; i < panels.size(); i++) {
      ScheduleFigure.Treatment step = panels.get(i).step();
      double width = panels.get(i).width();
      if (room) {
        above.add(
            Block.of(step.name(), width, NAME_LINES, Ink.NAME)
                .and(step.detail(), width, DETAIL_LINES, Ink.SAID));
      } else {
        String number = Integer.toString(first + i);
        String time = DurationAxis.words(step.minutes()) + " in all";
        String detail = step.detail().isBlank() ? time : step.detail() + "; " + time;
        above.add(Block.of(number, Ink.NAME));
        key.add(
            Block.of(number + "  " + step.name(), KEY_COLUMN, 1, Ink.NAME)
                .and(detail, KEY_COLUMN, 2, Ink.SAID));
      }
    }
    return new PanelTexts(panels, above, key);
  }

  private static boolean fits(Panels.Panel panel) {
    return Ink.NAME.fits(panel.step().name(), panel.width(), NAME_LINES)
        && Ink.SAID.fits(panel.step().detail(), panel.width(), DETAIL_LINES);
  }

  double topHeight() {
    return above.stream().mapToDouble(Block::height).max().orElse(0);
  }

  private int keyRows() {
    return (key.size() + 1) / 2;
  }

  private double keyRow() {
    return 6 + key.stream().mapToDouble(Block::height).max().orElse(0);
  }

  double keyHeight() {
    return key.isEmpty() ? 0 : keyRows() * keyRow() + 10;
  }

  void draw(Canvas canvas, double bottom, double keyTop) {
    for (int i = 0; i < above.size(); i++) {
      Block block = above.get(i);
      double left = panels.get(i).middle() - block.width() / 2;
      canvas.block(block, left, bottom - block.height(), Letters.Anchor.MIDDLE);
    }
    for (int i = 0; i < key.size(); i++) {
      double left = 24 + i / keyRows() * (KEY_COLUMN + 8);
      canvas.block(key.get(i), left, keyTop + i % keyRows() * keyRow());
    }
  }
}
