package seamsoak.single;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import seamsoak.billet.Exposure;
import seamsoak.billet.Shop;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Strip;
import seamsoak.heat.HeatCurve;
import seamsoak.property.forging.Atmosphere;
import seamsoak.steel.Steel;
import seamsoak.unit.Temperature;

/**
 * What one heat does to the face of a thick piece.
 *
 * @param steel its name
 * @param temperatureC of the hold; the highest of a curve
 * @param minutes of the hold or the curve
 * @param edge open or covered
 * @param atmosphere it is held in
 * @param startCarbonPct before
 * @param metalLossMm metal that scale takes
 * @param surfaceCarbonPct carbon at the face that is left
 * @param ferriteRimMm depth without carbide and with more ferrite than austenite at heat
 * @param depthMm depth below the metal left to three shares of the starting carbon
 * @param band what these may be
 * @param massErrorRelative carbon not accounted for, relative
 * @param profile carbon against depth below the metal left
 */
public record Decarburization(
    String steel,
    double temperatureC,
    double minutes,
    String edge,
    String atmosphere,
    double startCarbonPct,
    double metalLossMm,
    double surfaceCarbonPct,
    double ferriteRimMm,
    Depth depthMm,
    Band band,
    double massErrorRelative,
    List<Point> profile) {

  /** Depths to 50, 90 and 98 % of the starting carbon. */
  public record Depth(double to50Pct, double to90Pct, double to98Pct) {}

  /**
   * From the least to the most: heat 15 C and mobility 15 % off, scale of steel and of iron, more
   * or less compact, CO under it at 1 atm or, where it cracks, a tenth of that.
   */
  public record Band(
      double metalLossMmLow,
      double metalLossMmHigh,
      double ferriteRimMmLow,
      double ferriteRimMmHigh,
      double to90PctLow,
      double to90PctHigh) {}

  /** A point of the profile. */
  public record Point(double depthMm, double carbonPct) {}

  /** What its bands are made of, in words. */
  public static String bands() {
    return FaceRun.bands();
  }

  /** Of a piece held at one temperature from the start. */
  public static Decarburization of(
      Shop shop,
      Steel steel,
      double kelvin,
      double seconds,
      Exposure exposure,
      Atmosphere atmosphere) {
    return of(shop, steel, HeatCurve.hold(kelvin, seconds), exposure, atmosphere);
  }

  /** Of a piece whose face goes along a curve. */
  public static Decarburization of(
      Shop shop, Steel steel, HeatCurve face, Exposure exposure, Atmosphere atmosphere) {
    Function<FaceRun.End, FaceRun> run =
        end -> FaceRun.of(shop, steel, face, exposure, atmosphere, end);
    FaceRun usual = run.apply(FaceRun.End.LIKELY);
    FaceRun least = run.apply(FaceRun.End.LEAST);
    FaceRun most = run.apply(FaceRun.End.MOST);
    Strip after = usual.after();
    List<Point> profile = new ArrayList<>();
    double x = 0;
    for (int i = 0; i < after.cells(); i++) {
      profile.add(new Point((x + 0.5 * after.metres(i)) * 1e3, after.percent(i)));
      x += after.metres(i);
    }
    Metal metal = after.metal(0);
    return new Decarburization(
        steel.id(),
        face.peakKelvin() - Temperature.ZERO_CELSIUS,
        face.seconds() / 60,
        exposure.name().toLowerCase(Locale.ROOT),
        atmosphere.name().toLowerCase(Locale.ROOT).replace('_', '-'),
        metal.percent(metal.startRatio()),
        usual.metalLossMm(),
        usual.surfacePct(),
        usual.rimMm(),
        new Depth(usual.depthMm(0.50), usual.depthMm(0.90), usual.depthMm(0.98)),
        new Band(
            low(FaceRun::metalLossMm, usual, least, most),
            high(FaceRun::metalLossMm, usual, least, most),
            low(FaceRun::rimMm, usual, least, most),
            high(FaceRun::rimMm, usual, least, most),
            low(r -> r.depthMm(0.90), usual, least, most),
            high(r -> r.depthMm(0.90), usual, least, most)),
        usual.massErrorRelative(),
        profile);
  }

  private static double low(ToDoubleFunction<FaceRun> what, FaceRun... runs) {
    return Stream.of(runs).mapToDouble(what).min().orElseThrow();
  }

  private static double high(ToDoubleFunction<FaceRun> what, FaceRun... runs) {
    return Stream.of(runs).mapToDouble(what).max().orElseThrow();
  }
}
