package seamsoak.single;

import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Exposure;
import seamsoak.billet.Shop;
import seamsoak.carbon.Edge;
import seamsoak.carbon.Grid;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Strip;
import seamsoak.carbon.StripSolver;
import seamsoak.carbon.Surroundings;
import seamsoak.heat.HeatCurve;
import seamsoak.property.forging.Atmosphere;
import seamsoak.property.forging.CompactScale;
import seamsoak.property.forging.Forging;
import seamsoak.property.phase.PhaseLines;
import seamsoak.source.Estimate;
import seamsoak.state.Skin;
import seamsoak.steel.Steel;
import seamsoak.unit.Temperature;

/**
 * One walk of a face through a heat, under one set of assumptions.
 *
 * @param metalLossMm metal that scale took
 * @param after the metal below it
 * @param kelvin the hottest it got
 * @param massErrorRelative carbon not accounted for, relative
 */
record FaceRun(double metalLossMm, Strip after, double kelvin, double massErrorRelative) {
  /** The piece reaches this many diffusion lengths deep, so that its middle does not matter. */
  private static final double DEEP = 10;

  private static final double LEAST_METRES = 0.2e-3;
  private static final Grid FINE = new Grid(3e-4, 1.08, false);
  private static final Grid OF_BANDS = new Grid(1e-3, 1.15, false);

  /** What a temperature in the fire and the speed of carbon may be off; judgement, as in bands. */
  private static final double KELVIN_OFF = 15;

  private static final double MOBILITY_OFF = 0.15;

  /** Under scale that cracks, atm; judgement. */
  private static final double CRACKED_ATM = 0.1;

  /** How open a covered face may be; judgement, as in bands. */
  private static final double COVERED_LEAST = 0.3;

  /** What the bands are made of, in words. */
  static String bands() {
    return String.format(
        Locale.ROOT,
        "%.0f C and %.0f %% of the speed of carbon either way, a covered face open by %.0f %% to all,"
            + " CO under the scale at 1 or %.1f atm, scale of steel or of iron",
        KELVIN_OFF,
        100 * MOBILITY_OFF,
        100 * COVERED_LEAST,
        CRACKED_ATM);
  }

  /** As likely as not. */
  static FaceRun usual(
      Shop shop, Steel steel, HeatCurve face, Exposure exposure, Atmosphere atmosphere) {
    Forging f = shop.correlations().forging();
    double factor = f.compactScale().scaling(steel.analysis()).value();
    return run(
        shop,
        steel,
        face,
        exposure,
        open(f.compactScale(), steel, atmosphere, Estimate::value),
        k -> factor * f.steelScaling().squareMetresPerSecond(k),
        FINE);
  }

  /** Where least is lost of carbon, and most of metal. */
  static FaceRun least(
      Shop shop, Steel steel, HeatCurve face, Exposure exposure, Atmosphere atmosphere) {
    Forging f = shop.correlations().forging();
    double factor = f.compactScale().scaling(steel.analysis()).high();
    return run(
        with(shop, 1 - MOBILITY_OFF, COVERED_LEAST, 1),
        steel,
        face.plus(-KELVIN_OFF),
        exposure,
        open(f.compactScale(), steel, atmosphere, Estimate::low),
        k -> factor * f.ironScaling().squareMetresPerSecond(k + KELVIN_OFF),
        OF_BANDS);
  }

  /** Where most is lost of carbon, and least of metal. */
  static FaceRun most(
      Shop shop, Steel steel, HeatCurve face, Exposure exposure, Atmosphere atmosphere) {
    Forging f = shop.correlations().forging();
    double factor = f.compactScale().scaling(steel.analysis()).low();
    return run(
        with(shop, 1 + MOBILITY_OFF, 1, CRACKED_ATM),
        steel,
        face.plus(KELVIN_OFF),
        exposure,
        open(f.compactScale(), steel, atmosphere, Estimate::high),
        k -> factor * f.steelScaling().squareMetresPerSecond(k - KELVIN_OFF),
        OF_BANDS);
  }

  private static Shop with(Shop shop, double mobility, double covered, double atm) {
    Assumptions a = shop.assumptions();
    return new Shop(
        shop.correlations(),
        new Assumptions(
            mobility * a.mobilityFactor(),
            a.kelvinOff(),
            a.timeFactor(),
            a.grindingMetresOff(),
            covered,
            a.broadMetres(),
            a.ferritePlace(),
            a.carbonPlace(),
            a.ironShare(),
            atm * a.carbonMonoxideAtm()),
        shop.resolution());
  }

  private static DoubleUnaryOperator open(
      CompactScale scale, Steel steel, Atmosphere atmosphere, ToDoubleFunction<Estimate> of) {
    return kelvin ->
        of.applyAsDouble(
            scale.open(steel.analysis(), atmosphere, kelvin - Temperature.ZERO_CELSIUS));
  }

  private static FaceRun run(
      Shop shop,
      Steel steel,
      HeatCurve face,
      Exposure exposure,
      DoubleUnaryOperator open,
      DoubleUnaryOperator scaling,
      Grid grid) {
    Metal metal = shop.metal(steel);
    double thick = depthMetres(metal, face) + Math.sqrt(2 * 1e-10 * face.seconds());
    DoubleUnaryOperator activity =
        kelvin -> {
          double scaled = shop.underScale(kelvin);
          double own = metal.law().at(kelvin).activity(metal.startRatio());
          return scaled + (1 - open.applyAsDouble(kelvin)) * Math.max(0, own - scaled);
        };
    Edge edge = shop.edge(exposure);
    StripSolver.Advanced end =
        new StripSolver(new Surroundings(activity, scaling), shop.resolution().relativeTolerance())
            .advance(Strip.of(metal, thick, grid), face, edge);
    return new FaceRun(
        end.metalLost() * 1e3, end.strip(), face.peakKelvin(), end.massErrorRelative());
  }

  /** As deep as carbon moves at its fastest in any phase that matters, m. */
  private static double depthMetres(Metal metal, HeatCurve face) {
    double kelvin = face.peakKelvin();
    double rich = metal.law().at(kelvin).potentialSlope(metal.startRatio());
    double poor = metal.law().at(kelvin).potentialSlope(0.9 * metal.startRatio());
    double d = Math.max(rich, Math.max(poor, metal.law().at(kelvin).potentialSlope(1e-9)));
    return Math.max(LEAST_METRES, DEEP * Math.sqrt(d * face.seconds()));
  }

  /** Carbon at the face, straight through the two outermost cells, wt%. */
  double surfacePct() {
    double gap = 0.5 * (after.metres(0) + after.metres(1));
    double slope = (after.percent(1) - after.percent(0)) / gap;
    return Math.max(0, after.percent(0) - slope * 0.5 * after.metres(0));
  }

  /** Depth below the metal left to a share of the starting carbon, mm. */
  double depthMm(double share) {
    return Skin.depth(after, share) * 1e3;
  }

  /**
   * Depth over which there is more ferrite than austenite at heat; below A1 where there is no more
   * carbide beside the ferrite, mm.
   */
  double rimMm() {
    Metal metal = after.metal(0);
    PhaseLines lines = metal.law().phases().orElseThrow();
    double celsius = kelvin - Temperature.ZERO_CELSIUS;
    if (lines.alwaysAustenite()) {
      return 0;
    }
    double below =
        celsius < lines.a1Celsius()
            ? metal.startRatio()
            : metal.lattice().ratio(lines.austeniteBesideFerritePct(celsius));
    double depth = 0;
    for (int i = 0; i < after.cells() && after.ratio(i) < 0.5 * below; i++) {
      depth += after.metres(i);
    }
    // metal that is ferrite for the most part all the way down has no rim
    return metal.startRatio() < 0.5 * below ? 0 : depth * 1e3;
  }
}
