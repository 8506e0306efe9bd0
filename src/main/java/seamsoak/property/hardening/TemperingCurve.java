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
 * @param band what the hardness is uncertain by, HRC
 */
public record TemperingCurve(
    HollomonJaffe1945 law,
    NavigableMap<Double, Double> hrcByParameter,
    double band,
    String source) {
  private static final double COOLEST_KELVIN = 373.15;
  private static final double HOTTEST_KELVIN = 1000;

  public TemperingCurve {
    hrcByParameter = Collections.unmodifiableNavigableMap(new TreeMap<>(hrcByParameter));
  }

  /** The same curve with every hardness moved. */
  public TemperingCurve movedBy(double hrc) {
    NavigableMap<Double, Double> moved = new TreeMap<>();
    hrcByParameter.forEach((p, h) -> moved.put(p, h + hrc));
    return new TemperingCurve(law, moved, band, source);
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
    Range range =
        new Range(
            "tempering parameter", "1000 K", hrcByParameter.firstKey(), hrcByParameter.lastKey());
    List<Exceeded> left =
        range.holds(parameter) ? List.of() : List.of(new Exceeded("tempering", range, parameter));
    return new Estimate(hrc, hrc - band, hrc + band, source, left);
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
    return new Estimate(
        kelvin(hrc, hours),
        kelvin(hrc + band, hours),
        kelvin(hrc - band, hours),
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
