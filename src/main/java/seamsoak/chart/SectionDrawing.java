package seamsoak.chart;

import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import seamsoak.chart.figure.Pattern;
import seamsoak.chart.figure.SectionFigure;

/** Draws a {@link SectionFigure}: four panels to a row, every millimetre as long as any other. */
final class SectionDrawing implements Drawing {
  private static final double LEFT = SectionKey.LEFT;
  private static final double GAP = 20;
  private static final int ACROSS = 4;
  private static final double CELL = (WIDTH - 2 * LEFT - (ACROSS - 1) * GAP) / ACROSS;
  private static final double VIEW_GAP = 8;
  private static final double SKETCH_EDGE = 3;

  /** Of a section alone. */
  static final double SKETCH_WIDTH = CELL + 2 * SKETCH_EDGE;

  private static final int NOTE_LINES = 4;

  private static final Color TOO_FINE = new Color(0xB4BDC4);

  private final SectionFigure figure;
  private final Heading heading;
  private final double scale;
  private final SectionKey key;
  private final PanelGrid grid;

  SectionDrawing(SectionFigure figure) {
    this.figure = figure;
    heading = Heading.of(figure);
    scale = CELL / figure.widestMm();
    key = SectionKey.of(figure, scale);
    grid =
        new PanelGrid(
            figure.panels().stream().map(SectionDrawing::words).toList(),
            ACROSS,
            LEFT,
            CELL + GAP,
            heading.bottom() + 18,
            24,
            i -> height(figure.panels().get(i)));
  }

  private static Block words(SectionFigure.Panel panel) {
    Block block = Block.of(panel.name(), CELL, 1, Ink.NAME);
    for (String note : panel.notes()) {
      block = block.and(note, CELL, 3, Ink.NOTE);
    }
    List<Block.Line> lines = block.lines();
    return new Block(lines.subList(0, Math.min(1 + NOTE_LINES, lines.size())));
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
    return grid.bottom() + key.height();
  }

  @Override
  public void draw(Canvas canvas) {
    heading.draw(canvas);
    for (int i = 0; i < figure.panels().size(); i++) {
      canvas.block(grid.words().get(i), grid.left(i), grid.top(i));
      views(canvas, figure.panels().get(i), grid.left(i), grid.shownTop(i));
    }
    key.draw(canvas, grid.bottom());
  }

  double sketchHeight() {
    return height(figure.panels().get(0)) + 2 * SKETCH_EDGE;
  }

  void sketch(Canvas canvas) {
    views(canvas, figure.panels().get(0), SKETCH_EDGE, SKETCH_EDGE);
  }

  /** Nearer to a seam than that is at it, for a finger. */
  private static final double FINGER = 12;

  /** What of a sketch lies at a place; empty beside the metal. */
  Optional<SectionFigure.Spotted> at(double x, double y) {
    double top = SKETCH_EDGE;
    for (var view : figure.panels().get(0).views()) {
      top += view.label().isEmpty() ? 0 : 16;
      double across = (x - SKETCH_EDGE) / scale - view.jacketAcross();
      double up = view.heightMm() - view.jacketUp() - (y - top) / scale;
      double finger = FINGER / scale;
      boolean inside =
          across > -finger
              && across < view.widthMm() - 2 * view.jacketAcross() + finger
              && y > top - FINGER / 2
              && y < top + view.heightMm() * scale + FINGER / 2;
      if (inside && view.pattern() != null) {
        return Optional.of(nearest(view.pattern(), across, up));
      }
      top += view.heightMm() * scale + VIEW_GAP;
    }
    return Optional.empty();
  }

  private SectionFigure.Spotted nearest(Pattern pattern, double across, double up) {
    double nearest = FINGER / scale;
    SectionFigure.Spotted spotted = new SectionFigure.Spotted(OptionalInt.empty(), false);
    for (Pattern.Seam s : pattern.seams()) {
      double fromX = s.from().across() * 1e3;
      double fromY = s.from().up() * 1e3;
      double toX = s.to().across() * 1e3;
      double toY = s.to().up() * 1e3;
      double away = Line2D.ptSegDist(fromX, fromY, toX, toY, across, up);
      if (away < nearest) {
        nearest = away;
        boolean upright = Math.abs(toY - fromY) > Math.abs(toX - fromX);
        spotted = new SectionFigure.Spotted(OptionalInt.of(s.step()), upright);
      }
    }
    return spotted;
  }

  private void views(Canvas canvas, SectionFigure.Panel panel, double left, double top) {
    double y = top;
    for (var view : panel.views()) {
      if (!view.label().isEmpty()) {
        canvas.text(view.label(), left, y + 11, Ink.NOTE);
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
      canvas.within(body);
      pattern(canvas, view.pattern(), body);
      canvas.within(null);
    }
    canvas.outline(whole, Ink.DARK, Ink.solid(1.2));
    if (view.goesOn()) {
      goesOn(canvas, whole, whole.getMinX(), -1);
      goesOn(canvas, whole, whole.getMaxX(), 1);
    }
  }

  private static void goesOn(Canvas canvas, Rectangle2D whole, double x, int out) {
    double top = whole.getMinY() - 3;
    double bottom = whole.getMaxY() + 3;
    canvas.line(x, top, x, bottom, Ink.PAPER, Ink.solid(3));
    canvas.line(x + out, top, x + out, bottom, Ink.SOFT, Ink.dashed(1.2, 3, 3));
  }

  /** The steel of most patches is the ground that the others are laid on. */
  private void pattern(Canvas canvas, Pattern pattern, Rectangle2D body) {
    Map<Integer, List<Pattern.Patch>> patches =
        pattern.patches().stream().collect(Collectors.groupingBy(Pattern.Patch::steel));
    int ground =
        patches.keySet().stream()
            .max(Comparator.comparingInt(steel -> patches.get(steel).size()))
            .orElse(-1);
    canvas.fill(body, ground < 0 ? TOO_FINE : SectionKey.steel(ground));
    patches.forEach(
        (steel, all) -> {
          if (steel != ground) {
            Path2D path = new Path2D.Double();
            all.forEach(patch -> append(path, patch.corners(), body));
            canvas.fill(path, SectionKey.steel(steel));
          }
        });
    for (int i = 0; i < figure.seams().size(); i++) {
      int step = figure.seams().get(i).step();
      Path2D all = new Path2D.Double();
      for (Pattern.Seam seam : pattern.seams()) {
        if (seam.step() == step) {
          append(all, List.of(seam.from(), seam.to()), body);
        }
      }
      if (all.getCurrentPoint() != null) {
        canvas.outline(all, Ink.PAPER, Ink.solid(3.2));
        canvas.outline(all, SectionKey.seam(i).color(), SectionKey.seam(i).stroke());
      }
    }
  }

  /** Pattern in m, from the lower left corner; what lies outside is left out, not cut. */
  private void append(Path2D all, List<Pattern.Spot> spots, Rectangle2D body) {
    Path2D one = new Path2D.Double();
    for (Pattern.Spot s : spots) {
      double x = body.getMinX() + s.across() * 1e3 * scale;
      double y = body.getMaxY() - s.up() * 1e3 * scale;
      if (one.getCurrentPoint() == null) {
        one.moveTo(x, y);
      } else {
        one.lineTo(x, y);
      }
    }
    Rectangle2D box = one.getBounds2D();
    if (box.getMaxX() > body.getMinX()
        && box.getMinX() < body.getMaxX()
        && box.getMaxY() > body.getMinY()
        && box.getMinY() < body.getMaxY()) {
      all.append(one, false);
    }
  }
}
