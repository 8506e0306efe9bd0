package seamsoak.heatlog;

import java.util.List;
import seamsoak.heat.HeatCurve;
import seamsoak.unit.Temperature;

/**
 * What a heat was worth: the minutes at the planned temperature that would have moved as much
 * carbon.
 *
 * @param minutes as read
 * @param low with all that may have made the reading too high
 * @param high with all that may have made it too low
 * @param gapMinutes how many of the minutes are those of gaps, at their cooler ends
 * @param doubts what the band is made of, each by itself
 */
public record Credit(
    double minutes, double low, double high, double gapMinutes, List<Doubt> doubts) {
  public Credit {
    doubts = List.copyOf(doubts);
  }

  /** Where a doubt comes from. */
  public enum Source {
    /** The wire, its past, its tip, the logger. */
    THERMOMETER,
    /** Nobody knows what happened in gaps: nothing that counts, or the hotter end of each. */
    GAPS,
    /** How fast the piece follows the air. */
    HEATING
  }

  /**
   * One doubt.
   *
   * @param low what the heat was worth at worst
   * @param high at best
   */
  public record Doubt(Source source, double low, double high) {}

  static Credit of(double minutes, double gapMinutes, List<Doubt> doubts) {
    double below = 0;
    double above = 0;
    for (Doubt d : doubts) {
      below = Math.hypot(below, Math.max(0, minutes - d.low()));
      above = Math.hypot(above, Math.max(0, d.high() - minutes));
    }
    return new Credit(minutes, Math.max(0, minutes - below), minutes + above, gapMinutes, doubts);
  }

  /** Minutes at one temperature that move as much carbon as a curve. */
  static double minutes(HeatCurve curve, CarbonRate rate, double plannedC) {
    double sum = 0;
    for (HeatCurve.Segment s : curve.segments()) {
      sum += s.seconds() * rate.mean(celsius(s.fromKelvin()), celsius(s.toKelvin()));
    }
    return sum / 60 / rate.at(plannedC);
  }

  /** Minutes of it that fall into gaps. */
  static double minutesInGaps(
      HeatCurve curve, double startMinute, List<LogCurve.Gap> gaps, CarbonRate rate, double at) {
    double sum = 0;
    for (LogCurve.Gap gap : gaps) {
      double from = 60 * (gap.fromMinute() - startMinute);
      double to = 60 * (gap.toMinute() - startMinute);
      double t = 0;
      for (HeatCurve.Segment s : curve.segments()) {
        double a = Math.max(from, t) - t;
        double b = Math.min(to, t + s.seconds()) - t;
        if (b > a) {
          sum += (b - a) * rate.mean(celsius(s.kelvinAt(a)), celsius(s.kelvinAt(b)));
        }
        t += s.seconds();
      }
    }
    return sum / 60 / rate.at(at);
  }

  private static double celsius(double kelvin) {
    return kelvin - Temperature.ZERO_CELSIUS;
  }
}
