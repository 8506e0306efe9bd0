package seamsoak.pairing;

import java.util.List;
import java.util.Optional;
import seamsoak.steel.Deviation;
import seamsoak.steel.Steel;

/**
 * Whether two steels go together, and what would make them.
 *
 * @param first its name
 * @param second its name
 * @param rating the worst of all checks
 * @param checks the weightiest first
 * @param same whether it is one and the same steel twice
 * @param how the way it is put together; empty where one of the two has no analysis
 * @param carbon how long it takes to even out
 * @param remedies what would make it work, the most helpful first
 * @param insteadOfSecond grades near the second that fit with the first
 * @param practice what smiths say of the pair
 * @param remarks what else to know of the two
 */
public record PairAdvice(
    String first,
    String second,
    Rating rating,
    List<Finding> checks,
    boolean same,
    Optional<How> how,
    Optional<Evened> carbon,
    List<Remedy> remedies,
    List<Near> insteadOfSecond,
    Optional<Said> practice,
    List<Remark> remarks) {
  public PairAdvice {
    checks = List.copyOf(checks);
    remedies = List.copyOf(remedies);
    insteadOfSecond = List.copyOf(insteadOfSecond);
    remarks = List.copyOf(remarks);
  }

  /**
   * The way the pair is put together.
   *
   * @param firstSharePct share of the first steel
   * @param firstLayerMm its layers
   * @param secondLayerMm those of the second
   * @param sectionMm the piece when it is hardened
   * @param weldingC welding heat
   * @param assumed which of these nobody stated
   */
  public record How(
      double firstSharePct,
      double firstLayerMm,
      double secondLayerMm,
      double sectionMm,
      double weldingC,
      List<Assumption> assumed) {}

  /** What nobody stated of the way a pair is put together. */
  public enum Assumption {
    LAYERS_OF_PRACTICE,
    LAYERS,
    SECTION,
    WELD_HEATS
  }

  /**
   * Carbon after the first weld heats, and how much longer it takes.
   *
   * @param weldHeats how many there were
   * @param weldMinutes each held so long
   * @param firstMeanPct carbon of the first steel after them, mean of its layer
   * @param secondMeanPct of the second
   * @param heats further time at three heats
   */
  public record Evened(
      int weldHeats,
      double weldMinutes,
      double firstMeanPct,
      double secondMeanPct,
      List<At> heats) {}

  /**
   * One heat.
   *
   * @param heat what it is for
   * @param temperatureC of it
   * @param minutesToEven90 further minutes until nine tenths are even, the weld heats behind it;
   *     empty when even from the start, or beyond a million hours
   * @param firstEvenPct carbon of the first steel when it is even there
   * @param secondEvenPct of the second
   */
  public record At(
      Heat heat,
      double temperatureC,
      Optional<Double> minutesToEven90,
      double firstEvenPct,
      double secondEvenPct) {}

  /** What a heat is for. */
  public enum Heat {
    WELDING,
    SOAKING,
    NORMALIZING
  }

  /**
   * A grade near the second by analysis that fits with the first.
   *
   * @param id of the grade
   * @param distance from the second, in steps of what the smith would notice
   * @param closedStack whether it does so only in a closed stack
   */
  public record Near(String id, double distance, boolean closedStack) {}

  /**
   * The pair with a stock of unknown make taken for a grade.
   *
   * @param grade that it is taken for
   * @param rating of the pair then
   * @param title of the check that decides, where one warns
   */
  public record As(String grade, Rating rating, Optional<String> title) {
    static As of(Steel grade, PairResult result) {
      return new As(grade.id(), result.rating(), result.deciding().map(f -> f.limit().title()));
    }
  }

  /** What else to know of one of the two. */
  public sealed interface Remark {
    /** It is stock of unknown make, and what that comes to by each grade that it may be. */
    record UnknownMake(MayBe mayBe, List<As> as) implements Remark {
      public UnknownMake {
        as = List.copyOf(as);
      }
    }

    /** It holds more or less of an element than its grade allows. */
    record OutsideGrade(String steel, String designation, Deviation deviation) implements Remark {}

    /**
     * An analysis for which no heats are known keeps to the limits of grades for which some are.
     */
    record WithinGrades(String steel, List<String> grades) implements Remark {}
  }

  /** What practice says, and how well that is known. */
  public record Said(String note, String standing, String source) {}
}
