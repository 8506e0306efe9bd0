package seamsoak.support;

import seamsoak.carbon.Strip;

/** Reads depths off a profile as a person with a ruler would. */
public final class Depths {
  private Depths() {}

  /** Depth below the near edge at which carbon first reaches a weight percent, m. */
  public static double to(Strip strip, double percent) {
    double x = 0;
    double lastX = 0;
    double last = strip.percent(0);
    for (int i = 0; i < strip.cells(); i++) {
      double middle = x + strip.metres(i) / 2;
      double here = strip.percent(i);
      if (here >= percent) {
        return i == 0 ? 0 : lastX + (middle - lastX) * (percent - last) / (here - last);
      }
      lastX = middle;
      last = here;
      x += strip.metres(i);
    }
    throw new IllegalArgumentException("nowhere that much carbon");
  }

  /** Thickness with less carbon than the level's upper end, its front taken from the mixed cell. */
  public static double rim(Strip strip, double levelLow, double levelHigh) {
    double x = 0;
    for (int i = 0; i < strip.cells() && strip.ratio(i) < levelHigh; i++) {
      double share = Math.min(1, (levelHigh - strip.ratio(i)) / (levelHigh - levelLow));
      x += share * strip.metres(i);
    }
    return x;
  }

  /** Carbon at a depth below the near edge, wt%, straight between the cells' middles. */
  public static double percentAt(Strip strip, double metres) {
    double x = 0;
    double lastX = 0;
    double last = strip.percent(0);
    for (int i = 0; i < strip.cells(); i++) {
      double middle = x + strip.metres(i) / 2;
      double here = strip.percent(i);
      if (middle >= metres) {
        return i == 0 ? here : last + (here - last) * (metres - lastX) / (middle - lastX);
      }
      lastX = middle;
      last = here;
      x += strip.metres(i);
    }
    return last;
  }
}
