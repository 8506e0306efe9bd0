package seamsoak.heatlog;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import seamsoak.heat.Course;
import seamsoak.heat.HeatCurve;
import seamsoak.unit.Temperature;

/**
 * The course of a heat in few points, straight between them: what the engine walks and a billet
 * keeps.
 *
 * @param points in order of time
 * @param gaps between two of them nobody knows what happened
 */
public record LogCurve(List<Point> points, List<Gap> gaps) {
  /** No reading lies further than that from a line between readings, K. */
  static final double TOLERANCE_KELVIN = 2;

  /** A step that takes no time takes this long. */
  private static final double STEP_SECONDS = 1e-3;

  public LogCurve {
    points = List.copyOf(points);
    gaps = List.copyOf(gaps);
    if (points.size() < 2) {
      throw new IllegalArgumentException("a curve needs two points");
    }
  }

  /** A moment of it. */
  public record Point(double minute, double celsius) {}

  /**
   * A stretch without readings.
   *
   * @param coolerC of its two ends
   * @param hotterC of its two ends
   */
  public record Gap(double fromMinute, double toMinute, double coolerC, double hotterC) {
    public double minutes() {
      return toMinute - fromMinute;
    }
  }

  /** What is taken for true in a gap: carbon counts little, scale and grain count much. */
  public enum InGaps {
    COOLER_END,
    HOTTER_END
  }

  static LogCurve of(Readings readings) {
    BitSet kept = Pieces.kept(readings, TOLERANCE_KELVIN);
    double[] fitted = Pieces.fitted(readings, kept);
    List<Point> points = new ArrayList<>();
    List<Gap> gaps = new ArrayList<>();
    int last = -1;
    for (int i = kept.nextSetBit(0); i >= 0; i = kept.nextSetBit(i + 1)) {
      Point point = new Point(readings.seconds()[i] / 60, fitted[points.size()]);
      if (i == last + 1 && i > 0 && readings.isGap(i)) {
        Point before = points.get(points.size() - 1);
        gaps.add(
            new Gap(
                before.minute(),
                point.minute(),
                Math.min(before.celsius(), point.celsius()),
                Math.max(before.celsius(), point.celsius())));
      }
      points.add(point);
      last = i;
    }
    return new LogCurve(points, gaps);
  }

  public double startMinute() {
    return points.get(0).minute();
  }

  public double endMinute() {
    return points.get(points.size() - 1).minute();
  }

  /** Its highest point, C. */
  public double peakC() {
    return points.stream().mapToDouble(Point::celsius).max().orElseThrow();
  }

  /** Every temperature put in place of another. */
  LogCurve with(DoubleUnaryOperator celsius) {
    return new LogCurve(
        points.stream()
            .map(p -> new Point(p.minute(), celsius.applyAsDouble(p.celsius())))
            .toList(),
        gaps.stream()
            .map(
                g ->
                    new Gap(
                        g.fromMinute(),
                        g.toMinute(),
                        celsius.applyAsDouble(g.coolerC()),
                        celsius.applyAsDouble(g.hotterC())))
            .toList());
  }

  /** As the piece's own curve. */
  public HeatCurve heat(InGaps inGaps) {
    List<HeatCurve.Segment> segments = new ArrayList<>();
    int gap = 0;
    for (int i = 1; i < points.size(); i++) {
      Point from = points.get(i - 1);
      Point to = points.get(i);
      double seconds = 60 * (to.minute() - from.minute());
      if (gap < gaps.size() && gaps.get(gap).fromMinute() == from.minute()) {
        double level = kelvin(level(gaps.get(gap++), inGaps));
        segments.add(new HeatCurve.Segment(level, level, seconds));
      } else {
        segments.add(new HeatCurve.Segment(kelvin(from.celsius()), kelvin(to.celsius()), seconds));
      }
    }
    return new HeatCurve(segments);
  }

  /** As the course of the air around a piece, from its own start. */
  public Course around(InGaps inGaps) {
    Numbers seconds = new Numbers();
    Numbers kelvin = new Numbers();
    double at = 0;
    for (HeatCurve.Segment s : heat(inGaps).segments()) {
      boolean jumps = seconds.size() > 0 && s.fromKelvin() != kelvin.last();
      if (seconds.size() == 0 || jumps) {
        seconds.add(jumps ? at + STEP_SECONDS : at);
        kelvin.add(s.fromKelvin());
      }
      at += s.seconds();
      seconds.add(at);
      kelvin.add(s.toKelvin());
    }
    return Course.through(seconds.array(), kelvin.array());
  }

  private static double level(Gap gap, InGaps inGaps) {
    return switch (inGaps) {
      case COOLER_END -> gap.coolerC();
      case HOTTER_END -> gap.hotterC();
    };
  }

  private static double kelvin(double celsius) {
    return celsius + Temperature.ZERO_CELSIUS;
  }
}
