package seamsoak.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import seamsoak.billet.Bath;
import seamsoak.property.GrossmannCriterion;
import seamsoak.property.Quenchant;
import seamsoak.property.Section;

/**
 * What to quench in: the slowest at hand in which every steel hardens through, else the fastest.
 *
 * @param bath as the file states it
 * @param quenchant as the table has it
 * @param section that is quenched
 * @param steels how each that hardens takes it
 */
record QuenchChoice(Bath bath, Quenchant quenchant, Section section, List<Taken> steels) {
  /** The criterion asks for about twice the severity that handbook limits do; judgement. */
  static final double ON_THE_SAFE_SIDE = 2;

  private static final double FROM = 800;
  private static final double TO = 500;
  private static final double ROOM_CELSIUS = 20;

  /** Whether a middle hardens. */
  enum Middle {
    NO,
    PERHAPS,
    YES
  }

  /**
   * How a steel takes the quench.
   *
   * @param steel which
   * @param idealMetres its hardenability
   * @param neededMetres the hardenability that the section needs in this quenchant
   * @param middle whether its middle hardens
   * @param longestSeconds within which its middle has to fall from 800 to 500 C
   * @param takesSeconds what it takes in this quenchant
   */
  record Taken(
      SteelNow steel,
      double idealMetres,
      double neededMetres,
      Middle middle,
      double longestSeconds,
      double takesSeconds) {
    static Taken of(
        SteelNow steel, Section section, double severity, double celsius, double grainNumber) {
      GrossmannCriterion criterion = steel.k().hardening().criterion();
      double has = steel.idealDiameterMetres(celsius, grainNumber);
      double needed = criterion.neededMetres(section, severity);
      Middle middle = Middle.NO;
      if (has >= needed) {
        middle = Middle.YES;
      } else if (has >= criterion.neededMetres(section, ON_THE_SAFE_SIDE * severity)) {
        middle = Middle.PERHAPS;
      }
      return new Taken(
          steel,
          has,
          needed,
          middle,
          criterion.longestSeconds(has, FROM, TO),
          criterion.longestSeconds(needed, FROM, TO));
    }
  }

  /** A bath with what the table knows of it. */
  record Known(Bath bath, Quenchant quenchant) {
    /** How warm it is: as stated, else the middle of where it is used, else room temperature. */
    double celsius() {
      return bath.at()
          .map(t -> t.celsius())
          .orElseGet(
              () ->
                  quenchant.useLowC().isPresent() && quenchant.useHighC().isPresent()
                      ? (quenchant.useLowC().getAsDouble() + quenchant.useHighC().getAsDouble()) / 2
                      : ROOM_CELSIUS);
    }
  }

  static QuenchChoice of(
      List<Known> baths,
      Section section,
      List<SteelNow> hardening,
      double celsius,
      double grainNumber) {
    List<QuenchChoice> all = new ArrayList<>();
    for (Known k : baths) {
      List<Taken> taken =
          hardening.stream()
              .map(s -> Taken.of(s, section, k.quenchant().severity(), celsius, grainNumber))
              .toList();
      all.add(new QuenchChoice(k.bath(), k.quenchant(), section, taken));
    }
    Comparator<QuenchChoice> slowestFirst =
        Comparator.comparingDouble(c -> c.quenchant().severity());
    for (Middle enough : List.of(Middle.YES, Middle.PERHAPS)) {
      Optional<QuenchChoice> found =
          all.stream().filter(c -> c.worst().compareTo(enough) >= 0).min(slowestFirst);
      if (found.isPresent()) {
        return found.get();
      }
    }
    return all.stream().max(slowestFirst).orElseThrow();
  }

  double celsius() {
    return new Known(bath, quenchant).celsius();
  }

  Middle worst() {
    return steels.stream().map(Taken::middle).min(Comparator.naturalOrder()).orElseThrow();
  }

  Optional<Taken> of(SteelNow steel) {
    return steels.stream().filter(t -> t.steel().id().equals(steel.id())).findFirst();
  }
}
