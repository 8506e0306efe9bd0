package seamsoak.property.hardening;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import seamsoak.heat.Section;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.steel.SheetQuench;

/**
 * What to quench steels in that are hardened together.
 *
 * <p>The sheets say of what kind: oil where they differ, for thin blades of water steels too, air
 * only where all of them say so. Among the baths of that kind it is the slowest whose middle has a
 * margin of 1.5 over the ideal diameter needed, else the fastest. Never water or brine for a steel
 * whose sheet names none for such a section, nor from an ideal diameter of 45 mm on. Where no bath
 * of that kind is at hand, or an edge of 1 mm does not harden in it, the next kind in which it
 * does: gentler ones first, water last.
 *
 * <p>Lengths in m, ideal diameters as {@link AstmA255} has them.
 *
 * <p>Common practice for blades: the edge decides, a soft middle makes a sound blade and a crack
 * makes none. The numbers are judgement.
 *
 * <p>Range: sections up to 0.1 m. Stated error: none.
 */
public final class QuenchRule extends PublishedFormula {
  private static final double MILLIMETRES = 1e3;

  private final GrossmannCriterion criterion;
  private final HardeningDepth depth;

  QuenchRule(Coefficients k, GrossmannCriterion criterion, HardeningDepth depth) {
    super(k, "what to quench in", "mm", List.of(), "none, judgement");
    this.criterion = criterion;
    this.depth = depth;
  }

  /** Kinds of baths, the gentlest first. */
  private enum Kind {
    AIR,
    PLATES,
    OIL,
    WATER;

    static Kind of(Quenchant q) {
      return switch (q.kind()) {
        case AIR, INSULATION -> AIR;
        case PLATES -> PLATES;
        case OIL, VEGETABLE_OIL, SALT -> OIL;
        case WATER -> WATER;
      };
    }

    static Kind of(SheetQuench.Medium medium) {
      return switch (medium) {
        case AIR -> AIR;
        case OIL, FAST_OIL -> OIL;
        case WATER, BRINE -> WATER;
      };
    }

    /** Itself, then the gentler ones from the nearest down, then the faster ones. */
    List<Kind> inOrder() {
      return switch (this) {
        case AIR -> List.of(AIR, PLATES, OIL, WATER);
        case PLATES -> List.of(PLATES, AIR, OIL, WATER);
        case OIL -> List.of(OIL, PLATES, AIR, WATER);
        case WATER -> List.of(WATER, OIL, PLATES, AIR);
      };
    }
  }

  /**
   * A steel that is to harden.
   *
   * @param idealDiameterMetres of its austenite
   * @param sheet what its own sheet quenches it in, if it has one
   */
  public record Asked(double idealDiameterMetres, Optional<SheetQuench> sheet) {
    /** Whether its sheet hardens it at all. */
    private boolean meantToHarden() {
      return sheet.isEmpty() || !sheet.get().choices().isEmpty();
    }

    private List<Kind> kinds(Section section) {
      return sheet.stream()
          .flatMap(s -> s.media(section.thicknessMetres()).stream())
          .map(Kind::of)
          .toList();
    }
  }

  /**
   * The bath for a section. Soft grades that took up carbon have no say beside others.
   *
   * @param atHand the baths there are
   * @return empty where none of them will do: too fast for a steel, or too slow for an edge
   */
  public Optional<Quenchant> choose(List<Quenchant> atHand, List<Asked> all, Section section) {
    List<Asked> meant = all.stream().filter(Asked::meantToHarden).toList();
    List<Asked> steels = meant.isEmpty() ? all : meant;
    Kind wanted = wanted(steels, section);
    for (Kind kind : wanted.inOrder()) {
      Optional<Quenchant> best = best(kind, atHand, steels, section);
      if (best.isPresent() && edgesHarden(best.get(), steels, section)) {
        return best;
      }
    }
    return best(wanted, atHand, steels, section);
  }

  /** Whether a bath is faster than a steel may be quenched in such a section. */
  public boolean tooFast(Quenchant q, Asked steel, Section section) {
    return Kind.of(q) == Kind.WATER
        && (!mayGoIntoWater(steel)
            || !steel.kinds(section).isEmpty() && !steel.kinds(section).contains(Kind.WATER));
  }

  /**
   * What an ideal diameter is of the one that the edge of a section needs. So thin an edge is face
   * throughout.
   *
   * @param severityPerInch one of the quenchant's three
   */
  public double marginAtEdge(
      double idealDiameterMetres, Section section, Quenchant q, double severityPerInch) {
    double needed =
        criterion.neededMetres(edge(section), depth.severityAtFace(q.kind(), severityPerInch));
    return idealDiameterMetres / needed;
  }

  /** The edge of a section as it is left for the quench. */
  public Section edge(Section section) {
    return Section.plate(Math.min(k.get("edge") / MILLIMETRES, section.thicknessMetres()));
  }

  private double marginAtEdge(Asked steel, Section section, Quenchant q) {
    return marginAtEdge(steel.idealDiameterMetres(), section, q, q.severity());
  }

  private boolean mayGoIntoWater(Asked steel) {
    return steel.idealDiameterMetres() < k.get("water up to") / MILLIMETRES;
  }

  private Kind wanted(List<Asked> steels, Section section) {
    List<Kind> each = steels.stream().map(s -> wanted(s, section)).distinct().toList();
    return each.size() == 1 ? each.get(0) : Kind.OIL;
  }

  private Kind wanted(Asked steel, Section section) {
    Optional<Kind> sheet = steel.kinds(section).stream().findFirst();
    boolean thin = section.thicknessMetres() < SheetQuench.THIN_METRES;
    Kind asked = sheet.orElse(thin ? Kind.OIL : Kind.WATER);
    return asked == Kind.WATER && (thin || !mayGoIntoWater(steel)) ? Kind.OIL : asked;
  }

  /** The slowest of a kind with a margin, else the fastest. In water the shell is what counts. */
  private Optional<Quenchant> best(
      Kind kind, List<Quenchant> atHand, List<Asked> steels, Section section) {
    List<Quenchant> some =
        atHand.stream()
            .filter(q -> Kind.of(q) == kind && q.kind() != Quenchant.Kind.INSULATION)
            .filter(q -> steels.stream().noneMatch(s -> tooFast(q, s, section)))
            .sorted(Comparator.comparingDouble(Quenchant::severity))
            .toList();
    Stream<Quenchant> enough =
        some.stream().filter(q -> least(steels, margin(kind, q, section)) >= k.get("margin"));
    return enough.findFirst().or(() -> some.stream().reduce((a, b) -> b));
  }

  private ToDoubleFunction<Asked> margin(Kind kind, Quenchant q, Section section) {
    return kind == Kind.WATER
        ? s -> marginAtEdge(s, section, q)
        : s -> s.idealDiameterMetres() / criterion.neededMetres(section, q.severity());
  }

  private boolean edgesHarden(Quenchant q, List<Asked> steels, Section section) {
    return least(steels, s -> marginAtEdge(s, section, q)) >= depth.throughMargin();
  }

  private static double least(List<Asked> steels, ToDoubleFunction<Asked> margin) {
    return steels.stream().mapToDouble(margin).min().orElseThrow();
  }
}
