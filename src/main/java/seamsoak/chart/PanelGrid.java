package seamsoak.chart;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Panels in rows, each with its words above what it shows.
 *
 * @param words by panel
 * @param across how many to a row
 * @param left where the first of a row begins
 * @param pitch from one to the next
 * @param top of the first row
 * @param between rows
 * @param shown height of what a panel shows
 */
record PanelGrid(
    List<Block> words,
    int across,
    double left,
    double pitch,
    double top,
    double between,
    IntToDoubleFunction shown) {
  private static final double WORDS_GAP = 6;

  double left(int panel) {
    return left + panel % across * pitch;
  }

  /** Where its words begin. */
  double top(int panel) {
    return rowTop(panel / across);
  }

  /** Where what it shows begins. */
  double shownTop(int panel) {
    return top(panel) + wordsHeight(panel / across) + WORDS_GAP;
  }

  /** Below the last row. */
  double bottom() {
    return rowTop((words.size() + across - 1) / across);
  }

  private double rowTop(int row) {
    double y = top;
    for (int i = 0; i < row; i++) {
      y += wordsHeight(i) + WORDS_GAP + tallest(i, shown) + between;
    }
    return y;
  }

  private double wordsHeight(int row) {
    return tallest(row, i -> words.get(i).height());
  }

  private double tallest(int row, IntToDoubleFunction height) {
    return IntStream.range(row * across, Math.min(words.size(), (row + 1) * across))
        .mapToDouble(height)
        .max()
        .orElse(0);
  }
}
