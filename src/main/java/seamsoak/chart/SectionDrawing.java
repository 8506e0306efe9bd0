package seamsoak.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import seamsoak.billet.Pattern;
import seamsoak.unit.UnitSystem;

/** Draws a {@link SectionFigure}: four panels to a row, every millimetre as long as any other. */
final class SectionDrawing implements Drawing {
  private static final double LEFT = 24;
  private static final double GAP = 20;
  private static final int ACROSS = 4;
  private static final double CELL = (WIDTH - 2 * LEFT - (ACROSS - 1) * GAP) / ACROSS;
  private static final double VIEW_GAP = 8;
  private static final int NOTE_LINES = 4;

  /** Fills of the steels, dark and light in turn, told apart in gray as well. */
  private static final List<Color> STEELS =
      List.of(new Color(0x5E6B76), new Color(0xDCE2E7), new Color(0x97A3AD), new Color(0xBBA98F));

  private static final Color TOO_FINE = new Color(0xB4BDC4);
  private static final Color JACKET = new Color(0xF1D9C7);

  private final SectionFigure figure;
  private final Type type;
  private final Heading heading;
  private final double scale;
  private final List<Block> words = new ArrayList<>();

  SectionDrawing(SectionFigure figure, Type type) {
    this.figure = figure;
    this.type = type;
    heading = Heading.of(figure, type, WIDTH);
    scale = CELL / figure.widestMm();
    for (var panel : figure.panels()) {
      List<Block.Line> lines =
          new ArrayList<>(Block.wrap(type, panel.name(), CELL, 1, Ink.LABEL, true, Ink.DARK));
      List<Block.Line> notes = new ArrayList<>();
      panel
          .notes()
          .forEach(n -> notes.addAll(Block.wrap(type, n, CELL, 3, Ink.NOTE, false, Ink.SOFT)));
      lines.addAll(notes.subList(0, Math.min(NOTE_LINES, notes.size())));
      words.add(Block.of(type, lines));
    }
  }

  private int rows() {
    return (figure.panels().size() + ACROSS - 1) / ACROSS;
  }

  private double wordsHeight(int row) {
    double height = 0;
    for (int i = row * ACROSS; i < Math.min(words.size(), (row + 1) * ACROSS); i++) {
      height = Math.max(height, words.get(i).height());
    }
    return height;
  }

  private double viewsHeight(int row) {
    double height = 0;
    for (int i = row * ACROSS; i < Math.min(words.size(), (row + 1) * ACROSS); i++) {
      height = Math.max(height, height(figure.panels().get(i)));
    }
    return height;
  }

  private double height(SectionFigure.Panel panel) {
    double height = 0;
    for (var view : panel.views()) {
      height += view.heightMm() * scale + (view.label().isEmpty() ? 0 : 16) + VIEW_GAP;
    }
    return height - VIEW_GAP;
  }

  @Override
  public double height() {
    double height = heading.bottom() + 18;
    for (int row = 0; row < rows(); row++) {
      height += wordsHeight(row) + 6 + viewsHeight(row) + 24;
    }
    return height + keyHeight();
  }

  @Override
  public void draw(Canvas canvas) {
    heading.draw(canvas);
    double top = heading.bottom() + 18;
    for (int row = 0; row < rows(); row++) {
      for (int i = row * ACROSS; i < Math.min(words.size(), (row + 1) * ACROSS); i++) {
        double left = LEFT + (i % ACROSS) * (CELL + GAP);
        canvas.block(words.get(i), left, top, Letters.Anchor.START);
        views(canvas, figure.panels().get(i), left, top + wordsHeight(row) + 6);
      }
      top += wordsHeight(row) + 6 + viewsHeight(row) + 24;
    }
    key(canvas, top);
  }

  private void views(Canvas canvas, SectionFigure.Panel panel, double left, double top) {
    double y = top;
    for (var view : panel.views()) {
      if (!view.label().isEmpty()) {
        canvas.text(
            new Letters(
                view.label(), left, y + 11, Letters.Anchor.START, Ink.NOTE, false, Ink.SOFT));
        y += 16;
      }
      view(canvas, view, left, y);
      y += view.heightMm() * scale + VIEW_GAP;
    }
  }

  private void view(Canvas canvas, SectionFigure.View view, double left, double top) {
    Rectangle2D whole =
        new Rectangle2D.Double(left, top, view.widthMm() * scale, view.heightMm() * scale);
    Rectangle2D body =
        new Rectangle2D.Double(
            left + view.jacketAcross() * scale,
            top + view.jacketUp() * scale,
            whole.getWidth() - 2 * view.jacketAcross() * scale,
            whole.getHeight() - 2 * view.jacketUp() * scale);
    canvas.fill(whole, view.jacketUp() > 0 ? JACKET : Ink.PANEL);
    if (view.pattern() != null) {
      pattern(canvas, view.pattern(), body);
    }
    canvas.outline(whole, Ink.DARK, Ink.solid(1.2));
    if (view.goesOn()) {
      canvas.line(
          whole.getMaxX(), top - 3, whole.getMaxX(), whole.getMaxY() + 3, Ink.PAPER, Ink.solid(3));
      canvas.line(
          whole.getMaxX() + 1,
          top - 3,
          whole.getMaxX() + 1,
          whole.getMaxY() + 3,
          Ink.SOFT,
          Ink.dashed(1.2f, 3, 3));
    }
  }

  private void pattern(Canvas canvas, Pattern pattern, Rectangle2D body) {
    int ground = pattern.patches().isEmpty() ? -1 : commonest(pattern);
    canvas.fill(body, ground < 0 ? TOO_FINE : STEELS.get(ground % STEELS.size()));
    for (int steel = 0; steel < figure.steels().size(); steel++) {
      if (steel == ground) {
        continue;
      }
      Path2D all = new Path2D.Double();
      for (Pattern.Patch p : pattern.patches()) {
        if (p.steel() == steel) {
          append(all, p, body);
        }
      }
      if (all.getCurrentPoint() != null) {
        canvas.fill(all, STEELS.get(steel % STEELS.size()));
      }
    }
    for (int i = 0; i < figure.seams().size(); i++) {
      Path2D runs = new Path2D.Double();
      for (Pattern.Run r : pattern.seams()) {
        if (r.step() == figure.seams().get(i).step()) {
          append(runs, r, body);
        }
      }
      if (runs.getCurrentPoint() != null) {
        Ink.Style style = Ink.STYLES.get(i % Ink.STYLES.size());
        canvas.outline(runs, Ink.PAPER, Ink.solid(3.2));
        canvas.outline(runs, style.color(), stroke(i));
      }
    }
  }

  /** The steel of most patches, which the others are laid on. */
  private static int commonest(Pattern pattern) {
    int[] count =
        new int[1 + pattern.patches().stream().mapToInt(Pattern.Patch::steel).max().orElse(0)];
    pattern.patches().forEach(p -> count[p.steel()]++);
    int most = 0;
    for (int i = 1; i < count.length; i++) {
      most = count[i] > count[most] ? i : most;
    }
    return most;
  }

  /** A patch, as far as it lies within the body. */
  private void append(Path2D all, Pattern.Patch patch, Rectangle2D body) {
    Path2D one = new Path2D.Double();
    boolean inside = true;
    for (Pattern.Spot s : patch.corners()) {
      double x = x(s, body);
      double y = y(s, body);
      inside &= body.getMinX() - 0.01 <= x && x <= body.getMaxX() + 0.01;
      inside &= body.getMinY() - 0.01 <= y && y <= body.getMaxY() + 0.01;
      if (one.getCurrentPoint() == null) {
        one.moveTo(x, y);
      } else {
        one.lineTo(x, y);
      }
    }
    one.closePath();
    if (inside) {
      all.append(one, false);
    } else if (one.intersects(body)) {
      Area cut = new Area(one);
      cut.intersect(new Area(body));
      all.append(cut, false);
    }
  }

  private void append(Path2D runs, Pattern.Run run, Rectangle2D body) {
    Line2D line =
        new Line2D.Double(
            x(run.from(), body), y(run.from(), body), x(run.to(), body), y(run.to(), body));
    Cut.within(line, body).ifPresent(cut -> runs.append(cut, false));
  }

  private double x(Pattern.Spot s, Rectangle2D body) {
    return body.getMinX() + s.across() * 1e3 * scale;
  }

  private double y(Pattern.Spot s, Rectangle2D body) {
    return body.getMaxY() - s.up() * 1e3 * scale;
  }

  private static BasicStroke stroke(int set) {
    return switch (set % 4) {
      case 0 -> Ink.solid(1.8);
      case 1 -> Ink.dashed(1.8, 7, 3);
      case 2 -> Ink.dashed(1.8, 7, 2.5f, 2, 2.5f);
      default -> Ink.dashed(1.8, 2.5f, 2.5f);
    };
  }

  /** One entry of the key: what it draws at a place, and its words. */
  private record Entry(String name, double swatch, BiConsumer<Canvas, Point2D> draw) {}

  private List<Entry> entries() {
    List<Entry> all = new ArrayList<>();
    for (int i = 0; i < figure.steels().size(); i++) {
      all.add(box(figure.steels().get(i), STEELS.get(i % STEELS.size())));
    }
    if (figure.panels().stream().flatMap(p -> p.views().stream()).anyMatch(v -> v.jacketUp() > 0)) {
      all.add(box("jacket", JACKET));
    }
    for (int i = 0; i < figure.seams().size(); i++) {
      Color color = Ink.STYLES.get(i % Ink.STYLES.size()).color();
      BasicStroke stroke = stroke(i);
      all.add(
          new Entry(
              "seams of " + figure.seams().get(i).name(),
              34,
              (canvas, at) ->
                  canvas.line(
                      at.getX(), at.getY() - 4, at.getX() + 34, at.getY() - 4, color, stroke)));
    }
    return all;
  }

  private static Entry box(String name, Color color) {
    return new Entry(
        name,
        22,
        (canvas, at) -> {
          Rectangle2D box = new Rectangle2D.Double(at.getX(), at.getY() - 11, 22, 13);
          canvas.fill(box, color);
          canvas.outline(box, Ink.DARK, Ink.solid(1));
        });
  }

  /** Where each entry of the key stands, from the top of the key. */
  private List<Point2D> places() {
    List<Point2D> places = new ArrayList<>();
    double x = LEFT;
    double y = 19;
    for (Entry e : entries()) {
      double width = e.swatch() + 6 + type.width(shown(e), Ink.NOTE, false) + 20;
      if (x > LEFT && x + width > WIDTH - LEFT) {
        x = LEFT;
        y += 20;
      }
      places.add(new Point2D.Double(x, y));
      x += width;
    }
    return places;
  }

  private String shown(Entry e) {
    return type.wrap(e.name(), 260, 1, Ink.NOTE, false).get(0);
  }

  private double keyHeight() {
    List<Point2D> places = places();
    return places.get(places.size() - 1).getY() + 48;
  }

  /** Steels, seams, and how long an inch is. */
  private void key(Canvas canvas, double top) {
    List<Entry> entries = entries();
    List<Point2D> places = places();
    for (int i = 0; i < entries.size(); i++) {
      Entry e = entries.get(i);
      Point2D at = new Point2D.Double(places.get(i).getX(), top + places.get(i).getY());
      e.draw().accept(canvas, at);
      word(canvas, shown(e), at.getX() + e.swatch() + 6, at.getY());
    }
    boolean metric = figure.units() == UnitSystem.METRIC;
    double bar = (metric ? 20 : 25.4) * scale;
    double y = top + places.get(places.size() - 1).getY() + 26;
    canvas.line(LEFT, y, LEFT + bar, y, Ink.DARK, Ink.solid(1.6));
    canvas.line(LEFT, y - 4, LEFT, y + 4, Ink.DARK, Ink.solid(1.6));
    canvas.line(LEFT + bar, y - 4, LEFT + bar, y + 4, Ink.DARK, Ink.solid(1.6));
    String length =
        switch (figure.units()) {
          case US -> "1 in";
          case METRIC -> "20 mm";
          case BOTH -> "1 in (25.4 mm)";
        };
    word(canvas, length + ", the same in every panel", LEFT + bar + 10, y + 4);
  }

  private static void word(Canvas canvas, String text, double x, double y) {
    canvas.text(new Letters(text, x, y, Letters.Anchor.START, Ink.NOTE, false, Ink.DARK));
  }
}
