package seamsoak.pairing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import seamsoak.property.Correlations;
import seamsoak.property.Quenchant;
import seamsoak.property.Section;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.unit.Length;

/** How deep each hardens, what quench it needs in the section, and whether air is enough. */
record HardenabilityChecks(Correlations k, Judge judge) implements PairFamily {
  /** Austenite grain that hardenability is reckoned with, after refining; judgement. */
  private static final double GRAIN_NUMBER = 8;

  /** Bars have hardened in air at about twice what the criterion says; judgement. */
  private static final double AIR_MARGIN = 2;

  @Override
  public List<Finding> of(PairSteel a, PairSteel b, PairSetting s) {
    if (!a.hardens() || !b.hardens()) {
      return List.of();
    }
    double heat = Judge.common(a.hardening().orElseThrow(), b.hardening().orElseThrow());
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
    return k.hardening().idealDiameter().idealDiameterMetres(austenite, GRAIN_NUMBER);
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
            + length(first)
            + ", of "
            + b.id()
            + " up to "
            + length(second)
            + ": a ratio of "
            + Judge.number(ratio, 1)
            + (ratio == 1 ? "." : ", " + (first > second ? a.id() : b.id()) + " the deeper."));
  }

  private Finding quench(PairSteel a, PairSteel b, double first, double second, PairSetting s) {
    Section section = Section.plate(s.sectionMetres());
    Optional<Quenchant> forFirst = slowest(first, section);
    Optional<Quenchant> forSecond = slowest(second, section);
    double mostSeverity =
        k.hardening().quenchants().all().stream()
            .mapToDouble(Quenchant::severity)
            .max()
            .orElseThrow();
    double one = forFirst.map(Quenchant::severity).orElse(mostSeverity);
    double other = forSecond.map(Quenchant::severity).orElse(mostSeverity);
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
        .map(
            q ->
                "hardens in "
                    + q.name()
                    + " (severity "
                    + Judge.number(q.severity(), 2)
                    + " per inch)")
        .orElse("does not harden to the middle in any quench");
  }

  /** The gentlest quench that hardens the middle of a section to half martensite. */
  private Optional<Quenchant> slowest(double idealDiameter, Section section) {
    return k.hardening().quenchants().all().stream()
        .filter(q -> q.kind() != Quenchant.Kind.INSULATION && q.kind() != Quenchant.Kind.PLATES)
        .sorted(Comparator.comparingDouble(Quenchant::severity))
        .filter(q -> k.hardening().criterion().neededMetres(section, q.severity()) <= idealDiameter)
        .findFirst();
  }

  private Finding air(PairSteel a, PairSteel b, double first, double second, PairSetting s) {
    double stillAir =
        k.hardening().quenchants().all().stream()
            .filter(q -> q.kind() == Quenchant.Kind.AIR)
            .mapToDouble(Quenchant::severity)
            .min()
            .orElseThrow();
    double one = AIR_MARGIN * k.hardening().criterion().thickestPlateMetres(first, stillAir);
    double other = AIR_MARGIN * k.hardening().criterion().thickestPlateMetres(second, stillAir);
    boolean firstInAir = one >= s.sectionMetres();
    boolean secondInAir = other >= s.sectionMetres();
    double rated = firstInAir == secondInAir ? 0 : Math.max(one, other) / s.sectionMetres();
    return judge.values(
        "air-hardening",
        1e3 * one,
        1e3 * other,
        rated,
        "In still air "
            + a.id()
            + " may harden up to "
            + length(one)
            + " thick and "
            + b.id()
            + " up to "
            + length(other)
            + "; the piece is "
            + length(s.sectionMetres())
            + (firstInAir == secondInAir
                ? firstInAir ? ": both do." : ": neither does."
                : ": "
                    + (firstInAir ? a.id() : b.id())
                    + " comes hard out of a normalizing heat, so anneal after it."));
  }

  private String length(double metres) {
    return new Length(metres).format(judge.units());
  }
}
