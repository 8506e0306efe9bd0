package seamsoak.property.hardening;

import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.MO;
import static seamsoak.steel.Element.W;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.unit.Temperature;

/**
 * Cementite with chromium in it dissolves as slowly as chromium moves, and keeps chromium as long
 * as it is left.
 *
 * <p>C = Ceq - h (Ceq - Ce) exp(-D t / r^2), D = D0 exp(-Q / (R T))
 *
 * <p>C carbon in the austenite, Ceq that of equilibrium, Ce that of the eutectoid, which is in
 * solution as soon as there is austenite; h how much of the carbide is held back, from none at 0.2
 * % of chromium, molybdenum and tungsten together to all at 0.8 %; r radius of the carbides of
 * stock as the mill anneals it; t the hold; wt%, K, s, m. Of the cementite left each wt% holds
 * chromium as five times the steel has.
 *
 * <p>D of chromium in austenite: A.W. Bowen, G.M. Leak, Metall. Trans. 1 (1970) 1695, from memory.
 * The rest is our judgement: with it 52100 has 0.70 % in solution after 15 min at 860 C, as its
 * measured start of martensite says, and all of it after 30 min at 1066 C.
 *
 * <p>Range: 750 to 1100 C, chromium to 2 %, spheroidized stock: finer carbide, as after
 * normalizing, dissolves sooner. Stated error: none at hand.
 */
public final class SlowCarbide extends PublishedFormula {
  private static final double GAS_CONSTANT = 8.314;

  /** Carbon of cementite, wt%. */
  private static final double CEMENTITE_PCT = 6.67;

  SlowCarbide(Coefficients k) {
    super(
        k,
        "carbon in solution beside carbide with chromium in it",
        "wt%",
        List.of(Correlation.celsiusRange(750, 1100), Correlation.range(CR, 0, 2)),
        "none at hand");
  }

  /** The hold that answers reckon with where none is known, s. */
  public double usualSeconds() {
    return 60 * k.get("usual minutes");
  }

  /**
   * Carbon in solution, wt%.
   *
   * @param equilibriumPct after a hold without end
   * @param eutectoidPct where the lines of ferrite and cementite cross
   */
  public double carbonPct(
      Composition steel,
      double equilibriumPct,
      double eutectoidPct,
      double celsius,
      double seconds) {
    double slow = Math.max(0, equilibriumPct - eutectoidPct) * held(steel);
    return slow == 0 ? equilibriumPct : equilibriumPct - slow * left(celsius, seconds);
  }

  private double held(Composition steel) {
    double formers = steel.percent(CR) + steel.percent(MO) + steel.percent(W);
    double share = (formers - k.get("held from")) / (k.get("held all from") - k.get("held from"));
    return Math.max(0, Math.min(1, share));
  }

  /** Share of the way to equilibrium that is left. */
  private double left(double celsius, double seconds) {
    double kelvin = celsius + Temperature.ZERO_CELSIUS;
    double diffusivity =
        k.get("diffusivity") * Math.exp(-k.get("activation energy") / (GAS_CONSTANT * kelvin));
    double radius = k.get("radius");
    return Math.exp(-diffusivity * seconds / (radius * radius));
  }

  /**
   * A steel's austenite with the chromium that is in solution.
   *
   * @param austenite with the carbon in solution and all chromium
   * @param cementiteCarbonPct carbon that is left in cementite, wt% of the steel
   */
  public Composition withoutBound(Composition austenite, double cementiteCarbonPct) {
    double chromium = austenite.percent(Element.CR);
    double cementite = Math.max(0, cementiteCarbonPct) / CEMENTITE_PCT;
    if (chromium == 0 || cementite == 0) {
      return austenite;
    }
    double bound = Math.min(1, k.get("chromium in it") * cementite);
    return austenite.with(Element.CR, chromium * (1 - bound) / (1 - cementite));
  }
}
