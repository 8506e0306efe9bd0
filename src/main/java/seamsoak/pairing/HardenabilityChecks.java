package seamsoak.pairing;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import seamsoak.heat.Section;
import seamsoak.property.Correlations;
import seamsoak.property.hardening.Quenchant;

/** How deep each hardens, what quench it needs in the section, and whether air is enough. */
record HardenabilityChecks(Correlations k, Judge judge) implements PairFamily {
  /** Austenite grain that hardenability is reckoned with, after refining; judgement. */
  private static final double GRAIN_NUMBER = 8;

  /**
   * Pieces harden through at about twice the thickness that the criterion says: so do handbook
   * limits of plain steel in oil and a report of L6 in air. Judgement.
   */
  private static final double THICKNESS_MARGIN = 2;

  /** Beyond this the factors of alloying have left their range: more is told as more than this. */
  private static final double MOST_METRES = 0.5;

  /** Thinner than a blade's edge; keeps ratios finite where a formula is far outside its range. */
  private static final double LEAST_METRES = 1e-4;

  private static final Set<Quenchant.Kind> KINDS =
      EnumSet.of(
          Quenchant.Kind.AIR,
          Quenchant.Kind.OIL,
          Quenchant.Kind.VEGETABLE_OIL,
          Quenchant.Kind.WATER);

  @Override
  public List<Finding> of(PairSteel a, PairSteel b, PairSetting s) {
    if (!a.hardens() || !b.hardens()) {
      return List.of();
    }
    double heat = PairSteel.hardenCelsius(k, a, b);
    double first = idealDiameter(a, heat);
    double second = idealDiameter(b, heat);
    List<Quenchant> quenches = quenchants();
    double air = needed(s, quenches.get(0));
    double one = first / air;
    double other = second / air;
    double rated = one >= 1 == other >= 1 ? 0 : Math.max(one, other);
    return List.of(
        judge.values(
            CheckName.HARDENABILITY,
            1e3 * first,
            1e3 * second,
            new Why.Each(first < MOST_METRES, second < MOST_METRES)),
        quench(quenches, first, second, s),
        judge.values(
            CheckName.AIR_HARDENING, one, other, rated, new Why.Air(s.sectionMetres(), air)));
  }

  private double idealDiameter(PairSteel s, double heat) {
    double from = Math.max(heat, s.hardening().orElseThrow().lowC());
    double metres =
        k.hardening().idealDiameter().idealDiameterMetres(s.austenite(k, from), GRAIN_NUMBER);
    return Math.max(LEAST_METRES, Math.min(MOST_METRES, metres));
  }

  private Finding quench(List<Quenchant> all, double first, double second, PairSetting s) {
    Optional<Quenchant> forFirst = slowest(all, first, s);
    Optional<Quenchant> forSecond = slowest(all, second, s);
    double fastest = all.get(all.size() - 1).severity();
    return judge.values(
        CheckName.QUENCH,
        forFirst.map(Quenchant::severity).orElse(fastest),
        forSecond.map(Quenchant::severity).orElse(fastest),
        new Why.Quenches(s.sectionMetres(), forFirst, forSecond));
  }

  /** What blades are quenched in, the gentlest first. */
  private List<Quenchant> quenchants() {
    return k.hardening().quenchants().all().stream()
        .filter(q -> KINDS.contains(q.kind()))
        .sorted(Comparator.comparingDouble(Quenchant::severity))
        .toList();
  }

  /** The gentlest quench that hardens the middle of a section to half martensite. */
  private Optional<Quenchant> slowest(List<Quenchant> all, double idealDiameter, PairSetting s) {
    return all.stream().filter(q -> needed(s, q) <= idealDiameter).findFirst();
  }

  private double needed(PairSetting s, Quenchant q) {
    Section section = Section.plate(s.sectionMetres() / THICKNESS_MARGIN);
    return k.hardening().criterion().neededMetres(section, q.severity());
  }
}
