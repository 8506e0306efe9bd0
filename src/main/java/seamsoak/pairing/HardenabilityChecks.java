package seamsoak.pairing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import seamsoak.heat.Section;
import seamsoak.property.Correlations;
import seamsoak.property.hardening.Quenchant;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.unit.Length;

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
    List<Finding> all = new ArrayList<>();
    all.add(depth(a, b, first, second));
    all.add(quench(a, b, first, second, s));
    all.add(air(a, b, first, second, s));
    return all;
  }

  private double idealDiameter(PairSteel s, double heat) {
    double from = Math.max(heat, s.hardening().orElseThrow().lowC());
    Composition austenite = s.analysis().with(Element.C, s.dissolvedCarbonPct(from));
    double metres = k.hardening().idealDiameter().idealDiameterMetres(austenite, GRAIN_NUMBER);
    return Math.max(LEAST_METRES, Math.min(MOST_METRES, metres));
  }

  private Finding depth(PairSteel a, PairSteel b, double first, double second) {
    double ratio = Math.max(first, second) / Math.min(first, second);
    return judge.values(
        "hardenability",
        1e3 * first,
        1e3 * second,
        ratio,
        "A round bar of "
            + a.id()
            + " hardens through in a perfect quench up to "
            + diameter(first)
            + ", of "
            + b.id()
            + " up to "
            + diameter(second)
            + ": a ratio of "
            + Judge.number(ratio, 1)
            + (first == second ? "." : ", " + (first > second ? a.id() : b.id()) + " the deeper."));
  }

  private String diameter(double metres) {
    return (metres < MOST_METRES ? "" : "more than ") + length(metres);
  }

  private Finding quench(PairSteel a, PairSteel b, double first, double second, PairSetting s) {
    List<Quenchant> all = quenchants();
    Optional<Quenchant> forFirst = slowest(all, first, s);
    Optional<Quenchant> forSecond = slowest(all, second, s);
    double fastest = all.get(all.size() - 1).severity();
    double one = forFirst.map(Quenchant::severity).orElse(fastest);
    double other = forSecond.map(Quenchant::severity).orElse(fastest);
    return judge.values(
        "quench",
        one,
        other,
        Math.max(one, other) / Math.min(one, other),
        length(s.sectionMetres())
            + " thick, "
            + a.id()
            + " "
            + needs(forFirst)
            + " and "
            + b.id()
            + " "
            + needs(forSecond)
            + ".");
  }

  private static String needs(Optional<Quenchant> quenchant) {
    return quenchant
        .map(q -> "hardens in " + q.name() + " (severity " + Judge.number(q.severity(), 2) + ")")
        .orElse("does not harden to the middle in any quench");
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

  private Finding air(PairSteel a, PairSteel b, double first, double second, PairSetting s) {
    double needed = needed(s, quenchants().get(0));
    double one = first / needed;
    double other = second / needed;
    double rated = one >= 1 == other >= 1 ? 0 : Math.max(one, other);
    return judge.values(
        "air-hardening",
        one,
        other,
        rated,
        length(s.sectionMetres())
            + " thick, a piece may harden in still air when its depth of hardening is "
            + length(needed)
            + " or more; "
            + a.id()
            + " has "
            + Judge.number(one, 2)
            + " of that and "
            + b.id()
            + " "
            + Judge.number(other, 2)
            + (rated == 0
                ? one >= 1 ? ": both do." : ": neither does."
                : ": "
                    + (one >= 1 ? a.id() : b.id())
                    + " comes hard out of a normalizing heat, so anneal after it."));
  }

  private String length(double metres) {
    return new Length(metres).format(judge.units());
  }
}
