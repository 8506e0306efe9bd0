package seamsoak.schedule;

import java.util.List;
import java.util.Optional;
import seamsoak.source.Caution;
import seamsoak.state.LineReport;
import seamsoak.state.StageReport;

/**
 * The heat treatment after the last weld.
 *
 * @param segments its temperature-time curve in order; a step is a rise, a hold and a cooling
 * @param after the billet after each step
 * @param critical the critical temperatures it rests on
 * @param remarks what to know of it as a whole
 * @param steps all steps in order, those at the bench too
 * @param conflicts where its steels want different things, and what to do
 * @param program what to set a kiln's controller to
 * @param blade what goes into the quench
 * @param curve corners of the temperature-time curve of core and face, for a chart
 */
public record ScheduleAdvice(
    List<Segment> segments,
    List<After> after,
    List<CriticalTemperatures> critical,
    List<String> remarks,
    List<Step> steps,
    List<Conflict> conflicts,
    List<ProgramLine> program,
    Optional<Outcome> blade,
    List<Curve> curve) {

  /**
   * The curve of a step.
   *
   * @param step its name
   * @param core corners
   * @param face corners on the same clock
   */
  public record Curve(String step, List<Corner> core, List<Corner> face) {}

  /** A corner of a curve. */
  public record Corner(double minutes, double celsius) {}

  /**
   * A piece of the curve.
   *
   * @param step such as {@code soak}, {@code normalize}, {@code refine 1}
   * @param kind rise, hold or cool
   * @param fromC temperature at its start
   * @param toC temperature at its end
   * @param minutes how long
   * @param cool what it cools in, empty otherwise
   * @param why the reason for it
   * @param check what the smith can look for
   * @param cautions that belong to it
   * @param in where it is done
   */
  public record Segment(
      String step,
      String kind,
      double fromC,
      double toC,
      double minutes,
      String cool,
      String why,
      String check,
      List<Caution> cautions,
      String in) {}

  /**
   * A step as a whole.
   *
   * @param step its name
   * @param in where it is done: kiln, forge, salt, oven, bench
   * @param doing what to do
   * @param temperatureC of the hold, if it has one
   * @param holdMinutes counted from when the core is there
   * @param why the reason for it
   * @param checks what the smith can look for
   * @param cautions worst first
   * @param refused why it must not be done as planned
   */
  public record Step(
      String step,
      String in,
      String doing,
      Optional<Double> temperatureC,
      Optional<Double> holdMinutes,
      String why,
      List<String> checks,
      List<Caution> cautions,
      Optional<String> refused) {}

  /**
   * Something the steels of the billet do not agree on.
   *
   * @param about such as {@code normalizing}, {@code hardening heat}
   * @param steels that it is between
   * @param says what is the matter
   * @param todo what to do about it
   */
  public record Conflict(String about, List<String> steels, String says, String todo) {}

  /**
   * One segment of a kiln's program.
   *
   * @param step its step
   * @param number from 1 within the step
   * @param ratePerHourC how fast to climb; negative to fall
   * @param toC where to
   * @param stayMinutes at that temperature, the core's lag included
   * @param then what to do after it
   */
  public record ProgramLine(
      String step, int number, double ratePerHourC, double toC, double stayMinutes, String then) {}

  /**
   * The billet after a step.
   *
   * @param step its name
   * @param linesVisible sets of seams whose line still shows
   * @param crossingsVisible sets of places where seams cross and show
   * @param deepestMissingPct carbon missing at the worst seam, wt%
   * @param grainAstm austenite grain size number, an upper estimate of the size
   * @param skinMm depth of the skin to 90 % of the core's carbon, to be ground off
   * @param layers carbon of each steel
   * @param lines at every set of seams
   * @param metals structure and hardness of each steel
   * @param thicknessMm of the piece
   */
  public record After(
      String step,
      int linesVisible,
      int crossingsVisible,
      double deepestMissingPct,
      double grainAstm,
      double skinMm,
      List<StageReport.LayerCarbon> layers,
      List<LineReport> lines,
      List<Metal> metals,
      double thicknessMm) {}

  /**
   * One steel after a step.
   *
   * @param steel its name
   * @param structure in words
   * @param hrc hardness, where it is on that scale and can be told
   */
  public record Metal(String steel, String structure, Optional<Double> hrc) {}

  /**
   * The blade in the quench.
   *
   * @param thicknessMm at the spine
   * @param widthMm spine to edge
   * @param edge the steel that cuts
   * @param hardenC hardening heat
   * @param quenchant id of what it is quenched in
   * @param quenchantName what the shop calls that
   * @param steels how each of its steels takes it
   * @param media still air and each quenchant at hand, slowest first
   */
  public record Outcome(
      double thicknessMm,
      double widthMm,
      String edge,
      double hardenC,
      String quenchant,
      String quenchantName,
      List<Quenched> steels,
      List<Medium> media) {}

  /**
   * What one way of cooling would do to the blade.
   *
   * @param id of the quenchant
   * @param name what the shop calls it
   * @param takesSeconds the middle takes from 800 to 500 C
   * @param differenceC the most that middle and face differ on the way down
   * @param chosen whether the schedule takes it
   * @param middles whether the middle of each steel hardens: yes, perhaps, no
   */
  public record Medium(
      String id,
      String name,
      double takesSeconds,
      double differenceC,
      boolean chosen,
      List<String> middles) {}

  /**
   * One steel in the quench.
   *
   * @param steel its name
   * @param dissolvedPct carbon in solution, wt%
   * @param msC martensite start with that
   * @param retainedPct austenite left, percent
   * @param faceHrc hardness as quenched at the face
   * @param coreHrc hardness as quenched at the middle
   * @param idealDiameterMm its hardenability
   * @param neededMm the hardenability that the section needs in that quenchant
   * @param longestSeconds within which its middle has to fall from 800 to 500 C
   * @param takesSeconds what it takes in that quenchant
   * @param differenceC the most that middle and face differ on the way down
   * @param middle whether the middle hardens: yes, perhaps, no
   * @param edgeHrc hardness as quenched at an edge ground thin
   * @param temperedHrc hardness of that edge after the tempers
   */
  public record Quenched(
      String steel,
      double dissolvedPct,
      double msC,
      double retainedPct,
      double faceHrc,
      double coreHrc,
      double idealDiameterMm,
      double neededMm,
      double longestSeconds,
      double takesSeconds,
      double differenceC,
      String middle,
      double edgeHrc,
      double temperedHrc) {}

  /**
   * Critical temperatures of one steel with the carbon it has by then.
   *
   * @param steel its name
   * @param carbonPct carbon after the soak, wt%
   * @param ac1C lower critical temperature
   * @param upperC temperature above which all is austenite: Ac3, or Accm
   * @param upper which of the two it is
   * @param msC martensite start with all that carbon dissolved
   * @param magnetC where the magnet lets go on heating
   * @param magnetLowC lower end of that
   * @param magnetHighC upper end of that
   */
  public record CriticalTemperatures(
      String steel,
      double carbonPct,
      double ac1C,
      double upperC,
      String upper,
      double msC,
      double magnetC,
      double magnetLowC,
      double magnetHighC) {}
}
