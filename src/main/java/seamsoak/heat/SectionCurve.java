package seamsoak.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Temperatures of the core and the face of a section through time, straight between moments. */
public final class SectionCurve {
  private final double[] seconds;
  private final double[] core;
  private final double[] face;

  public SectionCurve(List<Moment> moments) {
    seconds = moments.stream().mapToDouble(Moment::seconds).toArray();
    core = moments.stream().mapToDouble(Moment::coreKelvin).toArray();
    face = moments.stream().mapToDouble(Moment::faceKelvin).toArray();
  }

  /** One moment of it. */
  public record Moment(double seconds, double coreKelvin, double faceKelvin) {}

  /** How long it is, s. */
  public double seconds() {
    return seconds[seconds.length - 1];
  }

  /** The last moment. */
  public Moment end() {
    int last = seconds.length - 1;
    return new Moment(seconds[last], core[last], face[last]);
  }

  /** Temperature of the core, K; that of the end afterwards. */
  public double coreKelvin(double at) {
    return read(core, at);
  }

  /** Temperature of the face, K; that of the end afterwards. */
  public double faceKelvin(double at) {
    return read(face, at);
  }

  /** How long the core takes from one temperature to another, s; empty if it does not get there. */
  public OptionalDouble coreSecondsBetween(double fromKelvin, double toKelvin) {
    return between(core, fromKelvin, toKelvin);
  }

  /**
   * How long the face takes from one temperature to another, s, counted from the start when it is
   * past the first at once; empty if it does not get there.
   */
  public OptionalDouble faceSecondsBetween(double fromKelvin, double toKelvin) {
    return between(face, fromKelvin, toKelvin);
  }

  /** The greatest difference of core and face, K. */
  public double greatestDifferenceKelvin() {
    double greatest = 0;
    for (int i = 0; i < core.length; i++) {
      greatest = Math.max(greatest, Math.abs(core[i] - face[i]));
    }
    return greatest;
  }

  /** The core's curve, in segments of about so many kelvin. */
  public HeatCurve core(double stepKelvin) {
    return curve(core, stepKelvin);
  }

  /** The face's curve, in segments of about so many kelvin. */
  public HeatCurve face(double stepKelvin) {
    return curve(face, stepKelvin);
  }

  private HeatCurve curve(double[] kelvin, double stepKelvin) {
    List<HeatCurve.Segment> segments = new ArrayList<>();
    int from = 0;
    for (int i = 1; i < seconds.length; i++) {
      boolean far = Math.abs(kelvin[i] - kelvin[from]) >= stepKelvin;
      if ((far || i == seconds.length - 1) && seconds[i] > seconds[from]) {
        segments.add(new HeatCurve.Segment(kelvin[from], kelvin[i], seconds[i] - seconds[from]));
        from = i;
      }
    }
    return new HeatCurve(segments);
  }

  private double read(double[] kelvin, double at) {
    for (int i = 1; i < seconds.length; i++) {
      if (at < seconds[i]) {
        double share = Math.max(0, at - seconds[i - 1]) / (seconds[i] - seconds[i - 1]);
        return kelvin[i - 1] + share * (kelvin[i] - kelvin[i - 1]);
      }
    }
    return kelvin[kelvin.length - 1];
  }

  private OptionalDouble reaches(double[] kelvin, double wanted) {
    if (kelvin[0] == wanted) {
      return OptionalDouble.of(0);
    }
    for (int i = 1; i < kelvin.length; i++) {
      if ((kelvin[i - 1] - wanted) * (kelvin[i] - wanted) <= 0) {
        double share = (wanted - kelvin[i - 1]) / (kelvin[i] - kelvin[i - 1]);
        return OptionalDouble.of(seconds[i - 1] + share * (seconds[i] - seconds[i - 1]));
      }
    }
    return OptionalDouble.empty();
  }

  private OptionalDouble between(double[] kelvin, double from, double to) {
    boolean within = (kelvin[0] - from) * (kelvin[0] - to) <= 0;
    OptionalDouble start = within ? OptionalDouble.of(0) : reaches(kelvin, from);
    OptionalDouble end = reaches(kelvin, to);
    return start.isPresent() && end.isPresent()
        ? OptionalDouble.of(end.getAsDouble() - start.getAsDouble())
        : OptionalDouble.empty();
  }
}
