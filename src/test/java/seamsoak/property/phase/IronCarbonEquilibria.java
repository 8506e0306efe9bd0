package seamsoak.property.phase;

import java.util.Map;
import seamsoak.numeric.Roots;
import seamsoak.property.Correlations;
import seamsoak.steel.Composition;

/**
 * Where phases of iron and carbon stand side by side, by equal chemical potentials of both.
 *
 * <pre>
 * austenite: muFe = Gfcc + RT ln(1-y) + L y^2,       L = -c1 RT/2
 * ferrite:   muFe = Gbcc + 3 RT ln(1-z) + L z^2,     z = y/3, L = -190 T
 * cementite: 3 muFe + muC = G(Fe3C)
 * </pre>
 */
final class IronCarbonEquilibria {
  private static final double R = 8.314463;
  private final MetalLattice iron = MetalLattice.of(Composition.of(Map.of()));
  private final AusteniteActivity austenite;
  private final GustafsonFerrite ferrite;

  IronCarbonEquilibria(Correlations correlations) {
    austenite = new AusteniteActivity(correlations.phases().activity(), iron);
    ferrite = correlations.phases().ferriteActivity();
  }

  /** ln of the activity in austenite. */
  double lnActivity(double celsius, double percent) {
    return austenite.at(celsius + 273.15).lnActivity(iron.ratio(percent));
  }

  /** Carbon of austenite beside ferrite, wt%. */
  double besideFerrite(double celsius) {
    double t = celsius + 273.15;
    return iron.percent(
        Roots.between(
            y -> ironInAustenite(t, y) - ironInFerrite(t, ferriteAsRich(t, y)), 1e-7, 0.09, 1e-14));
  }

  double ferriteBesideAustenite(double celsius) {
    double t = celsius + 273.15;
    return iron.percent(ferriteAsRich(t, iron.ratio(besideFerrite(celsius))));
  }

  /** Carbon of austenite beside cementite, wt%. */
  double besideCementite(double celsius) {
    double t = celsius + 273.15;
    double wanted = Unary.cementite(t) - Unary.graphite(t);
    return iron.percent(
        Roots.between(
            y -> 3 * ironInAustenite(t, y) + R * t * austenite.at(t).lnActivity(y) - wanted,
            1e-3,
            0.15,
            1e-14));
  }

  /** Carbon of austenite beside graphite, wt%. */
  double besideGraphite(double celsius) {
    return iron.percent(austenite.at(celsius + 273.15).ratioAt(0));
  }

  /** ln of the activity at which ferrite, with its carbon, stands beside cementite. */
  double lnActivityOfPearlite(double celsius) {
    double t = celsius + 273.15;
    double wanted = Unary.cementite(t) - Unary.graphite(t);
    return Roots.between(
        ln -> 3 * ironInFerrite(t, ferrite.ratioAt(t, ln)) + R * t * ln - wanted, -3, 3, 1e-12);
  }

  private double ferriteAsRich(double t, double y) {
    return ferrite.ratioAt(t, austenite.at(t).lnActivity(y));
  }

  /**
   * Gibbs energy of fcc iron, Dinsdale (1991), J/mol; without its magnetic term, which is below 1 J
   * above 700 C.
   */
  static double fccIron(double t) {
    return -236.7
        + 132.416 * t
        - 24.6643 * t * Math.log(t)
        - 3.75752e-3 * t * t
        - 5.8927e-8 * t * t * t
        + 77359 / t;
  }

  private double ironInAustenite(double t, double y) {
    double interaction = -0.5 * austenite.at(t).c1() * R * t;
    return fccIron(t) + R * t * Math.log(1 - y) + interaction * y * y;
  }

  private double ironInFerrite(double t, double y) {
    double z = y / 3;
    return Unary.bccIron(t) + 3 * R * t * Math.log(1 - z) + ferrite.interactionT() * t * z * z;
  }
}
