package seamsoak.schedule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.safety.Stop;
import seamsoak.schedule.demand.Conflict;
import seamsoak.schedule.demand.Hardens;
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
 * @param conflicts where its steels want different things
 * @param program what to set a kiln's controller to
 * @param blade what goes into the quench
 * @param curve corners of the temperature-time curve of core and face, for a chart
 */
public record ScheduleAdvice(
    List<Segment> segments,
    List<After> after,
    List<CriticalTemperatures> critical,
    List<Remark> remarks,
    List<Step> steps,
    List<Conflict> conflicts,
    List<ProgramLine> program,
    Optional<Outcome> blade,
    List<Curve> curve) {

  /** The segments of each step, in order. */
  public Map<StepName, List<Segment>> byStep() {
    Map<StepName, List<Segment>> steps = new LinkedHashMap<>();
    segments.forEach(s -> steps.computeIfAbsent(s.step(), k -> new ArrayList<>()).add(s));
    return steps;
  }

  /**
   * The curve of a step.
   *
   * @param step its name
   * @param core corners
   * @param face corners on the same clock
   */
  public record Curve(StepName step, List<Corner> core, List<Corner> face) {}

  /** A corner of a curve. */
  public record Corner(double minutes, double celsius) {}

  /**
   * A piece of the curve.
   *
   * @param step its step
   * @param kind rise, hold or cooling
   * @param fromC temperature at its start
   * @param toC temperature at its end
   * @param minutes how long
   * @param cool what it cools in, if it does
   * @param task of the step, at the piece that stands for it
   * @param checks of the step, there
   * @param cautions that belong to it
   * @param in where it is done
   */
  public record Segment(
      StepName step,
      Kind kind,
      double fromC,
      double toC,
      double minutes,
      Optional<Coolant> cool,
      Optional<Task> task,
      List<Check> checks,
      List<Caution> cautions,
      Heater in) {
    /** What the temperature does. */
    public enum Kind {
      RISE,
      HOLD,
      COOL
    }
  }

  /**
   * A step as a whole.
   *
   * @param step its name
   * @param in where it is done
   * @param task what to do and why
   * @param temperatureC of the hold, if it has one
   * @param holdMinutes counted from when the core is there
   * @param checks what the smith can look for
   * @param cautions worst first
   * @param refused why it must not be done as planned
   */
  public record Step(
      StepName step,
      Heater in,
      Task task,
      Optional<Double> temperatureC,
      Optional<Double> holdMinutes,
      List<Check> checks,
      List<Caution> cautions,
      Optional<Stop> refused) {}

  /**
   * One segment of a kiln's program.
   *
   * @param step its step
   * @param number from 1 within the step
   * @param ratePerHourC how fast to climb; negative to fall
   * @param toC where to
   * @param stayMinutes at that temperature, the core's lag included
   * @param then what to do after it
   * @param quenchant what to quench in after it, if so
   */
  public record ProgramLine(
      StepName step,
      int number,
      double ratePerHourC,
      double toC,
      double stayMinutes,
      Then then,
      Optional<String> quenchant) {}

  /** What to do after a segment of a kiln's program. */
  public enum Then {
    /** The next segment follows. */
    GO_ON,
    /** Out of the kiln, into still air. */
    TAKE_OUT,
    QUENCH
  }

  /**
   * The billet after a step.
   *
   * @param step its name
   * @param linesVisible sets of seams whose line still shows
   * @param crossingsVisible sets of places where seams cross and show
   * @param crossingContrast of the one that stands out most, from 1 on it shows; 0 without any
   * @param deepestMissingPct carbon missing at the worst seam, wt%
   * @param grainAstm austenite grain size number, an upper estimate of the size
   * @param skinMm depth of the skin on the flats, to 90 % of the core's carbon
   * @param sideSkinMm the same on the sides
   * @param softMm depth on the flats that no quench makes hard enough for an edge, to be ground off
   * @param sideSoftMm the same on the sides
   * @param layers carbon of each steel
   * @param lines at every set of seams
   * @param metals structure and hardness of each steel
   * @param thicknessMm of the piece
   */
  public record After(
      StepName step,
      int linesVisible,
      int crossingsVisible,
      double crossingContrast,
      double deepestMissingPct,
      double grainAstm,
      double skinMm,
      double sideSkinMm,
      double softMm,
      double sideSoftMm,
      List<StageReport.LayerCarbon> layers,
      List<LineReport> lines,
      List<Metal> metals,
      double thicknessMm) {}

  /**
   * One steel after a step.
   *
   * @param steel its name
   * @param structure what it consists of
   * @param retainedPct austenite that the quench leaves, where it was just hardened
   * @param hrc hardness, where it is on that scale and can be told
   * @param hrcGiveOrTake how far that may be off
   */
  public record Metal(
      String steel,
      Structure structure,
      Optional<Double> retainedPct,
      Optional<Double> hrc,
      Optional<Double> hrcGiveOrTake) {}

  /**
   * The blade in the quench.
   *
   * @param thicknessMm at the spine
   * @param widthMm spine to edge
   * @param edge the steel that cuts
   * @param hardenC hardening heat
   * @param quenchant id of what it is quenched in
   * @param quenchantName what the shop calls that
   * @param atHand whether the shop has it
   * @param steels how each of its steels takes it
   * @param media still air, each quenchant at hand and the one taken, slowest first
   * @param tempers what other heats of the tempers would leave the edge with, the coolest first
   */
  public record Outcome(
      double thicknessMm,
      double widthMm,
      String edge,
      double hardenC,
      String quenchant,
      String quenchantName,
      boolean atHand,
      List<Quenched> steels,
      List<Medium> media,
      List<Tempered> tempers) {}

  /** The edge's hardness after the tempers at a heat. */
  public record Tempered(double temperatureC, double hrc) {}

  /**
   * What one way of cooling would do to the blade.
   *
   * @param id of the quenchant
   * @param name what the shop calls it
   * @param atHand whether the shop has it
   * @param takesSeconds the middle takes from 800 to 500 C
   * @param differenceC the most that middle and face differ on the way down
   * @param chosen whether the schedule takes it
   * @param steels what each steel makes of it
   */
  public record Medium(
      String id,
      String name,
      boolean atHand,
      double takesSeconds,
      double differenceC,
      boolean chosen,
      List<InMedium> steels) {}

  /**
   * One steel in one way of cooling.
   *
   * @param steel its name
   * @param allowsSeconds its middle may take from 800 to 500 C and still be hard
   * @param edgeHrc hardness as quenched at a thin edge
   * @param coreHrc hardness as quenched in the middle
   * @param edge whether the edge hardens
   * @param middle whether the middle does
   * @param tooFast whether the steel may crack in it
   */
  public record InMedium(
      String steel,
      double allowsSeconds,
      double edgeHrc,
      double coreHrc,
      Hardens edge,
      Hardens middle,
      boolean tooFast) {}

  /**
   * One steel in the quench.
   *
   * @param steel its name
   * @param dissolvedPct carbon in solution, wt%
   * @param msC martensite start with that
   * @param retainedPct austenite left, percent, and at least and at most
   * @param faceHrc hardness as quenched at the face
   * @param coreHrc hardness as quenched at the middle
   * @param idealDiameterMm its hardenability
   * @param neededMm the hardenability that the section needs in that quenchant
   * @param longestSeconds within which its middle has to fall from 800 to 500 C
   * @param takesSeconds what it takes in that quenchant
   * @param differenceC the most that middle and face differ on the way down
   * @param edge whether an edge ground thin hardens
   * @param middle whether the middle hardens
   * @param edgeHrc hardness of that edge as quenched
   * @param temperedHrc hardness of that edge after the tempers
   * @param band what those four may be
   */
  public record Quenched(
      String steel,
      double dissolvedPct,
      double msC,
      double retainedPct,
      double retainedLowPct,
      double retainedHighPct,
      double faceHrc,
      double coreHrc,
      double idealDiameterMm,
      double neededMm,
      double longestSeconds,
      double takesSeconds,
      double differenceC,
      Hardens edge,
      Hardens middle,
      double edgeHrc,
      double temperedHrc,
      HrcBand band) {}

  /** The bands of a steel's hardness in a blade, HRC. */
  public record HrcBand(
      double faceLow,
      double faceHigh,
      double coreLow,
      double coreHigh,
      double edgeLow,
      double edgeHigh,
      double temperedLow,
      double temperedHigh) {}
}
