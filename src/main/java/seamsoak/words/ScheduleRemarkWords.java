package seamsoak.words;

import java.util.stream.Collectors;
import seamsoak.schedule.Remark;
import seamsoak.schedule.StepName;
import seamsoak.unit.UnitSystem;

/** What to know of a schedule as a whole. */
public record ScheduleRemarkWords(UnitSystem units) {
  private static final Sayings<ScheduleRemarkWords, Remark, String> ALL =
      new Sayings<ScheduleRemarkWords, Remark, String>(Remark.class)
          .of(Remark.Always.class, ScheduleRemarkWords::of)
          .of(Remark.LineStays.class, ScheduleRemarkWords::of)
          .of(Remark.LineClears.class, ScheduleRemarkWords::of)
          .of(Remark.CarbonGathers.class, ScheduleRemarkWords::of)
          .of(Remark.OutsideRange.class, ScheduleRemarkWords::of)
          .of(Remark.BeyondKiln.class, ScheduleRemarkWords::of)
          .of(Remark.CarbonByThen.class, ScheduleRemarkWords::of)
          .of(Remark.SoftCladding.class, ScheduleRemarkWords::of)
          .of(Remark.PlannedAnew.class, ScheduleRemarkWords::of)
          .complete();

  /** A share of the cycles too small to speak of, percent. */
  private static final double HARDLY_PCT = 10;

  public String says(Remark remark) {
    return ALL.say(this, remark);
  }

  private String of(Remark.Always remark) {
    return switch (remark) {
      case NORMALIZING_HIDES_LINES ->
          "Normalizing hides a faint line more by its finer structure than by moving carbon: it may"
              + " come back after an anneal.";
      case HOLDS_WITHOUT_KILN ->
          "Without a kiln the holds are only as good as the fire is even. The stress relief is left"
              + " out, since no forge holds it: straighten the blade hot before its last cycle.";
      case COLOR_TELLS_LITTLE ->
          "Color tells a heat to "
              + units.show("90 F", "50 C")
              + " at best, and no two tables agree on its words; trust a thermocouple that was"
              + " checked.";
    };
  }

  private String of(Remark.PlannedAnew remark) {
    String steps =
        remark.steps().stream()
            .map(s -> s.mark().number() + " " + s.name())
            .collect(Collectors.joining(", "));
    return "The file has "
        + (remark.steps().size() == 1 ? "step " : "steps ")
        + steps
        + " and does not say what of it was done, so this plans all of the treatment once more after"
        + " it; give \"done\" to what was done, or leave out what was not.";
  }

  private String of(Remark.LineStays remark) {
    return Amounts.format(
        "The deepest line misses %.2f %% carbon, and nothing in this schedule changes that.",
        remark.missingPct());
  }

  private String of(Remark.LineClears remark) {
    double share = remark.soakSharePct();
    return Amounts.format(
        "The deepest line misses %.2f %% carbon before; %s%s.%s",
        remark.beforePct(),
        remark
            .soakedPct()
            .map(p -> Amounts.format("the soak takes it to %.2f %%, and ", p))
            .orElse("without a soak "),
        100 - share < HARDLY_PCT && remark.soakedPct().isPresent()
            ? "normalizing and the cycles, cooler and shorter, hardly move it"
            : Amounts.format("normalizing and the cycles take it to %.2f %%", remark.endPct()),
        remark.soakedPct().isEmpty()
            ? ""
            : Amounts.format(
                " Of what is cleared, the soak clears %.0f %% and they %.0f %%.",
                share, 100 - share));
  }

  private String of(Remark.CarbonGathers remark) {
    return Amounts.format(
        "In the %s carbon goes out of %s, down to %.2f %%, into %s, up to %.2f %%, whose carbide holds"
            + " it better.%s",
        remark.step().words(),
        remark.from(),
        remark.afterPct(),
        remark.into(),
        remark.intoPct(),
        remark
            .quenchedPct()
            .map(
                back ->
                    remark.comesBack()
                        ? Amounts.format(
                            " The hold before the quench takes it back to %.2f %%: do not cut that"
                                + " short.",
                            back)
                        : Amounts.format(
                            " The hold before the quench takes it back to %.2f %% only, and with so"
                                + " little it is quenched: anneal as short as will do, and try a test"
                                + " piece.",
                            back))
            .orElse(""));
  }

  private String of(Remark.OutsideRange remark) {
    return "The "
        + remark.step().words()
        + " at "
        + amounts().heat(remark.celsius())
        + " lies outside the published range of "
        + remark.steel()
        + ", "
        + amounts().between(remark.range().lowC(), remark.range().highC())
        + ": "
        + why(remark)
        + ".";
  }

  private static String why(Remark.OutsideRange remark) {
    return switch (remark.why()) {
      case OTHERS_DECIDE -> "it does not harden, so the others decide";
      case HEAT_OF_OTHERS -> "this is the heat of the others, and it stays soft there";
      case NEAR_ENOUGH -> "as near as a kiln can tell, and it suits the others better";
      case BELOW_FIRST_CHANGE ->
          "a sub-critical anneal stays below what the first of its steels changes at; the printed"
              + " range is of a slow anneal";
      case ANOTHER_CHANGES -> "another steel begins to change there, and nothing must";
      case CARBIDE_TO_GATHER ->
          "carbide has to be left to gather, and the range printed for it would dissolve all of it,"
              + " or nothing, with the carbon that there is";
      case HARDNESS_WANTED -> "the hardness that is wanted at the edge asks for it";
      case CARBON_MOVED ->
          "its carbon has moved since it was bought, and with it the heat it needs";
      case WITHIN_OTHERS ->
          "their ranges do not meet, and it lies in that of " + String.join(", ", remark.within());
    };
  }

  private String of(Remark.BeyondKiln remark) {
    return remark
            .highestC()
            .map(c -> "The kiln goes to " + amounts().heat(c))
            .orElse("There is neither kiln nor forge")
        + ": "
        + String.join(", ", remark.steps().stream().map(StepName::words).toList())
        + remark
            .fire()
            .map(
                fire ->
                    (remark.steps().size() > 1 ? " are for the " : " is for the ")
                        + fire.word()
                        + ".")
            .orElse(" cannot be done in this shop and must be done elsewhere.");
  }

  private String of(Remark.SoftCladding remark) {
    return remark.steel()
        + " stays soft, as what lies beside the edge is meant to: "
        + remark
            .carbonPct()
            .map(c -> Amounts.format("with %.2f %% carbon by then it does not harden", c))
            .orElse("no heat hardens it")
        + ", so grind until "
        + remark.edge()
        + " is what cuts.";
  }

  private String of(Remark.CarbonByThen remark) {
    return "The temperatures rest on the carbon that each of "
        + String.join(", ", remark.steels())
        + " has by then.";
  }

  private Amounts amounts() {
    return new Amounts(units);
  }
}
