package seamsoak.words;

import java.util.ArrayList;
import java.util.List;
import seamsoak.soak.SoakAdvice;
import seamsoak.soak.SoakAdvice.Recommended;
import seamsoak.unit.UnitSystem;

/** The answer on a soak: whether, where and how long. */
public record SoakAnswerWords(SoakAdvice soak, UnitSystem units) {
  /** Instead of a list of soaks. */
  public static final String NOWHERE =
      "At no temperature that the steels stand do the lines clear within 24 h.";

  private Amounts amounts() {
    return new Amounts(units);
  }

  /** What to do in one sentence, and why. */
  public List<String> answer() {
    List<String> all = new ArrayList<>(List.of(says()));
    soak.recommended()
        .filter(r -> r.minutes() > 0)
        .ifPresent(r -> all.add("Why: " + reason(r) + "."));
    return all;
  }

  /** What to do. */
  public String says() {
    if (soak.recommended().isEmpty()) {
      return "No soak within what is allowed (%s) clears the lines."
          .formatted(amounts().time(soak.mostMinutes()));
    }
    Recommended r = soak.recommended().get();
    if (r.minutes() == 0) {
      return "No soak needed: " + reason(r) + ".";
    }
    return (r.reason().seenFirst()
            ? "Test etch first; only if it shows a line, soak at %s for %s (%s)."
            : "Soak at %s for %s (%s).")
        .formatted(amounts().heat(r.temperatureC()), amounts().time(r.minutes()), band(r));
  }

  String reason(Recommended r) {
    return new SoakWords(units).reason(r.reason());
  }

  /** Between which minutes eight of ten cases lie. */
  String band(Recommended r) {
    if (soak.samples() == 0) {
      return "the likely case alone";
    }
    double low = Math.floor(r.minutesLow().orElse(0.0));
    return r.minutesHigh()
        .map(
            high -> {
              String to = amounts().time(Math.ceil(high));
              String from = amounts().time(low);
              return to.endsWith(" min") && high < 120
                  ? Math.round(low) + " to " + to
                  : from + " to " + to;
            })
        .orElse(amounts().time(low) + " to more than 24 h");
  }
}
