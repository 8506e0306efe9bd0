package seamsoak.schedule;

import java.util.Locale;
import java.util.Optional;
import seamsoak.billet.Shop;
import seamsoak.billet.Stack;
import seamsoak.heat.HeatCurve;
import seamsoak.steel.Composition;

/** Austenite grains through heats: new ones form on the way up, and then they grow. */
final class Grain {
  /**
   * Size of new grains, of those before them. Judgement: with it a coarse billet comes down to ASTM
   * 10 in about three cycles, as smiths find; the share lies between a half and a fifth.
   */
  static final double NEW_SHARE = 0.35;

  private final Shop shop;
  private final Composition body;
  private final double changesKelvin;

  Grain(Shop shop, Stack stack) {
    this.shop = shop;
    this.body = lowAlloy(shop, stack).orElseGet(() -> shop.bodyAnalysis(stack));
    this.changesKelvin = shop.correlations().lines(body).a1Celsius() + 273.15;
  }

  /** The mean of its low-alloy steels by thickness: the law of growth reaches no others. */
  private static Optional<Composition> lowAlloy(Shop shop, Stack stack) {
    Optional<Composition> mean = Optional.empty();
    double so = 0;
    for (int i = 0; i < stack.layers(); i++) {
      Composition next = shop.analysis(stack.steel(i));
      if (SteelNow.lowAlloy(next)) {
        double all = so + stack.thickness(i).metres();
        double before = so / all;
        mean = Optional.of(mean.map(m -> m.mix(next, before)).orElse(next));
        so = all;
      }
    }
    return mean;
  }

  /** How it is reckoned, in words. */
  static String words() {
    return String.format(
        Locale.ROOT,
        "grains: each pass through the critical range makes new ones of %.2f times the size",
        NEW_SHARE);
  }

  /** Grain size after a curve, m; one that begins above the critical range makes no new grains. */
  double after(HeatCurve curve, double beforeMetres) {
    if (curve.segments().isEmpty() || curve.peakKelvin() < changesKelvin) {
      return beforeMetres;
    }
    boolean passes = curve.segments().get(0).fromKelvin() < changesKelvin;
    int n = curve.segments().size();
    double[] seconds = new double[2 * n];
    double[] kelvin = new double[2 * n];
    double t = 0;
    for (int i = 0; i < n; i++) {
      HeatCurve.Segment s = curve.segments().get(i);
      seconds[2 * i] = t;
      kelvin[2 * i] = s.fromKelvin();
      t += s.seconds();
      seconds[2 * i + 1] = t;
      kelvin[2 * i + 1] = s.toKelvin();
    }
    return shop.correlations()
        .forging()
        .grainGrowth()
        .metresAfter(body, passes ? NEW_SHARE * beforeMetres : beforeMetres, seconds, kelvin);
  }

  /** Grain number after a curve, whatever the grains were before. */
  double number(HeatCurve curve) {
    return number(after(curve, 0));
  }

  double number(double metres) {
    return shop.correlations().forging().grainNumber().number(metres);
  }

  double metres(double number) {
    return shop.correlations().forging().grainNumber().interceptMetres(number);
  }
}
