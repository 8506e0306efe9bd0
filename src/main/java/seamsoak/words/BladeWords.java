package seamsoak.words;

import seamsoak.schedule.ScheduleAdvice.InMedium;
import seamsoak.schedule.ScheduleAdvice.Metal;
import seamsoak.schedule.ScheduleAdvice.ProgramLine;
import seamsoak.schedule.demand.Hardens;

/** What the steel of a blade is by then, and what to do with it when the kiln is done. */
public final class BladeWords {
  private BladeWords() {}

  /** What a steel consists of. */
  public static String structure(Metal metal) {
    return switch (metal.structure()) {
      case AIR_HARDENED -> "martensite, hard";
      case PERHAPS_AIR_HARDENED -> "pearlite, perhaps with martensite";
      case PEARLITE -> "fine pearlite";
      case PEARLITE_AND_CARBIDE -> "fine pearlite and carbide";
      case PEARLITE_AND_FERRITE -> "ferrite and pearlite";
      case FERRITE -> "ferrite";
      case ANNEALED -> "soft: carbide in ferrite";
      case UNCHANGING -> "no change";
      case HARD -> martensite(metal);
      case HARD_MIDDLE_PERHAPS -> martensite(metal) + ", the middle perhaps softer";
      case HARD_SHELL -> martensite(metal) + " at a thin edge, the middle soft";
      case NOT_HARDENED -> "does not harden";
      case NOT_FROM_THIS_HEAT -> "not hardened at this heat, or in part";
      case TEMPERED -> "tempered martensite";
      case TEMPERED_SHELL -> "tempered martensite at a thin edge";
      case SOFT -> "soft";
    };
  }

  private static String martensite(Metal metal) {
    return Amounts.format("martensite, %.0f %% austenite", metal.retainedPct().orElseThrow());
  }

  /** What a steel makes of a bath: its edge, its middle. */
  public static String inMedium(InMedium m) {
    return Amounts.format("%.0f, %s", m.edgeHrc(), hardens(m.middle()))
        + (m.tooFast() ? "; may crack" : "");
  }

  private static String hardens(Hardens hardens) {
    return switch (hardens) {
      case NO -> "no";
      case PERHAPS -> "perhaps";
      case YES -> "yes";
    };
  }

  /** What to do when the kiln has done a line of its program. */
  public static String then(ProgramLine line) {
    return switch (line.then()) {
      case GO_ON -> "go on";
      case TAKE_OUT -> "take out, still air";
      case QUENCH -> "quench in " + line.quenchant().orElseThrow();
    };
  }
}
