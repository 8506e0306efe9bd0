package seamsoak.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import java.util.function.Function;
import seamsoak.billet.Now;
import seamsoak.billet.Step;
import seamsoak.billet.file.ToRecord;
import seamsoak.billet.file.WorkBook;

/**
 * Finds out what is to be recorded: from the options, and where somebody can be asked by asking for
 * what they leave open.
 *
 * @param steps of the billet
 * @param book what is planned in it, and recorded already
 * @param questions empty where nobody can be asked
 * @param wrong that the options do not go together
 * @param fault what would be wrong with the file if this were written, if anything
 */
record RecordDialog(
    RecordOptions options,
    List<Step> steps,
    WorkBook book,
    Optional<Questions> questions,
    Function<String, RuntimeException> wrong,
    Function<ToRecord, Optional<String>> fault) {
  private static final String NO_DAY = "-";

  ToRecord wanted() {
    Step step = step();
    ToRecord said =
        new ToRecord(
            step,
            heat(step),
            options.how(),
            isEnded(step),
            options.came().orElseThrow(() -> wrong.apply(RecordOptions.CAME)),
            options.look().orElseThrow(() -> wrong.apply(RecordOptions.LOOKS)),
            Optional.ofNullable(options.on).map(String::strip));
    return questions.isEmpty() || options.sayHow() ? said : asked(said, questions.get());
  }

  /** Whether the whole step is done: by what is said, or since it was looked at later than now. */
  private boolean isEnded(Step step) {
    if (!options.onlySeen()) {
      return options.saysCame() || step.heats().isEmpty();
    }
    return Now.of(steps).map(RecordDialog::doneSteps).orElse(steps.size()) < step.mark().number();
  }

  /** How many steps are done to their end. */
  private static int doneSteps(Now now) {
    return now.step().mark().number() - (now.stepDone() ? 0 : 1);
  }

  /** The step that is meant; one that is not done if it is about work, the last done if not. */
  private Step step() {
    Optional<Integer> done = Now.of(steps).map(RecordDialog::doneSteps);
    Optional<Step> near =
        named(options.onlySeen() ? done.orElse(steps.size()) : done.orElse(0) + 1);
    int number =
        Optional.ofNullable(options.step)
            .or(() -> questions.map(q -> askStep(q, near)))
            .orElseThrow(
                () ->
                    wrong.apply(
                        "record needs --step N"
                            + near.map(
                                    s ->
                                        "; the "
                                            + (options.onlySeen() ? "last" : "next")
                                            + " is "
                                            + s.title())
                                .orElse("")));
    return named(number)
        .orElseThrow(
            () -> wrong.apply("there is no step " + number + "; the last is " + steps.size()));
  }

  private Optional<Step> named(int number) {
    return number >= 1 && number <= steps.size()
        ? Optional.of(steps.get(number - 1))
        : Optional.empty();
  }

  private int askStep(Questions q, Optional<Step> near) {
    String offered = near.map(s -> s.mark().number() + " " + s.name()).orElse("");
    return askNumber(q, "Step", offered, steps.size());
  }

  private static int askNumber(Questions q, String what, String offered, int most) {
    String answer =
        q.ask(
            what + " of " + most,
            offered,
            typed ->
                number(typed).filter(n -> n <= most).isPresent()
                    ? Optional.empty()
                    : Optional.of("It is a number from 1 to " + most));
    return number(answer).orElseThrow();
  }

  /** A number, perhaps with a word behind it, as it is offered. */
  private static Optional<Integer> number(String typed) {
    String digits = typed.replaceFirst("\\s.*", "");
    return digits.matches("[1-9][0-9]{0,3}")
        ? Optional.of(Integer.valueOf(digits))
        : Optional.empty();
  }

  private OptionalInt heat(Step step) {
    boolean ofHeat = options.heat != null || options.at != null || options.time != null;
    if (step.heats().isEmpty() && ofHeat) {
      throw wrong.apply(step.title() + " has no heats; --set says how it came out");
    }
    if (step.heats().isEmpty() || options.onlySeen() || options.onlyStep()) {
      return OptionalInt.empty();
    }
    int times = step.times();
    int number =
        Optional.ofNullable(options.heat)
            .or(() -> times == 1 ? Optional.of(1) : Optional.empty())
            .or(() -> questions.map(q -> askHeat(q, step)))
            .orElseThrow(
                () -> wrong.apply("record needs --heat M; " + step.title() + " has " + times));
    if (number > times) {
      throw wrong.apply(
          "there is no heat " + number + " of " + step.title() + "; the last is " + times);
    }
    return OptionalInt.of(number);
  }

  private int askHeat(Questions q, Step step) {
    int done = Now.of(steps).filter(now -> now.step() == step).map(Now::heats).orElse(0);
    String next = done < step.times() ? "" + (done + 1) : "";
    return askNumber(q, "Heat", next, step.times());
  }

  /** With how it went, what was planned on offer. */
  private ToRecord asked(ToRecord said, Questions q) {
    Step step = said.step();
    ToRecord all = said;
    if (said.heat().isPresent()) {
      int heat = said.heat().getAsInt();
      all = ask(q, all, "Temperature", book.planned(step, heat, "at"), w -> w::withHow, "at");
      all = ask(q, all, "Time", book.planned(step, heat, "for"), w -> w::withHow, "for");
    }
    if (said.heat().isEmpty() || said.heat().getAsInt() == step.times()) {
      for (String key : ToRecord.measured(step.kind())) {
        String what = key.substring(0, 1).toUpperCase(Locale.ROOT) + key.substring(1);
        all = ask(q, all, what, book.planned(step, key), w -> w::withCame, key);
      }
    }
    return all.on().isPresent() ? all : askDay(q, all);
  }

  private ToRecord ask(
      Questions q,
      ToRecord so,
      String what,
      Optional<String> planned,
      Function<ToRecord, BiFunction<String, String, ToRecord>> with,
      String key) {
    String offered = planned.orElse("");
    Function<String, ToRecord> taken =
        typed -> typed.equals(offered) ? so : with.apply(so).apply(key, typed);
    return taken.apply(q.ask(what, offered, typed -> fault.apply(taken.apply(typed))));
  }

  private ToRecord askDay(Questions q, ToRecord so) {
    Function<String, ToRecord> taken = typed -> typed.equals(NO_DAY) ? so : so.withDay(typed);
    return taken.apply(
        q.ask(
            "Day, " + NO_DAY + " for none",
            LocalDate.now().toString(),
            typed -> fault.apply(taken.apply(typed))));
  }
}
