package seamsoak.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import seamsoak.plan.Advice;
import seamsoak.schedule.Heater;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.ScheduleAdvice.Segment;
import seamsoak.schedule.StepKind;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;
import seamsoak.words.CardWords;
import seamsoak.words.ScheduleWords;
import seamsoak.words.Sentence;
import seamsoak.words.StageWords;
import seamsoak.words.StepWords;
import seamsoak.words.StopWords;

/**
 * What hangs at the forge: the answer, and one entry for each step of the schedule.
 *
 * @param stack its steels and size
 * @param stops why the work must not be done as written
 * @param caution the gravest of the soak, or of what comes first without one
 * @param answer in large letters
 * @param second the same temperature in the other unit, and the band
 * @param why the reason
 * @param heats of the file that may spoil the billet
 * @param conflicts what the steels do not agree on, and what to do
 * @param hardness what they end at, to go on a sentence; empty where nothing is hardened
 * @param cladding which steels stay soft as they are meant to
 * @param inShort the heats of the steps in a sentence
 * @param steps in order
 */
public record ShopCard(
    String stack,
    List<String> stops,
    String caution,
    String answer,
    String second,
    String why,
    List<String> heats,
    List<String> conflicts,
    String hardness,
    List<String> cladding,
    String inShort,
    List<Entry> steps) {

  /**
   * A step.
   *
   * @param id its anchor in the page
   * @param name such as {@code refine 1}
   * @param in where it is done, empty for the bench
   * @param refused why it must not be done as planned, empty if it may
   * @param cautions those that arise here first, worst first
   * @param repeated how many arose at an earlier step
   * @param temperature in the shop's unit, empty for work at the bench
   * @param other in the other unit
   * @param time how long
   * @param rise how long the rise takes, empty without one
   * @param doing what to do, in words
   * @param checks what to look for
   */
  public record Entry(
      String id,
      String name,
      String in,
      String refused,
      List<String> cautions,
      int repeated,
      String temperature,
      String other,
      String time,
      String rise,
      String doing,
      List<String> checks) {
    /** The one caution that has room on the card. */
    public Optional<String> gravest() {
      return cautions.stream().findFirst();
    }
  }

  public static ShopCard of(Advice advice, UnitSystem units) {
    // the answer is the soak where there is one, so its gravest caution stands above it
    String caution =
        advice.schedule().steps().stream()
            .sorted(Comparator.comparing(s -> s.step().kind() != StepKind.SOAK))
            .flatMap(s -> s.cautions().stream())
            .findFirst()
            .map(c -> c.said(units))
            .orElse("");
    CardWords words = new CardWords(advice, units);
    ScheduleWords schedule = new ScheduleWords(advice.schedule(), units);
    return new ShopCard(
        StageWords.stack(advice.steels(), advice.history().get(0), units),
        advice.hardStops().stream().map(new StopWords(units)::says).toList(),
        caution,
        words.answer(),
        words.second(),
        words.why(),
        StageWords.heats(advice.history(), true, units),
        schedule.conflicts(),
        schedule.edge(),
        schedule.cladding(),
        schedule.heats(),
        entries(advice, caution, words));
  }

  private static List<Entry> entries(Advice advice, String above, CardWords card) {
    Set<String> said = new LinkedHashSet<>(List.of(above));
    List<Entry> entries = new ArrayList<>();
    for (ScheduleAdvice.Step step : advice.schedule().steps()) {
      double rise =
          advice.schedule().segments().stream()
              .filter(s -> s.step().equals(step.step()) && s.kind() == Segment.Kind.RISE)
              .mapToDouble(Segment::minutes)
              .sum();
      entries.add(entry(entries.size() + 1, step, rise, said, card));
    }
    return List.copyOf(entries);
  }

  private static Entry entry(
      int number, ScheduleAdvice.Step step, double rise, Set<String> said, CardWords card) {
    UnitSystem units = card.units();
    Amounts amounts = new Amounts(units);
    List<String> cautions = step.cautions().stream().map(c -> c.said(units)).toList();
    List<String> fresh = cautions.stream().filter(c -> !said.contains(c)).toList();
    StepWords words = new StepWords(units);
    int again = cautions.size() - fresh.size();
    said.addAll(cautions);
    return new Entry(
        "step-" + number,
        step.step().words(),
        step.in() == Heater.BENCH ? "" : step.in().word(),
        step.refused().map(new StopWords(units)::says).orElse(""),
        fresh,
        again,
        step.temperatureC().map(card::first).orElse(""),
        step.temperatureC().map(card::second).orElse(""),
        step.holdMinutes().map(amounts::time).orElse(""),
        rise > 0 ? amounts.time(rise) : "",
        Sentence.capital(words.said(step.task()).doing()),
        words.checks(step.checks()));
  }
}
