package seamsoak.soak;

import java.util.List;
import java.util.Optional;
import seamsoak.billet.OldWord;
import seamsoak.billet.Step;
import seamsoak.state.CrossingReport;
import seamsoak.state.LineReport;
import seamsoak.unit.Length;

/** What else to know about a soak. */
public sealed interface SoakNote {
  /** Those without a number. */
  enum Plain implements SoakNote {
    /** What was seen is left out: there are no histories to weigh it. */
    SEEN_WITHOUT_HISTORIES,
    /** The faces were never ground before they were closed. */
    GRIND_FIRST,
    /** No histories were asked for. */
    NO_HISTORIES,
    /** What the file states to be visible decides nothing. */
    VISIBLE_DECIDES_NOTHING,
    /** That what an etch shows depends on the cooling. */
    STATES,
    /** A test etch before the rest of the work. */
    TEST_ETCH
  }

  /**
   * A steel of it is stock of unknown make, and its carbon may be anything between.
   *
   * @param mayBe grades it may be of
   */
  record CarbonUnknown(String stock, List<String> mayBe, double leastPct, double mostPct)
      implements SoakNote {}

  /**
   * What was seen weighs the histories.
   *
   * @param looks all of them
   * @param effective how many of them say as much as all do so weighed
   * @param notCarbonPct how likely a line that was seen is something else than missing carbon
   */
  record SeenWeighs(
      List<Sightings.Sighting> looks, double effective, int of, Optional<Double> notCarbonPct)
      implements SoakNote {}

  /**
   * Nothing allowed clears the lines by the middle estimate.
   *
   * @param withinLongestPct share of the histories in which the hottest allowed does
   */
  record NoneClears(Optional<Double> withinLongestPct) implements SoakNote {}

  /**
   * What would help.
   *
   * @param minutes that it would leave at a temperature; empty beyond 24 h
   */
  record Remedy(Measure measure, Optional<Double> minutes, double celsius) implements SoakNote {}

  /** What can be done differently. */
  enum Measure {
    GRIND_DEEPER,
    SHORTER_HEATS,
    DRAW_THINNER
  }

  /** In how many histories the lines are gone before any soak, and by the cycles alone. */
  record Gone(int histories, double alreadyPct, double byCyclesPct) implements SoakNote {}

  /**
   * A crossing clears last.
   *
   * @param line that stays longest between the crossings, if any shows
   * @param celsius that the minutes of both are told for
   */
  record LastToClear(CrossingReport crossing, Optional<LineReport> line, double celsius)
      implements SoakNote {}

  /** Many histories could not be walked to the end. */
  record LeftOut(int histories, int of) implements SoakNote {}

  /** How wide a line of missing carbon must be by now; anything much finer is something else. */
  record LeastWidth(LineReport line) implements SoakNote {}

  /** The file has words of an older one, which are understood. */
  record OldWords(List<OldWord> words) implements SoakNote {}

  /**
   * A line that was measured is finer than missing carbon can well be.
   *
   * @param width that was told
   * @param leastMm the least that missing carbon would be wide there by now, on the face
   */
  record TooFine(Step step, Length width, double leastMm) implements SoakNote {}

  /** What sways the minutes most, and can be known better. */
  record Narrower(Input input) implements SoakNote {}
}
