package seamsoak.single;

import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Exposure;
import seamsoak.billet.Shop;
import seamsoak.carbon.Grid;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Strip;
import seamsoak.carbon.StripSolver;
import seamsoak.carbon.Surroundings;
import seamsoak.heat.HeatCurve;
import seamsoak.property.forging.Atmosphere;
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

  /** Under scale that cracks, atm; judgement. */
  private static final double CRACKED_ATM = 0.1;

  /** Which end of the band. */
  enum End {
    /** Where least is lost of carbon, and most of metal. */
    LEAST,
    /** As likely as not. */
    LIKELY,
    /** Where most is lost of carbon, and least of metal. */
    MOST;

    /** A number's own end, which is where it makes carbon go so. */
    double of(Estimate e) {
      return this == LEAST ? e.low() : this == MOST ? e.high() : e.value();
    }

    /** The same of what takes metal, and with it carbon out of the way. */
    double against(Estimate e) {
      return this == LEAST ? e.high() : this == MOST ? e.low() : e.value();
    }

    /** So much to that side. */
    double off(double sigma) {
      return (ordinal() - LIKELY.ordinal()) * sigma;
    }
  }

  /** What the bands are made of, in words. */
  static String bands() {
    return String.format(
        Locale.ROOT,
        "%.0f C and %.0f %% of the speed of carbon either way, a covered face open by %.0f %% to all,"
            + " CO under the scale at 1 or %.1f atm, scale of steel or of iron",
        Assumptions.KELVIN_SIGMA,
        100 * Assumptions.MOBILITY_SIGMA,
        100 * Assumptions.LEAST_COVERED,
        CRACKED_ATM);
  }

  static FaceRun of(
      Shop usual,
      Steel steel,
      HeatCurve stated,
      Exposure exposure,
      Atmosphere atmosphere,
      End end) {
    Forging f = usual.correlations().forging();
    Shop shop = end == End.LIKELY ? usual : at(usual, end);
    double off = end.off(Assumptions.KELVIN_SIGMA);
    HeatCurve face = stated.plus(off);
    Metal metal = shop.metal(steel);
    DoubleUnaryOperator activity =
        kelvin -> {
          double celsius = kelvin - Temperature.ZERO_CELSIUS;
          double open = end.of(f.compactScale().open(steel.analysis(), atmosphere, celsius));
          double scaled = shop.underScale(kelvin);
          double own = metal.law().at(kelvin).activity(metal.startRatio());
          return scaled + (1 - open) * Math.max(0, own - scaled);
        };
    // scale that takes much metal leaves less of what has lost its carbon
    double factor = end.against(f.compactScale().scaling(steel.analysis()));
    DoubleUnaryOperator law =
        end == End.LEAST
            ? f.ironScaling()::squareMetresPerSecond
            : f.steelScaling()::squareMetresPerSecond;
    Surroundings around =
        new Surroundings(activity, kelvin -> factor * law.applyAsDouble(kelvin - off));
    double thick = depthMetres(metal, face) + Math.sqrt(2 * 1e-10 * face.seconds());
    Strip start = Strip.of(metal, thick, end == End.LIKELY ? FINE : OF_BANDS);
    StripSolver.Advanced done =
        new StripSolver(around, shop.resolution().relativeTolerance())
            .advance(start, face, shop.edge(exposure));
    return new FaceRun(
        done.metalLost() * 1e3, done.strip(), face.peakKelvin(), done.massErrorRelative());
  }

  private static Shop at(Shop shop, End end) {
    Assumptions a = shop.assumptions();
    return new Shop(
        shop.correlations(),
        a.atFace(
            1 + end.off(Assumptions.MOBILITY_SIGMA),
            end == End.LEAST ? Assumptions.LEAST_COVERED : 1,
            end == End.MOST ? CRACKED_ATM : 1),
        shop.resolution());
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
