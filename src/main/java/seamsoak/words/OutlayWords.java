package seamsoak.words;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import seamsoak.plan.Outlay;
import seamsoak.plan.OutlayAdvisor;
import seamsoak.unit.UnitSystem;

/** What the work takes, in words. */
public record OutlayWords(Outlay outlay, UnitSystem units) {
  private Amounts amounts() {
    return new Amounts(units);
  }

  /** Hours at each fire. */
  public List<String> times() {
    List<String> all = new ArrayList<>();
    if (outlay.heats() > 0) {
      all.add(
          (outlay.heats() == 1 ? "One heat" : outlay.heats() + " heats")
              + " in the forge, "
              + amounts().time(outlay.heatMinutes())
              + " in the fire with the rise of each; time at the hammer, the press and the grinder is"
              + " yours to add.");
    }
    if (!outlay.spells().isEmpty()) {
      all.add(
          "Then the soak and the treatment: "
              + outlay.spells().stream()
                  .map(s -> amounts().time(s.minutes()) + " in the " + s.in().word())
                  .collect(Collectors.joining(", "))
              + ", cooling in air and at the bench not counted.");
    }
    return all;
  }

  /** From the blade backward to the stack. */
  public List<String> stock() {
    List<String> all = new ArrayList<>();
    outlay
        .wanted()
        .ifPresent(
            w -> {
              all.add(
                  "A blade of "
                      + amounts().millimetres(w.bladeMm())
                      + " takes a bar of "
                      + amounts().millimetres(w.barMm())
                      + ": "
                      + amounts().millimetres(w.endsMm())
                      + " of it are its two ends, each half as long as the bar is wide (judgement)."
                      + " A tang that is forged on is to be added.");
              all.add(
                  w.pieceMm()
                      .map(
                          p ->
                              "That bar comes from pieces "
                                  + amounts().millimetres(p)
                                  + " long, scale, grinding and the cuts of the steps reckoned with.")
                      .orElse("No stack as wide as this one gives so long a bar."));
            });
    if (outlay.wanted().isEmpty() && !outlay.stock().isEmpty()) {
      all.add(
          "The file says no length of a blade, so this is for the stack as it is, which gives a bar of "
              + amounts().millimetres(outlay.barMm())
              + ".");
    } else if (outlay.wanted().isPresent()) {
      all.add(
          "The stack as the file has it gives a bar of "
              + amounts().millimetres(outlay.barMm())
              + ".");
    }
    return all;
  }

  public String size(double millimetres) {
    return amounts().millimetres(millimetres);
  }

  /** What the pieces are for. */
  public static String use(Outlay.Stock s) {
    return s.jacket() ? "jacket, all round" : "layers";
  }

  /** How the table is to be read. */
  public String caption() {
    return "Stock to cut: a cut of "
        + amounts().millimetres(OutlayAdvisor.KERF_MM)
        + " is lost with each piece; no allowance for cuts that go wrong";
  }
}
