package seamsoak.pairing;

import java.util.List;
import java.util.Optional;
import seamsoak.heat.Section;
import seamsoak.property.Correlations;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.hardening.Hardening;
import seamsoak.property.hardening.QuenchRule;
import seamsoak.property.hardening.Quenchant;
import seamsoak.steel.Composition;

/**
 * A steel as it is when it is quenched.
 *
 * @param steel which
 * @param austenite what is in solution, with refined grain
 */
public record Hardened(Correlations k, PairSteel steel, QuenchedSteel austenite) {
  /** Beyond this the factors of alloying have left their range: more is told as more than this. */
  private static final double MOST_METRES = 0.5;

  /** Thinner than a blade's edge; keeps ratios finite where a formula is far outside its range. */
  private static final double LEAST_METRES = 1e-4;

  /** From a heat, or from the coolest of its own where that is hotter. */
  static Hardened from(Correlations k, PairSteel steel, double celsius) {
    double from = Math.max(celsius, steel.hardening().orElseThrow().lowC());
    return new Hardened(k, steel, refined(k, steel.austenite(k, from)));
  }

  /** From the heat that it is hardened from by itself; empty where it does not harden. */
  public static Optional<Hardened> alone(Correlations k, PairSteel steel) {
    return steel.hardening().map(r -> from(k, steel, k.hardening().window().heatCelsius(r)));
  }

  /** Some austenite with the grain that hardness and depth are reckoned with; judgement. */
  static QuenchedSteel refined(Correlations k, Composition austenite) {
    return new QuenchedSteel(k, austenite, QuenchedSteel.FINEST_GRAIN);
  }

  /** Its depth of hardening as far as it can be told, m. */
  double metres() {
    return Math.max(LEAST_METRES, Math.min(MOST_METRES, austenite.idealDiameterMetres()));
  }

  /** Whether that is all of it. */
  boolean within() {
    return metres() < MOST_METRES;
  }

  /** What a shop that has everything would quench a section of it in. */
  public Why.In alone(double sectionMetres) {
    Section section = Section.plate(sectionMetres);
    Quenchant bath = best(k, List.of(this), section);
    return new Why.In(
        bath,
        QuenchedSteel.reaches(steel.analysis())
            ? Optional.of(
                new Why.Hardness(
                    austenite.edgeHrc(section, bath).value(),
                    austenite.coreHrc(section, bath).value()))
            : Optional.empty());
  }

  /** The same of some in one. */
  static Quenchant best(Correlations k, List<Hardened> steels, Section section) {
    Hardening h = k.hardening();
    List<QuenchRule.Asked> asked =
        steels.stream()
            .map(
                s ->
                    new QuenchRule.Asked(
                        s.austenite().idealDiameterMetres(),
                        s.steel().steel().heatTreatment().quench()))
            .toList();
    return h.quench().choose(h.quenchants().all(), asked, section).orElseThrow();
  }
}
