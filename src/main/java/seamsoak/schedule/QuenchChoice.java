package seamsoak.schedule;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import seamsoak.heat.Section;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.hardening.Hardening;
import seamsoak.property.hardening.QuenchResult;
import seamsoak.property.hardening.Quenchant;
import seamsoak.state.BathAtHand;

/**
 * What to quench in: the slowest at hand in which every steel hardens through, else the fastest.
 *
 * @param bath which
 * @param section that is quenched
 * @param steels how each that hardens takes it
 */
record QuenchChoice(BathAtHand bath, Section section, List<Response> steels) {
  /**
   * How a steel takes the quench.
   *
   * @param steel which
   * @param austenite of it at the hardening heat
   * @param result what the quench does to the section
   */
  record Response(SteelNow steel, QuenchedSteel austenite, QuenchResult result) {
    private static Response of(
        SteelNow steel, QuenchedSteel austenite, Section section, BathAtHand bath) {
      return new Response(steel, austenite, austenite.quench(section, bath.quenchant()));
    }

    Hardens middle() {
      return switch (result.depth()) {
        case THROUGH -> Hardens.YES;
        case NEARLY -> Hardens.PERHAPS;
        case SHELL, NOT -> Hardens.NO;
      };
    }

    /**
     * How long the middle may take from 800 to 500 C in this section and still be hard, s. Times go
     * as the square of the ideal diameter that they ask for, on the section's own way down; the
     * same time along the curve of an ideally quenched bar would say less.
     */
    double allowsSeconds() {
      double over = result.marginAtCore() / steel.k().hardening().depth().throughMargin();
      return result.coreSeconds8to5() * over * over;
    }

    /** The thickest blade of it that hardens to the middle, or nearly, in a quenchant, m. */
    double thickestMetres(Quenchant quenchant) {
      Hardening h = steel.k().hardening();
      return h.criterion()
          .thickestPlateMetres(
              austenite.idealDiameterMetres() / h.depth().halfMargin(), quenchant.severity());
    }
  }

  /** Each bath at hand with what it does, in their order. */
  static List<QuenchChoice> all(
      List<BathAtHand> baths,
      Section section,
      List<SteelNow> hardening,
      double celsius,
      double grainNumber) {
    return baths.stream()
        .map(
            b ->
                new QuenchChoice(
                    b,
                    section,
                    hardening.stream()
                        .map(s -> Response.of(s, s.quenched(celsius, grainNumber), section, b))
                        .toList()))
        .toList();
  }

  /** The slowest in which every steel hardens through, else the fastest. */
  static QuenchChoice of(List<QuenchChoice> all) {
    Comparator<QuenchChoice> slowestFirst =
        Comparator.comparingDouble(c -> c.quenchant().severity());
    for (Hardens enough : List.of(Hardens.YES, Hardens.PERHAPS)) {
      Optional<QuenchChoice> found =
          all.stream().filter(c -> c.worst().compareTo(enough) >= 0).min(slowestFirst);
      if (found.isPresent()) {
        return found.get();
      }
    }
    return all.stream().max(slowestFirst).orElseThrow();
  }

  double celsius() {
    return bath.celsius();
  }

  Quenchant quenchant() {
    return bath.quenchant();
  }

  Hardens worst() {
    return steels.stream().map(Response::middle).min(Comparator.naturalOrder()).orElseThrow();
  }

  Optional<Response> of(SteelNow steel) {
    return steels.stream().filter(t -> t.steel().id().equals(steel.id())).findFirst();
  }
}
