package seamsoak.words.fire;

import java.util.Optional;
import seamsoak.plan.Advice;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.StepKind;
import seamsoak.soak.SoakAdvice;
import seamsoak.state.Soaked;
import seamsoak.state.WorkReport;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;

/** A soak that comes after one that was done: what is meant in all, and what it is allowed. */
public record SoakedWords(UnitSystem units) {
  /** Nothing where none was done since the metal was last forged. */
  public Optional<String> says(Advice advice) {
    return advice.work().flatMap(WorkReport::soaked).map(s -> says(s, advice.soak()));
  }

  /** What a soak that follows another waits for; empty for all else. */
  public static String first(Advice advice, ScheduleAdvice.Step step) {
    return step.step().kind() == StepKind.SOAK
            && advice.work().flatMap(WorkReport::soaked).isPresent()
        ? "Only if an etch since the last soak shows a line. "
        : "";
  }

  private String says(Soaked soaked, SoakAdvice soak) {
    Amounts amounts = new Amounts(units);
    String most = amounts.stated(soak.mostMinutes());
    String all =
        soak.recommended()
            .map(SoakAdvice.Recommended::minutes)
            .filter(m -> m > 0)
            .map(
                m ->
                    " What is advised, where an etch still shows a line, comes on top: "
                        + amounts.time(soaked.minutes() + m)
                        + " in all.")
            .orElse("");
    return "Soaked since it was last forged: "
        + amounts.time(soaked.minutes())
        + ", at "
        + amounts.heat(soaked.hottestC())
        + " at most."
        + all
        + " The "
        + most
        + " allowed are for one soak, not for all together.";
  }
}
