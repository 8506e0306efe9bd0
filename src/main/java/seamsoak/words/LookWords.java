package seamsoak.words;

import java.util.stream.Collectors;
import seamsoak.billet.Seen;
import seamsoak.soak.Sightings;
import seamsoak.soak.SoakAdvice;
import seamsoak.soak.SoakNote;
import seamsoak.unit.Length;
import seamsoak.unit.UnitSystem;

/** What is said of what the smith saw. */
record LookWords(UnitSystem units) {
  String of(SoakNote.SeenWeighs s) {
    return "You saw "
        + s.looks().stream().map(this::look).collect(Collectors.joining("; "))
        + ". So weighed, about "
        + Math.round(Math.max(1, s.effective()))
        + " of the "
        + s.of()
        + " cases tried count, and what is said here goes by them."
        + s.notCarbonPct().map(LookWords::notCarbon).orElse("");
  }

  String of(SoakNote.TooFine f) {
    return "The line seen after "
        + f.step().title()
        + " is "
        + f.width().format(units)
        + " wide, where missing carbon would be a shade of at least "
        + Length.ofMillimetres(f.leastMm()).format(units)
        + " by now. So fine a line may be its core alone, or scale or oxide in the seam, or nickel"
        + " that scaling brought up, which no soak takes out: look at it under a loupe first.";
  }

  /** Such as {@code a faint line at the tile joints (step 15 roll)}. */
  private String look(Sightings.Sighting s) {
    Seen seen = s.seen();
    String line =
        switch (seen.line()) {
          case NONE -> "no line";
          case FAINT -> "a faint line";
          case PLAIN -> "a plain line";
        };
    String where =
        switch (seen.where().seams()) {
          case LAYERS -> "between the layers";
          case RESTACK -> "at the restack joints";
          case TILE -> "at the tile joints";
        };
    return line
        + seen.width().map(w -> ", " + w.format(units) + " wide,").orElse("")
        + (seen.part() == Seen.Part.CROSSING ? " where seams cross " : " ")
        + where
        + " (after "
        + s.step().title()
        + ")";
  }

  private static String notCarbon(double percent) {
    if (percent < SoakAdvice.PERHAPS_NOT_CARBON_PCT) {
      return "";
    }
    String often = " (" + Math.round(percent) + " of a hundred)";
    return percent < SoakAdvice.NOT_CARBON_PCT
        ? " Perhaps the line is not missing carbon"
            + often
            + ": if it looks the same after one more soak, it is not."
        : " The line is most likely not missing carbon"
            + often
            + " but nickel, arsenic or copper brought up by scale, or oxide: no soak takes it out,"
            + " grinding or a deeper polish may.";
  }
}
