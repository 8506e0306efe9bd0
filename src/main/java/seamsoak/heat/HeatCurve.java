package seamsoak.heat;

import java.util.ArrayList;
import java.util.List;

/**
 * Temperature against time: straight segments joined end to end. A planned heat, a soak, a
 * schedule's cycle, a kiln's log and the line of a chart are all this.
 *
 * @param segments in order, each starting where the one before ends in time (not necessarily in
 *     temperature: a piece put into a hot fire jumps)
 */
public record HeatCurve(List<Segment> segments) {

  /**
   * A straight piece of a curve.
   *
   * @param fromKelvin temperature at its start
   * @param toKelvin temperature at its end
   * @param seconds how long it takes, above 0
   */
  public record Segment(double fromKelvin, double toKelvin, double seconds) {
    public Segment {
      if (!(seconds > 0) || !(fromKelvin > 0) || !(toKelvin > 0)) {
        throw new IllegalArgumentException("a segment needs time and absolute temperatures");
      }
    }

    /** Temperature a given time into the segment. */
    public double kelvinAt(double secondsIn) {
      return fromKelvin + (toKelvin - fromKelvin) * Math.min(1, secondsIn / seconds);
    }
  }

  public HeatCurve {
    segments = List.copyOf(segments);
  }

  /** Whether it is nowhere at that temperature or below. */
  public boolean staysAbove(double kelvin) {
    for (Segment s : segments) {
      if (s.fromKelvin() <= kelvin || s.toKelvin() <= kelvin) {
        return false;
      }
    }
    return true;
  }

  /** A hold at one temperature. */
  public static HeatCurve hold(double kelvin, double seconds) {
    return new HeatCurve(List.of(new Segment(kelvin, kelvin, seconds)));
  }

  /**
   * A straight rise from one temperature to another, then a hold there; either may take no time.
   */
  public static HeatCurve riseAndHold(
      double fromKelvin, double toKelvin, double riseSeconds, double holdSeconds) {
    List<Segment> parts = new ArrayList<>();
    if (riseSeconds > 0) {
      parts.add(new Segment(fromKelvin, toKelvin, riseSeconds));
    }
    if (holdSeconds > 0) {
      parts.add(new Segment(toKelvin, toKelvin, holdSeconds));
    }
    return new HeatCurve(parts);
  }

  /** The same, hotter throughout by a difference. */
  public HeatCurve plus(double kelvin) {
    return new HeatCurve(
        segments.stream()
            .map(s -> new Segment(s.fromKelvin + kelvin, s.toKelvin + kelvin, s.seconds))
            .toList());
  }

  /** What of it is hotter than a temperature; nothing else is left, not even time. */
  public HeatCurve above(double kelvin) {
    List<Segment> hot = new ArrayList<>();
    for (Segment s : segments) {
      if (s.fromKelvin >= kelvin && s.toKelvin >= kelvin) {
        hot.add(s);
      } else if (s.fromKelvin > kelvin || s.toKelvin > kelvin) {
        double share =
            (Math.max(s.fromKelvin, s.toKelvin) - kelvin) / Math.abs(s.toKelvin - s.fromKelvin);
        hot.add(
            new Segment(
                Math.max(kelvin, s.fromKelvin), Math.max(kelvin, s.toKelvin), share * s.seconds));
      }
    }
    return new HeatCurve(hot);
  }

  /** This curve followed by another. */
  public HeatCurve then(HeatCurve next) {
    List<Segment> all = new ArrayList<>(segments);
    all.addAll(next.segments);
    return new HeatCurve(all);
  }

  /**
   * Both ends of each segment, one after the other.
   *
   * @param seconds from the start
   * @param kelvin as many
   */
  public record Corners(double[] seconds, double[] kelvin) {}

  /** Both ends of each segment, one after the other. */
  public Corners corners() {
    int n = segments.size();
    double[] seconds = new double[2 * n];
    double[] kelvin = new double[2 * n];
    double t = 0;
    for (int i = 0; i < n; i++) {
      Segment s = segments.get(i);
      seconds[2 * i] = t;
      kelvin[2 * i] = s.fromKelvin();
      t += s.seconds();
      seconds[2 * i + 1] = t;
      kelvin[2 * i + 1] = s.toKelvin();
    }
    return new Corners(seconds, kelvin);
  }

  /** The whole time, seconds. */
  public double seconds() {
    double sum = 0;
    for (Segment s : segments) {
      sum += s.seconds;
    }
    return sum;
  }

  /** Where it ends, kelvin; absolute zero for an empty curve. */
  public double endKelvin() {
    return segments.isEmpty() ? 0 : segments.get(segments.size() - 1).toKelvin;
  }

  /** The highest temperature, kelvin; absolute zero for an empty curve. */
  public double peakKelvin() {
    double peak = 0;
    for (Segment s : segments) {
      peak = Math.max(peak, Math.max(s.fromKelvin, s.toKelvin));
    }
    return peak;
  }
}
