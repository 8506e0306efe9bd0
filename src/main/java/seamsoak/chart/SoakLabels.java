package seamsoak.chart;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** The words inside a soak chart, the recommended soak first, each where there is room. */
record SoakLabels(
    SoakFigure figure, Type type, SoakScale scale, Frame frame, Placer placer, Canvas canvas) {

  void draw() {
    pick();
    limitNames();
    mostName();
    bandName();
    dayName();
  }

  private void pick() {
    if (figure.pick().isEmpty()) {
      return;
    }
    var pick = figure.pick().get();
    double x = frame.x(pick.celsius());
    double y = frame.y(scale.clip(pick.minutes()));
    canvas.marker(Ink.ring(13), x, y, Ink.EMBER, false);
    canvas.marker(Ink.ring(7.5), x, y, Ink.EMBER, true);
    placer.avoid(new Rectangle2D.Double(x - 15, y - 15, 30, 30));
    Block block = Block.of(type, Block.wrap(type, pick.label(), 390, 3, 20, true, Ink.EMBER));
    Rectangle2D at = placer.near(x, y - 30, block.width(), block.height());
    lead(at, x, y, 14, Ink.EMBER);
    canvas.block(block, at.getX(), at.getY(), Letters.Anchor.START);
  }

  private void lead(Rectangle2D box, double x, double y, double off, Color color) {
    double endX = Math.max(box.getMinX(), Math.min(x, box.getMaxX()));
    double endY = Math.max(box.getMinY(), Math.min(y, box.getMaxY()));
    double length = Math.hypot(endX - x, endY - y);
    if (length > off + 12) {
      double share = off / length;
      canvas.line(
          x + share * (endX - x), y + share * (endY - y), endX, endY, color, Ink.solid(1.5));
    }
  }

  /** Narrow enough to stand between the two limits that are closest to each other. */
  private double limitRoom() {
    double[] x = figure.limits().stream().mapToDouble(l -> frame.x(l.celsius())).sorted().toArray();
    double gap = 170;
    for (int i = 1; i < x.length; i++) {
      gap = Math.min(gap, x[i] - x[i - 1]);
    }
    return Math.max(66, gap - 16);
  }

  private void limitNames() {
    double room = limitRoom();
    for (var limit : figure.limits()) {
      List<Block.Line> lines =
          new ArrayList<>(
              Block.wrap(type, limit.label(), room, 3, 13, true, SoakDrawing.color(limit)));
      lines.addAll(
          Block.wrap(
              type,
              new Temperatures(figure.units()).text(limit.celsius()),
              room,
              2,
              Ink.NOTE,
              false,
              Ink.DARK));
      Block block = Block.of(type, lines);
      Rectangle2D at =
          placer.near(
              frame.x(limit.celsius()) - 6 - block.width() / 2,
              frame.area.getMinY() + 10,
              block.width(),
              block.height());
      lead(at, frame.x(limit.celsius()), at.getCenterY(), 0, SoakDrawing.color(limit));
      canvas.block(block, at.getX(), at.getY(), Letters.Anchor.START);
    }
  }

  private void mostName() {
    if (figure.most().isPresent()) {
      String text = "longest soak " + Tick.duration(figure.most().getAsDouble());
      Block block = Block.of(type, List.of(new Block.Line(text, 13, true, Ink.DARK)));
      double y = frame.y(scale.clip(figure.most().getAsDouble()));
      Rectangle2D at = placer.near(frame.area.getMinX() + 8, y + 4, block.width(), block.height());
      canvas.block(block, at.getX(), at.getY(), Letters.Anchor.START);
    }
  }

  private void bandName() {
    List<SoakFigure.Option> banded =
        figure.options().stream()
            .filter(o -> o.minutesLow().isPresent() && o.minutesHigh().isPresent())
            .toList();
    if (banded.size() > 1) {
      SoakFigure.Option option = banded.get(banded.size() / 2);
      Block block =
          Block.of(type, List.of(new Block.Line("band: low to high", 13, false, Ink.BLUE)));
      double y = frame.y(scale.clip(option.minutesHigh().getAsDouble()));
      Rectangle2D at =
          placer.near(frame.x(option.celsius()) + 30, y - 12, block.width(), block.height());
      canvas.block(block, at.getX(), at.getY(), Letters.Anchor.START);
    }
  }

  private void dayName() {
    figure.options().stream()
        .filter(option -> option.minutes().isEmpty())
        .findFirst()
        .ifPresent(
            option -> {
              Block block =
                  Block.of(type, List.of(new Block.Line("over a day", 13, true, Ink.BLUE)));
              double x = frame.x(option.celsius());
              Rectangle2D at =
                  placer.near(x, frame.area.getMinY() + 20, block.width(), block.height());
              canvas.block(block, at.getX(), at.getY(), Letters.Anchor.START);
            });
  }
}
