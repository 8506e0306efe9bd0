package seamsoak.state;

import java.util.Optional;
import seamsoak.billet.Shop;
import seamsoak.billet.Stack;
import seamsoak.heat.HeatCurve;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.SteelGrains;
import seamsoak.steel.Composition;
import seamsoak.unit.Temperature;

/** Austenite grains through heats: new ones form on the way up, and then they grow. */
public final class Grain {
  /**
   * Size of new grains, of those before them. Judgement: with it a coarse billet comes down to ASTM
   * 10 in about three cycles, as smiths find; the share lies between a half and a fifth.
   */
  public static final double NEW_SHARE = 0.35;

  private final Shop shop;
  private final SteelGrains grains;
  private final double changesKelvin;

  public Grain(Shop shop, Stack stack) {
    this.shop = shop;
    Composition body = lowAlloy(shop, stack).orElseGet(() -> shop.bodyAnalysis(stack));
    this.grains = new SteelGrains(shop.correlations(), body);
    this.changesKelvin = shop.correlations().lines(body).a1Celsius() + Temperature.ZERO_CELSIUS;
  }

  /** The mean of its low-alloy steels by thickness: the law of growth reaches no others. */
  private static Optional<Composition> lowAlloy(Shop shop, Stack stack) {
    Optional<Composition> mean = Optional.empty();
    double so = 0;
    for (int i = 0; i < stack.layers(); i++) {
      Composition next = shop.analysis(stack.steel(i));
      if (QuenchedSteel.reaches(next)) {
        double all = so + stack.thickness(i).metres();
        double before = so / all;
        mean = Optional.of(mean.map(m -> m.mix(next, before)).orElse(next));
        so = all;
      }
    }
    return mean;
  }

  /** Grain size after a curve, m; one that begins above the critical range makes no new grains. */
  public double after(HeatCurve curve, double beforeMetres) {
    if (curve.segments().isEmpty() || curve.peakKelvin() < changesKelvin) {
      return beforeMetres;
    }
    boolean passes = curve.segments().get(0).fromKelvin() < changesKelvin;
    HeatCurve.Corners corners = curve.corners();
    return grains.metresAfter(
        passes ? NEW_SHARE * beforeMetres : beforeMetres, corners.seconds(), corners.kelvin());
  }

  /** Grain number after a curve, whatever the grains were before. */
  public double number(HeatCurve curve) {
    return number(after(curve, 0));
  }

  public double number(double metres) {
    return shop.correlations().forging().grainNumber().number(metres);
  }

  public double metres(double number) {
    return shop.correlations().forging().grainNumber().interceptMetres(number);
  }
}
