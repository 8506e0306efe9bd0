package seamsoak.property.hardening;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import seamsoak.numeric.Polyline;
import seamsoak.numeric.Roots;
import seamsoak.source.Estimate;
import seamsoak.source.Exceeded;
import seamsoak.source.Range;

/**
 * Hardness after tempering, against the parameter of {@link HollomonJaffe1945}.
 *
 * <p>Straight between its points. Beyond the hottest it runs on at the last slope, with a remark;
 * below the coolest it is level.
 *
 * @param hrcByParameter at least two points, hardness never rising with the parameter
 * @param known parameters that its source vouches for
 * @param band what the hardness is uncertain by there, HRC
 * @param bandBeyond and where another law runs it on
 */
public record TemperingCurve(
    HollomonJaffe1945 law,
    NavigableMap<Double, Double> hrcByParameter,
    Range known,
    double band,
    double bandBeyond,
    String source) {
  private static final double COOLEST_KELVIN = 373.15;
  private static final double HOTTEST_KELVIN = 1000;
  private static final double STEP_KELVIN = 25;

  public TemperingCurve {
    hrcByParameter = Collections.unmodifiableNavigableMap(new TreeMap<>(hrcByParameter));
  }

  /** Of points that their source vouches for throughout. */
  public TemperingCurve(
      HollomonJaffe1945 law,
      NavigableMap<Double, Double> hrcByParameter,
      double band,
      String source) {
    this(
        law,
        hrcByParameter,
        new Range(
            "tempering parameter", "1000 K", hrcByParameter.firstKey(), hrcByParameter.lastKey()),
        band,
        band,
        source);
  }

  /** It with the fall of another curve beyond its hottest point, and that one's band there. */
  public TemperingCurve continuedBy(TemperingCurve other) {
    NavigableMap<Double, Double> on = new TreeMap<>(hrcByParameter);
    double end = law.kelvin(hrcByParameter.lastKey(), 1);
    double hrc = hrcByParameter.lastEntry().getValue();
    double from = other.value(other.law.parameter(end, 1));
    for (double kelvin = end + STEP_KELVIN;
        kelvin < HOTTEST_KELVIN + STEP_KELVIN;
        kelvin += STEP_KELVIN) {
      double fallen = other.value(other.law.parameter(kelvin, 1)) - from;
      on.put(law.parameter(kelvin, 1), hrc + fallen);
    }
    return new TemperingCurve(law, on, known, band, other.band, source);
  }

  /** The same curve with every hardness moved. */
  public TemperingCurve movedBy(double hrc) {
    NavigableMap<Double, Double> moved = new TreeMap<>();
    hrcByParameter.forEach((p, h) -> moved.put(p, h + hrc));
    return new TemperingCurve(law, moved, known, band, bandBeyond, source);
  }

  /** Hardness in HRC after one temper. */
  public Estimate hrc(double kelvin, double hours) {
    return hrcAt(law.parameter(kelvin, hours));
  }

  /** Hardness in HRC after equal tempers one after the other. */
  public Estimate hrc(double kelvin, double hoursEach, int tempers) {
    return hrc(kelvin, hoursEach * tempers);
  }

  /** Hardness in HRC at a parameter. */
  public Estimate hrcAt(double parameter) {
    double hrc = value(parameter);
    double doubt = parameter > known.high() ? bandBeyond : band;
    List<Exceeded> left =
        known.holds(parameter) ? List.of() : List.of(new Exceeded("tempering", known, parameter));
    return new Estimate(hrc, hrc - doubt, hrc + doubt, source, left);
  }

  /**
   * Temperature in K that tempers to a hardness in that time, with the band of temperatures that
   * the band of hardness makes (the low one leaves it harder). At the ends of 100 and 727 C where
   * no heat between gives it; then {@link Estimate#exceeded()} names the range of hardness that can
   * be had.
   */
  public Estimate kelvinFor(double hrc, double hours) {
    double hardest = value(law.parameter(COOLEST_KELVIN, hours));
    double softest = value(law.parameter(HOTTEST_KELVIN, hours));
    Range range = new Range("hardness", "HRC", softest, hardest);
    double kelvin = kelvin(hrc, hours);
    double doubt = law.parameter(kelvin, hours) > known.high() ? bandBeyond : band;
    return new Estimate(
        kelvin,
        kelvin(hrc + doubt, hours),
        kelvin(hrc - doubt, hours),
        source,
        range.holds(hrc) ? List.of() : List.of(new Exceeded("tempering", range, hrc)));
  }

  private double kelvin(double hrc, double hours) {
    double low = law.parameter(COOLEST_KELVIN, hours);
    double high = law.parameter(HOTTEST_KELVIN, hours);
    if (hrc >= value(low)) {
      return COOLEST_KELVIN;
    }
    if (hrc <= value(high)) {
      return HOTTEST_KELVIN;
    }
    return law.kelvin(Roots.between(p -> value(p) - hrc, low, high, 1e-9), hours);
  }

  private double value(double parameter) {
    Map.Entry<Double, Double> below = hrcByParameter.floorEntry(parameter);
    if (below == null) {
      return hrcByParameter.firstEntry().getValue();
    }
    Map.Entry<Double, Double> above = hrcByParameter.higherEntry(parameter);
    if (above == null) {
      above = hrcByParameter.lastEntry();
      below = hrcByParameter.lowerEntry(above.getKey());
    }
    return Polyline.through(below, above, parameter);
  }
}
