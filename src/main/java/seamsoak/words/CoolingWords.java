package seamsoak.words;

import seamsoak.schedule.Task;
import seamsoak.schedule.demand.Change;
import seamsoak.schedule.demand.Down;
import seamsoak.schedule.demand.Guard;
import seamsoak.unit.TimeSpan;
import seamsoak.words.StepWords.Order;

/** How a billet comes down from a heat, and why so slowly. */
record CoolingWords(Amounts amounts) {
  Order of(Task.CoolInAir t) {
    return new Order(
        Amounts.format(
            "Lay the billet in still, dry air: about %.0f min to black, %.0f min until a hand can"
                + " bear it",
            t.blackMinutes(), t.touchMinutes()),
        "no steel of it hardens in still air in this section: its middle takes about "
            + Math.round(t.takesSeconds())
            + " s from "
            + amounts.between(800, 500)
            + t.deepest()
                .map(
                    d ->
                        Amounts.format(
                            ", and %s, coarse as its grain is by now, hardens only within %.0f s",
                            d.steel(), d.seconds()))
                .orElse(""));
  }

  Order of(Task.CoolSlowly t) {
    return new Order(
        t.kiln()
            .map(
                c ->
                    "Put the billet into the kiln while it still glows, hold it at "
                        + changed(c)
                        + ", then let it cool in still air")
            .orElse(
                "Bury the billet, still glowing, in dry vermiculite or ash until a hand can bear it"),
        GuardWords.because(t.guard())
            + ": cooled in air it lies hard and strained and may crack"
            + t.kiln().map(CoolingWords::mayNot).orElse(""));
  }

  String down(Down down) {
    return switch (down.way()) {
      case STILL_AIR -> "still air to black";
      case BURIED -> "bury it, still glowing, in dry vermiculite or ash until a hand can bear it";
      case FALLS_IN_KILN -> "let it fall in the kiln and hold it at " + changed(down.change());
      case INTO_KILN ->
          "into the kiln while it still glows, and hold it at " + changed(down.change());
    };
  }

  static String slowly(Down down, Guard guard) {
    return down.way() == Down.Way.STILL_AIR
        ? ""
        : "; cooled slowly because "
            + GuardWords.because(guard)
            + (down.inKiln() ? mayNot(down.change()) : "");
  }

  /** Where and how long it is held until it has changed. */
  private String changed(Change change) {
    return amounts.heat(change.celsius())
        + " for "
        + TimeSpan.ofMinutes(change.minutes()).format(amounts.units())
        + ", by when its austenite has changed";
  }

  private static String mayNot(Change change) {
    return change.mayNot().isEmpty()
        ? ""
        : "; "
            + String.join(", ", change.mayNot())
            + " may not change even then and harden as it cools: anneal it before it lies overnight";
  }
}
