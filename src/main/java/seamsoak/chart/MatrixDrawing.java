package seamsoak.chart;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import seamsoak.chart.figure.MatrixFigure;
import seamsoak.pairing.PairMatrix;
import seamsoak.pairing.Rating;

/**
 * Draws a {@link MatrixFigure}: names of the rows at the left, the same names of the columns on the
 * diagonal, so that none has to be turned. How good a cell is is told three times: by its color, by
 * how its letter is set (small, capital, or a dot) and by the letter on white, pale or solid
 * ground.
 */
final class MatrixDrawing implements Drawing {
  private static final double EDGE = 24;
  private static final double LARGEST_CELL = 84;
  private static final double WORDS_FROM = 58;
  private static final double GAP = 1;

  /** An analysis written out is cut rather than crowd the cells out. */
  private static final double LONGEST_NAME = 150;

  private static final Print LEGEND = new Print(14, false, Ink.DARK);

  /** By rating. */
  private static final List<Color> GROUNDS =
      List.of(new Color(0xDCE9CF), new Color(0xFBE3A6), Ink.EMBER);

  private final MatrixFigure figure;
  private final Heading heading;
  private final List<String> names;
  private final double cell;
  private final double nameSize;
  private final double left;
  private final double top;
  private final List<Block> key = new ArrayList<>();
  private final double keyTop;

  MatrixDrawing(MatrixFigure figure) {
    this.figure = figure;
    heading = Heading.of(figure);
    int n = figure.matrix().steels().size();
    names = figure.matrix().steels().stream().map(this::cut).toList();
    double longest = longest(Ink.NAME.size());
    double room = WIDTH - 2 * EDGE - 2 * longest - 12;
    cell = Math.min(LARGEST_CELL, Math.floor(room / (n - 1) * 2) / 2);
    nameSize = Math.max(9, Math.min(Ink.NAME.size(), cell * 0.82));
    left = EDGE + longest(nameSize) + 8;
    top = heading.bottom() + 46;
    keyTop = top + n * cell + 22;
    figure
        .matrix()
        .letters()
        .forEach(
            (letter, titles) ->
                key.add(
                    Block.of(
                        letter + " " + String.join("; ", titles), WIDTH - 2 * EDGE, 1, Ink.SAID)));
  }

  private double longest(double size) {
    return names.stream().mapToDouble(new Print(size, true, Ink.DARK)::width).max().orElse(0);
  }

  private String cut(String name) {
    return Ink.NAME.wrap(name.replace(' ', '\u00A0'), LONGEST_NAME, 1).get(0);
  }

  @Override
  public double height() {
    return keyTop + rows() * 19 + 14;
  }

  private int columns() {
    double widest = key.stream().mapToDouble(Block::width).max().orElse(1);
    return (int) Math.max(1, Math.min(4, Math.floor((WIDTH - 2 * EDGE) / (widest + 20))));
  }

  private int rows() {
    return (key.size() + columns() - 1) / columns();
  }

  @Override
  public void draw(Canvas canvas) {
    heading.draw(canvas);
    legend(canvas);
    for (int i = 0; i < figure.matrix().steels().size(); i++) {
      row(canvas, i);
    }
    key(canvas);
  }

  private void legend(Canvas canvas) {
    double x = EDGE;
    double y = heading.bottom() + 14;
    String[] letters = {"", "x", "X"};
    String[] words = {"fits", "watch: small letter", "clash: capital"};
    for (int i = 0; i < letters.length; i++) {
      cell(canvas, Rating.values()[i], letters[i], "", x, y, 18);
      canvas.text(words[i], x + 25, y + 14, LEGEND);
      x += 25 + LEGEND.width(words[i]) + 26;
    }
  }

  private void row(Canvas canvas, int i) {
    double y = top + i * cell;
    double baseline = y + cell / 2 + nameSize * 0.36;
    String name = names.get(i);
    Print print = new Print(nameSize, false, Ink.DARK);
    canvas.text(name, left - 8, baseline, Letters.Anchor.END, print);
    for (int j = 0; j < i; j++) {
      PairMatrix.Cell c = figure.matrix().at(i, j);
      cell(canvas, c.rating(), c.letter(), c.title(), left + j * cell, y, cell - GAP);
    }
    canvas.text(name, left + i * cell + 5, baseline, new Print(nameSize, true, Ink.DARK));
  }

  private static void cell(
      Canvas canvas, Rating rating, String letter, String word, double x, double y, double size) {
    canvas.fill(new Rectangle2D.Double(x, y, size, size), GROUNDS.get(rating.ordinal()));
    double middle = x + size / 2;
    if (rating == Rating.FITS) {
      double radius = Math.max(1.4, Math.min(6, size * 0.13));
      canvas.fill(Ink.ring(radius, middle, y + size / 2), Ink.MOSS);
      return;
    }
    boolean bad = rating == Rating.CLASH;
    Color ink = bad ? Ink.PAPER : Ink.DARK;
    boolean words = size >= WORDS_FROM && !word.isBlank();
    double high = words ? 22 : Math.min(22, size * 0.78);
    double baseline = y + (words ? size * 0.46 : size / 2 + high * 0.36);
    Print print = new Print(high, bad, ink);
    canvas.text(letter, middle, baseline, Letters.Anchor.MIDDLE, print);
    if (words) {
      Block block = Block.of(word, size - 6, 2, new Print(9.5, false, ink));
      canvas.block(block, middle - block.width() / 2, y + size * 0.56, Letters.Anchor.MIDDLE);
    }
  }

  private void key(Canvas canvas) {
    double width = (WIDTH - 2 * EDGE) / columns();
    for (int i = 0; i < key.size(); i++) {
      canvas.block(key.get(i), EDGE + i / rows() * width, keyTop + i % rows() * 19);
    }
  }
}
