package seamsoak.chart;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.List;
import seamsoak.chart.figure.SoakFigure;
import seamsoak.chart.figure.Unit;

/** The words inside a soak chart, the recommended soak first, each where there is room. */
record SoakLabels(SoakFigure figure, SoakScale scale, Frame frame, Placer placer, Canvas canvas) {

  void draw() {
    figure.pick().ifPresent(this::pick);
    limitNames();
    figure.most().ifPresent(this::mostName);
    bandName();
    dayName();
  }

  private void pick(SoakFigure.Pick pick) {
    double x = frame.x(pick.celsius());
    double y = frame.y(scale.clip(pick.minutes()));
    canvas.outline(Ink.ring(13, x, y), Ink.EMBER, Ink.solid(2));
    canvas.fill(Ink.ring(7.5, x, y), Ink.EMBER);
    placer.avoid(new Rectangle2D.Double(x - 15, y - 15, 30, 30));
    Block block = Block.of(pick.label(), 390, 3, new Print(20, true, Ink.EMBER));
    lead(placer.set(canvas, block, x, y - 30), x, y, 14, Ink.EMBER);
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
      Color color = SoakDrawing.color(limit);
      double x = frame.x(limit.celsius());
      Block block =
          Block.of(limit.label(), room, 3, Ink.WORD.in(color))
              .and(
                  Unit.temperature(figure.units(), limit.celsius(), limit.celsius()),
                  room,
                  2,
                  Ink.SAID);
      double left = x - 6 - block.width() / 2;
      Rectangle2D at = placer.set(canvas, block, left, frame.area.getMinY() + 10);
      lead(at, x, at.getCenterY(), 0, color);
    }
  }

  private void mostName(double most) {
    Block block = Block.of("longest soak " + DurationAxis.words(most), Ink.WORD);
    placer.set(canvas, block, frame.area.getMinX() + 8, frame.y(scale.clip(most)) + 4);
  }

  private void bandName() {
    List<SoakFigure.Option> banded =
        figure.options().stream()
            .filter(o -> o.minutesLow().isPresent() && o.minutesHigh().isPresent())
            .toList();
    if (banded.size() > 1) {
      SoakFigure.Option option = banded.get(banded.size() / 2);
      double y = frame.y(scale.at(option, option.minutesHigh()).getY());
      Block block = Block.of("band: low to high", Ink.NUMBER.in(Ink.BLUE));
      placer.set(canvas, block, frame.x(option.celsius()) + 30, y - 12);
    }
  }

  private void dayName() {
    figure.options().stream()
        .filter(option -> option.minutes().isEmpty())
        .findFirst()
        .ifPresent(
            option ->
                placer.set(
                    canvas,
                    Block.of("over a day", Ink.WORD.in(Ink.BLUE)),
                    frame.x(option.celsius()),
                    frame.area.getMinY() + 20));
  }
}
