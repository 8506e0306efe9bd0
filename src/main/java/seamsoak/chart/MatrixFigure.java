package seamsoak.chart;

import java.util.List;

/**
 * Every one of a list against every other: the lower triangle of a table with a letter in each
 * cell.
 *
 * @param names in order
 * @param cells row i has i cells
 * @param key what the letters mean, in the order to set them
 */
public record MatrixFigure(
    String id,
    String title,
    String answer,
    String description,
    List<String> names,
    List<List<Cell>> cells,
    List<Key> key)
    implements Figure {

  public MatrixFigure {
    Figure.check(id, title, description);
    names = List.copyOf(names);
    cells = cells.stream().map(List::copyOf).toList();
    key = List.copyOf(key);
    if (names.size() < 2 || cells.size() != names.size()) {
      throw new IllegalArgumentException(
          names.size() + " names and " + cells.size() + " rows: a matrix has two or more, alike");
    }
    for (int i = 0; i < cells.size(); i++) {
      if (cells.get(i).size() != i) {
        throw new IllegalArgumentException("row " + i + " has " + cells.get(i).size() + " cells");
      }
    }
  }

  /** How good a cell is. */
  public enum Grade {
    GOOD,
    MIDDLING,
    BAD
  }

  /**
   * One pair.
   *
   * @param grade how good
   * @param letter its deciding reason; blank where it is good
   * @param word the same in a word or two, set where there is room
   */
  public record Cell(Grade grade, String letter, String word) {}

  /** A letter and what it means. */
  public record Key(String letter, String words) {}
}
