package seamsoak.property.forging;

import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.SI;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.source.Estimate;
import seamsoak.steel.Composition;

/**
 * What silicon, chromium and nickel make of scale: how freely carbon leaves through it, and how
 * fast it eats.
 *
 * <p>open = 1 - 0.8 c in still air, c = (Si + Cr - 0.5) / 1.5 from 0 to 1; 1 in moist air and
 * flame; nothing leaves above 1170 C, where oxide with silicon in it melts and seals the face, from
 * 1 % silicon on. Factor on the scaling constant: 10^-(1.0 (Si - 0.3) + 0.2 Cr + 3.2 (Ni - 30) /
 * 70), each part not below 0.
 *
 * <p>Open is the share of the way from the steel's own activity of carbon to that under scale, as
 * with covered faces; elements in wt%.
 *
 * <p>Our judgement, after four abstracts: a silicon-chromium steel lost 0.06 mm in 40 min at 860 C
 * in a furnace, a fifth of what a free face would; one of 1.8 % silicon lost nothing in 20 min at
 * 1280 C in wet air and most at 1150 C, and had under 6 um of scale after 20 min at 1000 C. Nickel
 * scales 6 to 10 um in an hour at 1150 C (from memory).
 *
 * <p>Range: 700 to 1300 C. Error: in the band, from hardly hindered to twice as much hindered, and
 * from no effect of silicon to twice the effect.
 */
public final class CompactScale extends PublishedFormula {
  CompactScale(Coefficients k) {
    super(
        k,
        "how scale hinders carbon, and its own growth, by silicon, chromium and nickel",
        "1",
        List.of(Correlation.celsiusRange(700, 1300)),
        "as wide as its band");
  }

  /** How freely carbon leaves a face that nothing covers, 0 to 1. */
  public Estimate open(Composition c, Atmosphere atmosphere, double celsius) {
    double compact =
        ramp(c.percent(SI) + c.percent(CR), k.get("compact from"), k.get("compact all from"));
    double hindered = k.get("hindered") * compact;
    double sealed =
        celsius > k.get("seals above")
            ? ramp(c.percent(SI), k.get("seals from"), k.get("seals all from"))
            : 0;
    Estimate free =
        switch (atmosphere) {
          case STILL_AIR -> band(1 - hindered, (1 - hindered) / 2, Math.min(1, 2 * (1 - hindered)));
          case MOIST_AIR, FLAME -> band(1, 1 - hindered / 2, 1);
          case UNSTATED -> band(1, (1 - hindered) / 2, 1);
        };
    return band(
        free.value() * (1 - sealed), free.low() * (1 - sealed), free.high() * (1 - sealed / 2));
  }

  /** What the scaling constant of steel is multiplied by, and by what at least and at most. */
  public Estimate scaling(Composition c) {
    double silicon = Math.max(0, c.percent(SI) - k.get("silicon from"));
    double others =
        k.get("chromium") * c.percent(CR)
            + k.get("nickel")
                * Math.max(0, c.percent(NI) - k.get("nickel from"))
                / (100 - k.get("nickel from"));
    double value = Math.pow(10, -(k.get("silicon") * silicon + others));
    return band(
        value,
        k.get("least") * Math.pow(10, -(2 * k.get("silicon") * silicon + others)),
        Math.pow(10, -others / 2));
  }

  private Estimate band(double value, double low, double high) {
    return new Estimate(value, low, high, k.source(), List.of());
  }

  private static double ramp(double x, double from, double to) {
    return Math.max(0, Math.min(1, (x - from) / (to - from)));
  }
}
