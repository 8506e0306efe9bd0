package seamsoak.heatlog;

import java.util.ArrayList;
import java.util.List;
import seamsoak.heat.Environment;
import seamsoak.heat.HeatCurve;
import seamsoak.heat.Section;
import seamsoak.heat.SectionCurve;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.section.SectionHeat;
import seamsoak.unit.Temperature;

/**
 * The piece itself through a heat: its middle, where seams lie, and its face.
 *
 * @param core of the middle
 * @param face of the face
 */
public record Followed(HeatCurve core, HeatCurve face) {
  private static final double STEP_KELVIN = LogCurve.TOLERANCE_KELVIN;

  /** A piece that the thermocouple was in or on. */
  static Followed read(LogCurve curve, LogCurve.InGaps inGaps) {
    HeatCurve heat = curve.heat(inGaps);
    return new Followed(heat, heat);
  }

  /**
   * A piece put cold into a kiln whose air was read.
   *
   * @param heating how much faster it heats than film and emissivity say
   */
  static Followed inAir(
      LogCurve curve,
      LogCurve.InGaps inGaps,
      SectionHeat sections,
      Section section,
      double heating) {
    Environment kiln = sections.furnace().kiln(curve.around(inGaps));
    Environment around =
        new Environment(
            kiln.around(),
            heating * kiln.filmWattsPerSquareMetreKelvin(),
            heating * kiln.emissivity());
    SectionCurve run =
        sections
            .changing()
            .run(
                section,
                QuenchedSteel.ROOM_CELSIUS + Temperature.ZERO_CELSIUS,
                around,
                Double.POSITIVE_INFINITY,
                60 * (curve.endMinute() - curve.startMinute()));
    return new Followed(run.core(STEP_KELVIN), run.face(STEP_KELVIN));
  }

  /** What of a curve is hotter than a temperature, each piece by itself. */
  static HeatCurve above(HeatCurve curve, double kelvin) {
    List<HeatCurve.Segment> hot = new ArrayList<>();
    for (HeatCurve.Segment s : curve.segments()) {
      double from = s.fromKelvin();
      double to = s.toKelvin();
      if (Math.min(from, to) >= kelvin) {
        hot.add(s);
      } else if (Math.max(from, to) > kelvin) {
        double share = (Math.max(from, to) - kelvin) / Math.abs(to - from);
        hot.add(
            new HeatCurve.Segment(
                Math.max(from, kelvin), Math.max(to, kelvin), share * s.seconds()));
      }
    }
    return new HeatCurve(hot);
  }

  /** The highest temperature that a curve was above for so long, or half of a shorter one, K. */
  static double heldKelvin(HeatCurve curve, double atMostSeconds) {
    double seconds = Math.min(atMostSeconds, curve.seconds() / 2);
    double low = 0;
    double high = curve.peakKelvin();
    for (int i = 0; i < 40; i++) {
      double middle = (low + high) / 2;
      boolean held = above(curve, middle).seconds() >= seconds;
      low = held ? middle : low;
      high = held ? high : middle;
    }
    return low;
  }
}
