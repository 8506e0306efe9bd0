package seamsoak.chart;

import java.awt.Color;
import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Draws a {@link SectionFigure}: four panels to a row, every millimetre as long as any other. */
final class SectionDrawing implements Drawing {
  private static final double LEFT = SectionKey.LEFT;
  private static final double GAP = 20;
  private static final int ACROSS = 4;
  private static final double CELL = (WIDTH - 2 * LEFT - (ACROSS - 1) * GAP) / ACROSS;
  private static final double VIEW_GAP = 8;
  private static final int NOTE_LINES = 4;

  private static final Color TOO_FINE = new Color(0xB4BDC4);

  private final SectionFigure figure;
  private final Heading heading;
  private final double scale;
  private final SectionKey key;
  private final List<Block> words = new ArrayList<>();

  SectionDrawing(SectionFigure figure, Type type) {
    this.figure = figure;
    heading = Heading.of(figure, type, WIDTH);
    scale = CELL / figure.widestMm();
    key = new SectionKey(figure, type, scale);
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
    return tallest(row, i -> words.get(i).height());
  }

  private double viewsHeight(int row) {
    return tallest(row, i -> height(figure.panels().get(i)));
  }

  private double tallest(int row, IntToDoubleFunction height) {
    return IntStream.range(row * ACROSS, Math.min(words.size(), (row + 1) * ACROSS))
        .mapToDouble(height)
        .max()
        .orElse(0);
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
    return height + key.height();
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
    key.draw(canvas, top);
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
    canvas.fill(whole, view.jacketUp() > 0 ? SectionKey.JACKET : Ink.PANEL);
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
    canvas.fill(body, ground < 0 ? TOO_FINE : SectionKey.steel(ground));
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
        canvas.fill(all, SectionKey.steel(steel));
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
        canvas.outline(runs, style.color(), SectionKey.stroke(i));
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
}
