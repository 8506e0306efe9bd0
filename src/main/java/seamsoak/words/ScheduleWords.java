package seamsoak.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.schedule.Coolant;
import seamsoak.schedule.Heater;
import seamsoak.schedule.Remark;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.StepKind;
import seamsoak.schedule.Task;
import seamsoak.schedule.demand.Conflict;
import seamsoak.unit.UnitSystem;

/** A schedule in one sentence, and each of its steps in some. */
public record ScheduleWords(ScheduleAdvice schedule, UnitSystem units) {
  private Amounts amounts() {
    return new Amounts(units);
  }

  /**
   * The heats in one sentence.
   *
   * @param clears whether the lines do
   */
  public List<String> answer(boolean clears) {
    List<String> all = new ArrayList<>();
    if (!clears) {
      all.add("No soak clears the lines within what is allowed; this is the schedule without one.");
    }
    all.addAll(told());
    return all;
  }

  /** The same where the soak has been told. */
  public List<String> told() {
    List<String> all = new ArrayList<>(unknownMakes());
    all.add(heats());
    if (schedule.blade().isEmpty()) {
      all.addAll(unhardened());
    }
    all.addAll(remarks(Remark.PlannedAnew.class));
    all.addAll(cladding());
    return all;
  }

  /** Which steels stay soft as they are meant to. */
  public List<String> cladding() {
    return remarks(Remark.SoftCladding.class);
  }

  private List<String> remarks(Class<? extends Remark> kind) {
    return schedule.remarks().stream()
        .filter(kind::isInstance)
        .map(new ScheduleRemarkWords(units)::says)
        .toList();
  }

  /** The heats in a sentence. */
  public String heats() {
    List<String> parts = new ArrayList<>();
    slowly().ifPresent(parts::add);
    schedule.steps().forEach(s -> brief(s).ifPresent(parts::add));
    return parts.isEmpty() ? "Nothing to do." : Sentence.capital(String.join(", ", parts)) + ".";
  }

  /** Stock of unknown make comes before all heats, since they may be those of another steel. */
  private List<String> unknownMakes() {
    UnknownMakeWords words = new UnknownMakeWords(units);
    return schedule.conflicts().stream()
        .filter(Conflict.UnknownMade.class::isInstance)
        .map(c -> words.briefly(((Conflict.UnknownMade) c).mayBe()))
        .toList();
  }

  /** A heat in a few words; of the cycles the last stands for all. */
  private Optional<String> brief(ScheduleAdvice.Step s) {
    String at = s.temperatureC().map(amounts()::heat).orElse("");
    long cycles = schedule.steps().stream().filter(o -> o.step().kind() == StepKind.REFINE).count();
    String words =
        switch (s.step().kind()) {
          case COOL_DOWN, GRIND, TEST_ETCH, SUB_ZERO -> "";
          case SOAK ->
              (s.task() instanceof Task.Soak t ? SoakAnswerWords.condition(t.soak().reason()) : "")
                  + "soak at "
                  + at
                  + " for "
                  + amounts().time(s.holdMinutes().orElse(0.0));
          case REFINE ->
              s.step().number() != 0 && s.step().number() < cycles
                  ? ""
                  : (cycles == 1 ? "one cycle at " : cycles + " cycles down to ") + at;
          case HARDEN ->
              "harden from "
                  + at
                  + schedule.blade().map(b -> " in " + b.quenchantName()).orElse("");
          case TEMPER -> s.step().number() > 1 ? "" : "temper twice at " + at + edge();
          case NORMALIZE, ANNEAL, STRESS_RELIEF, PRE_HEAT -> s.step().words() + " at " + at;
        };
    return Optional.of(words).filter(w -> !w.isEmpty());
  }

  /** A cool-down that is more than laying the billet aside. */
  private Optional<String> slowly() {
    return schedule.segments().stream()
        .filter(s -> s.step().kind() == StepKind.COOL_DOWN)
        .findFirst()
        .filter(s -> !s.cool().equals(Optional.of(Coolant.Plain.AIR)))
        .map(
            s ->
                s.in() == Heater.KILN
                    ? "from the last forging heat into the kiln at " + amounts().heat(s.toC())
                    : "bury it in dry vermiculite or ash after the last forging heat");
  }

  /** Why nothing is hardened. */
  private List<String> unhardened() {
    return schedule.conflicts().stream()
        .filter(Conflict::leavesSoft)
        .map(new ConflictWords(units)::said)
        .map(c -> "It is not hardened here: " + c.says() + ". " + Sentence.capital(c.todo()) + ".")
        .toList();
  }

  /** The hardness aimed at, to go on a sentence. */
  public String edge() {
    return schedule.blade().stream()
        .flatMap(b -> b.steels().stream().filter(q -> q.steel().equals(b.edge())))
        .findFirst()
        .map(q -> ", for about " + Amounts.number(q.temperedHrc(), 0) + " HRC")
        .orElse("");
  }

  /** What to do at a step, why, what to look for. */
  public List<String> step(ScheduleAdvice.Step s) {
    StepWords words = new StepWords(units);
    List<String> said = new ArrayList<>();
    s.refused().map(new StopWords(units)::says).ifPresent(r -> said.add("Refused. " + r));
    StepWords.Order task = words.said(s.task());
    said.add(task.doing() + ".");
    said.add("Why: " + task.why() + ".");
    words.checks(s.checks()).forEach(c -> said.add("Check: " + c + "."));
    return said;
  }

  /** Its name, where it is done and how long it is held. */
  public String title(ScheduleAdvice.Step s) {
    String hold =
        s.holdMinutes().map(m -> amounts().time(m) + " once the core is there").orElse("");
    String in = s.in() == Heater.BENCH ? "" : s.in().word();
    String both = in + (in.isEmpty() || hold.isEmpty() ? "" : ", ") + hold;
    return s.step().words() + (both.isEmpty() ? "" : " (" + both + ")");
  }

  /** What its steels do not agree on, a sentence or two each. */
  public List<String> conflicts() {
    ConflictWords words = new ConflictWords(units);
    return schedule.conflicts().stream()
        .map(c -> String.join(" ", words.said(c).inFull()))
        .toList();
  }
}
