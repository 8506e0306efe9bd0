package seamsoak.state;

import java.util.List;
import java.util.Optional;
import seamsoak.billet.Billet;
import seamsoak.billet.Shop;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Metal;
import seamsoak.steel.Steel;

/**
 * How hot a billet may get: for each limit the lowest among its steels.
 *
 * @param fullAusteniteCelsius above this the whole body is austenite, with the carbon it has now
 * @param forgingCelsius highest forging temperature
 * @param burningCelsius where the first steel may burn
 * @param refusalCelsius above this nothing is advised
 */
public record Limits(
    double fullAusteniteCelsius,
    double forgingCelsius,
    double burningCelsius,
    double refusalCelsius) {

  public static Limits of(Billet billet, Workpiece piece, Shop shop) {
    double forging = Double.POSITIVE_INFINITY;
    double burning = Double.POSITIVE_INFINITY;
    double refusal = Double.POSITIVE_INFINITY;
    double full = 0;
    for (SteelLimits s : SteelLimits.of(billet, piece, shop)) {
      forging = Math.min(forging, s.limits().highestForging().value());
      burning = Math.min(burning, s.limits().burningCelsius());
      refusal = Math.min(refusal, s.limits().refusalCelsius());
      full = Math.max(full, fullAustenite(shop.metal(s.steel()), carbonPct(s.steel(), piece)));
    }
    return new Limits(full, forging, burning, refusal);
  }

  /** Temperature above which a steel is all austenite with that much carbon, degC. */
  static double fullAustenite(Metal metal, double carbonPct) {
    return metal
        .law()
        .phases()
        .filter(lines -> !lines.alwaysAustenite())
        .map(lines -> lines.fullAusteniteCelsius(carbonPct))
        .orElse(0.0);
  }

  /** Carbon of a steel as it is in a piece now, wt%. */
  public static double carbonPct(Steel steel, Workpiece piece) {
    List<StageReport.LayerCarbon> layers = StageReport.layers(piece);
    Optional<StageReport.LayerCarbon> own =
        layers.stream().filter(l -> l.steel().equals(steel.id())).findFirst();
    return own.orElse(layers.get(0)).meanPct();
  }
}
