package seamsoak.state;

import java.util.List;
import java.util.Optional;
import seamsoak.billet.Billet;
import seamsoak.billet.Shop;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Metal;
import seamsoak.property.forging.ForgingLimits;
import seamsoak.steel.Steel;

/**
 * How hot a billet may get: for each limit the lowest among its steels.
 *
 * @param fullAusteniteCelsius above this the whole body is austenite, with the carbon it has now
 * @param forgingCelsius highest forging temperature
 * @param burningCelsius where the first steel burns
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
    for (Steel steel : billet.stack().steels().stream().distinct().toList()) {
      ForgingLimits l =
          shop.correlations()
              .forging()
              .rule()
              .limits(shop.analysis(steel), steel.heatTreatment().forgeStartC());
      forging = Math.min(forging, l.highestForging().value());
      burning = Math.min(burning, l.burningCelsius());
      refusal = Math.min(refusal, l.refusalCelsius());
      full = Math.max(full, fullAustenite(shop.metal(steel), carbonPct(steel, piece)));
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
