package seamsoak.advice;

import java.util.List;

/**
 * The heat treatment after the last weld as one temperature-time curve.
 *
 * @param segments in order; a step is a rise, a hold and a cooling
 * @param after the billet after each step
 * @param critical the critical temperatures it rests on
 * @param remarks what to know of it as a whole
 */
public record ScheduleAdvice(
    List<Segment> segments,
    List<After> after,
    List<CriticalTemperatures> critical,
    List<String> remarks) {

  /**
   * A piece of the curve.
   *
   * @param step such as {@code soak}, {@code normalize}, {@code refine 1}
   * @param kind rise, hold or cool
   * @param fromC temperature at its start
   * @param toC temperature at its end
   * @param minutes how long
   * @param cool how it cools, empty otherwise
   * @param why the reason for it
   * @param check what the smith can look for
   * @param cautions that belong to it
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
      List<String> cautions) {}

  /**
   * The billet after a step.
   *
   * @param step its name
   * @param linesVisible sets of seams whose line still shows
   * @param deepestDipPct carbon missing at the worst of them, wt%
   * @param grainAstm austenite grain size number, an upper estimate of the size
   * @param skinMm depth of the skin to 90 % of the core's carbon
   * @param layers carbon of each steel
   * @param lines at every set of seams
   */
  public record After(
      String step,
      int linesVisible,
      double deepestDipPct,
      double grainAstm,
      double skinMm,
      List<StageReport.LayerCarbon> layers,
      List<LineReport> lines) {}

  /**
   * Critical temperatures of one steel with the carbon it has by then.
   *
   * @param steel its name
   * @param carbonPct carbon after the soak, wt%
   * @param ac1C lower critical temperature
   * @param upperC temperature above which all is austenite: Ac3, or Accm
   * @param upper which of the two it is
   * @param msC martensite start with all that carbon dissolved
   */
  public record CriticalTemperatures(
      String steel, double carbonPct, double ac1C, double upperC, String upper, double msC) {}
}
