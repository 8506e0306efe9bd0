package seamsoak.single;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import seamsoak.billet.Exposure;
import seamsoak.billet.Shop;
import seamsoak.carbon.Grid;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Strip;
import seamsoak.carbon.StripSolver;
import seamsoak.heat.HeatCurve;
import seamsoak.property.phase.PhaseLines;
import seamsoak.state.Skin;
import seamsoak.steel.Steel;
import seamsoak.unit.Temperature;

/**
 * What one heat does to the face of a thick piece.
 *
 * @param steel its name
 * @param temperatureC of the hold; the highest of a curve
 * @param minutes of the hold or the curve
 * @param edge open or covered
 * @param startCarbonPct before
 * @param metalLossMm metal that scale takes
 * @param surfaceCarbonPct carbon at the face that is left
 * @param ferriteRimMm depth without austenite at heat, 0 where there is none
 * @param depthMm depth below the metal left to three shares of the starting carbon
 * @param massErrorRelative carbon not accounted for, relative
 * @param profile carbon against depth below the metal left
 */
public record Decarburization(
    String steel,
    double temperatureC,
    double minutes,
    String edge,
    double startCarbonPct,
    double metalLossMm,
    double surfaceCarbonPct,
    double ferriteRimMm,
    Depth depthMm,
    double massErrorRelative,
    List<Point> profile) {

  /** Depths to 50, 90 and 98 % of the starting carbon. */
  public record Depth(double to50Pct, double to90Pct, double to98Pct) {}

  /** A point of the profile. */
  public record Point(double depthMm, double carbonPct) {}

  /** The piece reaches this many diffusion lengths deep, so that its middle does not matter. */
  private static final double DEEP = 10;

  private static final double LEAST_METRES = 0.2e-3;
  private static final double FINEST = 3e-4;
  private static final double GROWTH = 1.08;

  /** Fastest carbon moves at that temperature in any phase that matters, m2/s, for the depth. */
  private static double depthMetres(Metal metal, double kelvin, double seconds) {
    double rich = metal.law().at(kelvin).potentialSlope(metal.startRatio());
    double poor = metal.law().at(kelvin).potentialSlope(0.9 * metal.startRatio());
    double d = Math.max(rich, Math.max(poor, metal.law().at(kelvin).potentialSlope(1e-9)));
    return Math.max(LEAST_METRES, DEEP * Math.sqrt(d * seconds));
  }

  /** Of a piece held at one temperature from the start. */
  public static Decarburization of(
      Shop shop, Steel steel, double kelvin, double seconds, Exposure exposure) {
    return of(shop, steel, HeatCurve.hold(kelvin, seconds), exposure);
  }

  /** Of a piece whose face goes along a curve. */
  public static Decarburization of(Shop shop, Steel steel, HeatCurve face, Exposure exposure) {
    double kelvin = face.peakKelvin();
    double seconds = face.seconds();
    Metal metal = shop.metal(steel);
    double scale = Math.sqrt(2 * 1e-10 * seconds);
    double thick = depthMetres(metal, kelvin, seconds) + scale;
    Strip start = Strip.of(metal, thick, new Grid(FINEST, GROWTH, false));
    StripSolver.Advanced end = shop.solver().advance(start, face, shop.edge(exposure));
    Strip after = end.strip();
    List<Point> profile = new ArrayList<>();
    double x = 0;
    for (int i = 0; i < after.cells(); i++) {
      profile.add(new Point((x + 0.5 * after.metres(i)) * 1e3, after.percent(i)));
      x += after.metres(i);
    }
    return new Decarburization(
        steel.id(),
        kelvin - Temperature.ZERO_CELSIUS,
        seconds / 60,
        exposure.name().toLowerCase(Locale.ROOT),
        metal.percent(metal.startRatio()),
        end.metalLost() * 1e3,
        surface(after),
        ferriteRim(after, kelvin) * 1e3,
        new Depth(
            Skin.depth(after, 0.50) * 1e3,
            Skin.depth(after, 0.90) * 1e3,
            Skin.depth(after, 0.98) * 1e3),
        end.massErrorRelative(),
        profile);
  }

  /** Straight through the two outermost cells to the face. */
  private static double surface(Strip s) {
    double gap = 0.5 * (s.metres(0) + s.metres(1));
    double slope = (s.percent(1) - s.percent(0)) / gap;
    return Math.max(0, s.percent(0) - slope * 0.5 * s.metres(0));
  }

  /** Depth over which there is more ferrite than austenite at heat. */
  private static double ferriteRim(Strip s, double kelvin) {
    PhaseLines lines = s.metal(0).law().phases().orElseThrow();
    double celsius = kelvin - Temperature.ZERO_CELSIUS;
    if (lines.alwaysAustenite() || celsius < lines.a1Celsius()) {
      return 0;
    }
    double austenite = s.metal(0).lattice().ratio(lines.austeniteBesideFerritePct(celsius));
    double depth = 0;
    for (int i = 0; i < s.cells() && s.ratio(i) < 0.5 * austenite; i++) {
      depth += s.metres(i);
    }
    return depth;
  }
}
