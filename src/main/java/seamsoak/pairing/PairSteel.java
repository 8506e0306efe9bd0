package seamsoak.pairing;

import java.util.List;
import java.util.Optional;
import seamsoak.billet.Shop;
import seamsoak.carbon.CarbonInSteel;
import seamsoak.carbon.Metal;
import seamsoak.property.Correlations;
import seamsoak.property.forging.ForgingLimits;
import seamsoak.property.phase.PhaseLines;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.steel.Steel;
import seamsoak.steel.TemperatureRange;

/**
 * One steel with what every check asks of it, worked out once.
 *
 * @param steel as the table or the smith has it
 * @param metal how carbon behaves in it
 * @param lines its phases
 * @param limits how hot it may become
 * @param forging range to forge in, C
 * @param welding range to forge-weld in, C
 * @param hardening range to harden from, C; empty when it does not harden
 */
public record PairSteel(
    Steel steel,
    Metal metal,
    PhaseLines lines,
    ForgingLimits limits,
    TemperatureRange forging,
    TemperatureRange welding,
    Optional<TemperatureRange> hardening) {

  /** Where forging leaves off when no sheet says, C; judgement. */
  private static final double USUAL_STOP_CELSIUS = Shop.DULL_CELSIUS;

  public static PairSteel of(Correlations k, Steel steel) {
    Composition c = steel.analysis();
    CarbonInSteel law = new CarbonInSteel(k, c, 1);
    PhaseLines lines = law.phases().orElseThrow();
    ForgingLimits limits = k.forging().rule().limits(c, steel.heatTreatment().forgeStartC());
    double start = limits.highestForging().value();
    double stop = steel.heatTreatment().forgeStopC().orElse(USUAL_STOP_CELSIUS);
    return new PairSteel(
        steel,
        new Metal(steel.id(), law, law.lattice(), law.lattice().ratio(c.carbon())),
        lines,
        limits,
        new TemperatureRange(Math.min(start, stop), start),
        new TemperatureRange(
            k.mechanics().welding().lowestCelsius(limits), limits.refusalCelsius()),
        k.hardening().window().of(steel, lines));
  }

  public String id() {
    return steel.id();
  }

  public Composition analysis() {
    return steel.analysis();
  }

  double percent(Element e) {
    return analysis().percent(e);
  }

  boolean hardens() {
    return hardening.isPresent();
  }

  /**
   * What is in solution after a long hold at a hardening heat; the rest stays carbide. At a heat
   * below A1, as another steel may ask for, all of it.
   */
  public Composition austenite(Correlations k, double celsius) {
    return k.austenite(lines, analysis().carbon(), celsius).orElse(analysis());
  }

  /** The heat at which two steels that harden are quenched together, C. */
  static double hardenCelsius(Correlations k, PairSteel a, PairSteel b) {
    return k.hardening()
        .window()
        .heatCelsius(List.of(a.hardening.orElseThrow(), b.hardening.orElseThrow()));
  }

  /** Whether the two are one and the same metal, whatever they are called. */
  boolean sameAs(PairSteel other) {
    return steel.equals(other.steel)
        || analysis().equals(other.analysis())
            && steel.make().equals(other.steel.make())
            && steel.heatTreatment().equals(other.steel.heatTreatment());
  }
}
