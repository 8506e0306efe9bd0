package seamsoak.soak;

import java.util.List;
import java.util.Optional;
import seamsoak.billet.Seen;
import seamsoak.state.CrossingReport;
import seamsoak.state.LineReport;

/**
 * What a soak would do for the lines.
 *
 * @param lines as they are before it
 * @param crossings of them, as they are before it
 * @param clearedAtC temperature that the minutes of each line and crossing are told for
 * @param options from the coolest sensible soak to the hottest allowed, 10 C apart
 * @param recommended the one to take, empty when none clears within what is allowed
 * @param clears whether the lines are gone after what is recommended (or are gone already)
 * @param goneAlreadyPct in how many such billets a blade shows no line without soak and cycles,
 *     percent; this and the next two are empty where there are no samples
 * @param goneByScheduleAlonePct in how many the schedule clears them without a soak, percent
 * @param withinLongestPct in how many the hottest allowed soak clears within the longest, percent
 * @param testEtch what a test etch now would show and say; empty where there are no samples or it
 *     was made
 * @param evidence what was seen comes to; empty where there are no samples
 * @param samples how many histories the bands rest on; 0 when none were asked for
 * @param samplesLeftOut how many more could not be walked
 * @param dominant what sways the minutes most, if anything does
 * @param highestForgingC highest forging temperature of its steels
 * @param burningC where the first of them burns
 * @param refusalC above this nothing is advised
 * @param mostMinutes longest soak allowed
 * @param advice what else to know, most important first
 */
public record SoakAdvice(
    List<LineReport> lines,
    List<CrossingReport> crossings,
    double clearedAtC,
    List<SoakOption> options,
    Optional<Recommended> recommended,
    boolean clears,
    Optional<Double> goneAlreadyPct,
    Optional<Double> goneByScheduleAlonePct,
    Optional<Double> withinLongestPct,
    Optional<TestEtch> testEtch,
    Optional<Evidence> evidence,
    int samples,
    int samplesLeftOut,
    Optional<Input> dominant,
    double highestForgingC,
    double burningC,
    double refusalC,
    double mostMinutes,
    List<SoakNote> advice) {

  /** Where two of its lines cross and stand out most. */
  public Optional<CrossingReport> brightest() {
    return CrossingReport.brightest(crossings);
  }

  /** From here on a line that was seen is called not carbon, and no soak is recommended. */
  public static final double NOT_CARBON_PCT = 80;

  /** From here on it is called perhaps so. */
  public static final double PERHAPS_NOT_CARBON_PCT = 40;

  /** Whether what was seen is most likely no missing carbon: nothing to soak for. */
  public boolean notCarbon() {
    return evidence.flatMap(Evidence::notCarbonPct).filter(p -> p >= NOT_CARBON_PCT).isPresent();
  }

  /**
   * What was seen comes to.
   *
   * @param effective how many of the cases tried count, so weighed
   * @param notCarbonPct how likely a line that was seen is something else than missing carbon;
   *     empty where nothing was seen
   * @param nextLook the state in which an etch now would tell most; empty where nothing need be
   */
  public record Evidence(
      double effective, Optional<Double> notCarbonPct, Optional<Seen.Etched> nextLook) {}

  /**
   * A test etch of the billet as it is now.
   *
   * @param showsPct in how many such billets it shows a line, percent
   * @param cleanIfNothingPct if it shows none, in how many the blade comes out clean without a soak
   * @param cleanIfSomethingPct if it shows one, in how many it does all the same
   */
  public record TestEtch(
      double showsPct, Optional<Double> cleanIfNothingPct, Optional<Double> cleanIfSomethingPct) {}

  /**
   * A soak at one temperature.
   *
   * @param temperatureC of the core
   * @param minutes held until no line shows in the finished blade, in the likely case; empty beyond
   *     24 h
   * @param minutesLow that do in one of ten such billets; empty where there are no samples
   * @param minutesHalf that do in half
   * @param minutesHigh that do in nine of ten; empty beyond 24 h
   * @param minutesNineOfTen the same
   * @param clears whether the lines go within the longest soak allowed
   * @param metalLossMm metal that scale takes off a face meanwhile
   * @param skinMm depth of the skin on the flats afterwards, to 90 % of the core's carbon
   * @param sideSkinMm the same on the sides
   * @param softMm depth on the flats that no quench makes hard enough for an edge
   * @param sideSoftMm the same on the sides
   * @param grainAstm austenite grain size number afterwards
   * @param nineOfTenCost what a soak costs that does in nine of ten; empty where that is not known
   *     or the fire would eat the billet first
   * @param remarks what speaks against it
   */
  public record SoakOption(
      double temperatureC,
      Optional<Double> minutes,
      Optional<Double> minutesLow,
      Optional<Double> minutesHalf,
      Optional<Double> minutesHigh,
      Optional<Double> minutesNineOfTen,
      boolean clears,
      Optional<Double> metalLossMm,
      Optional<Double> skinMm,
      Optional<Double> sideSkinMm,
      Optional<Double> softMm,
      Optional<Double> sideSoftMm,
      Optional<Double> grainAstm,
      Optional<SoakCost> nineOfTenCost,
      List<OptionRemark> remarks) {}

  /**
   * The soak to take.
   *
   * @param temperatureC of the core
   * @param minutes to hold; 0 when nothing needs clearing
   * @param minutesLow band, empty where there are no samples
   * @param minutesHalf that do in half of such billets
   * @param minutesHigh band, empty when the cautious end does not clear within 24 h
   * @param clearsPct in how many such billets it does, percent; empty where there are no samples
   * @param reason why this one
   */
  public record Recommended(
      double temperatureC,
      double minutes,
      Optional<Double> minutesLow,
      Optional<Double> minutesHalf,
      Optional<Double> minutesHigh,
      Optional<Double> clearsPct,
      SoakReason reason) {}

  /** What speaks against a soak. */
  public enum OptionRemark {
    ABOVE_BURNING,
    ABOVE_FORGING,
    ABOVE_WISH,
    EATEN_FIRST
  }
}
