package seamsoak.billet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.heat.HeatCurve;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;

/**
 * A real heat as points of time and temperature, straight between them. The points count; the log
 * they come from need not be there.
 *
 * @param name by which heats call it
 * @param points in the order of time, at least two
 * @param gaps in which nothing was read
 * @param loaded when the metal went in, if stated; else at the first point
 * @param out when it came out, if stated; else at the last
 * @param origin where the points come from
 */
public record LoggedCurve(
    String name,
    List<Point> points,
    List<Gap> gaps,
    Optional<TimeSpan> loaded,
    Optional<TimeSpan> out,
    Origin origin) {
  /** A reading. */
  public record Point(double seconds, double kelvin) {}

  /** A stretch of time without a reading, s. */
  public record Gap(double fromSeconds, double toSeconds) {}

  /** Where the tip of the couple was. */
  public enum Tip {
    /** In a hole of the piece: what it reads is the piece. */
    STEEL,
    /** On its face: it sees the fire too. */
    SURFACE,
    /** In the air of the kiln, which the piece lags behind. */
    AIR
  }

  /**
   * Where the points come from, each as far as stated.
   *
   * @param file name of the log
   * @param sha256 of the log, in hexadecimal digits
   * @param column of the log that was read
   * @param tip where the couple's tip was
   * @param couple which kind and class
   */
  public record Origin(
      Optional<String> file,
      Optional<String> sha256,
      Optional<String> column,
      Optional<Tip> tip,
      Optional<String> couple) {}

  public LoggedCurve {
    points = List.copyOf(points);
    gaps = List.copyOf(gaps);
  }

  /**
   * Temperature against time while the metal was in. Through a gap it is as cool as at its cooler
   * end: what was not read is not credited.
   */
  public HeatCurve curve() {
    double from = loaded.map(TimeSpan::seconds).orElse(points.get(0).seconds());
    double to = out.map(TimeSpan::seconds).orElse(points.get(points.size() - 1).seconds());
    List<HeatCurve.Segment> segments = new ArrayList<>();
    for (int i = 1; i < points.size(); i++) {
      Point a = points.get(i - 1);
      Point b = points.get(i);
      double start = Math.max(from, a.seconds());
      double end = Math.min(to, b.seconds());
      if (end > start) {
        boolean lost = isLost(a, b);
        double cooler = Math.min(a.kelvin(), b.kelvin());
        segments.add(
            new HeatCurve.Segment(
                lost ? cooler : between(a, b, start),
                lost ? cooler : between(a, b, end),
                end - start));
      }
    }
    return new HeatCurve(segments);
  }

  private boolean isLost(Point a, Point b) {
    return gaps.stream()
        .anyMatch(g -> g.fromSeconds() < b.seconds() && g.toSeconds() > a.seconds());
  }

  private static double between(Point a, Point b, double seconds) {
    double share = (seconds - a.seconds()) / (b.seconds() - a.seconds());
    return a.kelvin() + share * (b.kelvin() - a.kelvin());
  }

  /** Its highest temperature. */
  public Temperature hottest() {
    return new Temperature(curve().peakKelvin());
  }
}
