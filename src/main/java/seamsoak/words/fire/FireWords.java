package seamsoak.words.fire;

import java.util.Locale;
import java.util.Optional;
import seamsoak.billet.Heat;
import seamsoak.billet.Step;
import seamsoak.billet.Twist;
import seamsoak.plan.ToDo;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;
import seamsoak.words.CardWords;
import seamsoak.words.Sentence;

/** What is said at the fire of one thing to do: short, to be read from an arm's length. */
public record FireWords(UnitSystem units) {
  public static final String NO_SEAM =
      "No seam is there that could be told: tap nearer to one, or take it from the list.";
  public static final String TO_MEND =
      "Something in this billet has to be mended on the bench before it can go to the fire.";
  public static final String NOTHING_TO_LOOK_AT =
      "Nothing of this billet is done yet that an etch could show.";
  public static final String PLANNING = "The rest is being planned anew.";
  public static final String LIKELY =
      "By the likely case so far; how sure that is comes in a moment.";

  public static final String NO_LOG = "There is no log yet: choose a file.";

  public static String recordedAlready(String title) {
    return title
        + " is recorded already: tick that it is to be written over, or choose another heat";
  }

  private Amounts amounts() {
    return new Amounts(units);
  }

  /** Such as {@code Step 2 draw, heat 3 of 6}. */
  public String title(ToDo work) {
    if (work instanceof ToDo.OfFile f) {
      return Sentence.capital(f.step().title())
          + (f.step().times() > 1 ? ", heat " + f.heat() + " of " + f.step().times() : "");
    }
    ToDo.Advised a = (ToDo.Advised) work;
    return Sentence.capital(a.first().step().words());
  }

  /** In a list of what comes later. */
  public String brief(ToDo work) {
    if (work instanceof ToDo.OfFile f) {
      int heats = f.step().times();
      return f.step().title()
          + (heats == 0 ? "" : ", " + (heats == 1 ? "1 heat" : heats + " heats"))
          + (f.step().heats().isEmpty()
              ? ""
              : " at " + f.step().heats().get(0).at().format(shown()));
    }
    ToDo.Advised a = (ToDo.Advised) work;
    return a.first().step().kind().word()
        + (a.steps().size() == 1 ? "" : ", " + a.steps().size() + " times")
        + a.first().temperatureC().map(c -> " at " + first(c)).orElse("");
  }

  /** What to do at a step of the file. */
  public String doing(ToDo.OfFile work) {
    Step step = work.step();
    return switch (step.kind()) {
      case WELD ->
          work.heat() == 1 ? "Weld: the faces join in this heat." : "Weld: they are joined by now.";
      case DRAW ->
          "Draw it to %s thick by %s wide%s"
              .formatted(
                  ((Step.Draw) step).thickness().format(shown()),
                  ((Step.Draw) step).width().format(shown()),
                  over(work));
      case PRESS ->
          "Press it to " + ((Step.Press) step).thickness().format(shown()) + " thick" + over(work);
      case ROLL ->
          "Roll it to " + ((Step.Roll) step).thickness().format(shown()) + " thick" + over(work);
      case GRIND ->
          "Grind " + ((Step.Grind) step).depth().format(shown()) + " off every outer face.";
      case RESTACK ->
          "Cut it and stack it %d across by %d high."
              .formatted(((Step.Restack) step).across(), ((Step.Restack) step).high());
      case TILE ->
          "Cut slices %s thick at %s and lay them as tiles."
              .formatted(
                  ((Step.Tile) step).slice().format(shown()),
                  Amounts.plain(((Step.Tile) step).angle().degrees()) + " degrees");
      case UNJACKET ->
          "Grind the jacket off and %s of what lies below."
              .formatted(((Step.Unjacket) step).depthTaken().format(shown()));
      case TWIST -> "Twist it " + Amounts.plain(((Twist) step).turns()) + " turns" + over(work);
      case SOAK -> "Hold it in the fire; nothing else.";
      case ANNEAL, NORMALIZE, REFINE, RELIEVE, TEMPER -> "Heat and hold it, then let it cool.";
      case HARDEN -> "Hold it, then quench in " + ((Step.Harden) step).in().kind() + ".";
      case COOL -> "Let it cool.";
    };
  }

  private static String over(ToDo.OfFile work) {
    int left = work.step().times() - work.heat();
    return left == 0 ? ", in this heat." : ", in this heat and " + left + " more.";
  }

  /** What comes after it. */
  public String then(ToDo work, Optional<ToDo> next) {
    boolean again = work instanceof ToDo.OfFile f && f.heat() < f.step().times();
    if (again) {
      ToDo.OfFile f = (ToDo.OfFile) work;
      return "Then heat " + (f.heat() + 1) + " of " + f.step().times() + ".";
    }
    if (work instanceof ToDo.Advised a && a.steps().size() > 1) {
      return "Then " + a.steps().get(1).step().words() + ".";
    }
    return next.map(n -> "Then " + brief(n) + ".").orElse("Then it is done.");
  }

  /** How hot a stay in the fire of the file is planned, C. */
  public static Optional<Heat> planned(ToDo.OfFile work) {
    return work.heat() == 0 ? Optional.empty() : Optional.of(work.step().heat(work.heat()));
  }

  /** In the shop's own unit. */
  public String first(double celsius) {
    return CardWords.degrees(celsius, shown());
  }

  /** In the other. */
  public String second(double celsius) {
    return CardWords.degrees(
        celsius, units == UnitSystem.METRIC ? UnitSystem.US : UnitSystem.METRIC);
  }

  /** One unit at a time: there is no room for two in large letters. */
  public UnitSystem shown() {
    return units == UnitSystem.METRIC ? UnitSystem.METRIC : UnitSystem.US;
  }

  public String time(double minutes) {
    return amounts().stated(minutes);
  }

  /** How long it takes to come up, where that is told. */
  public static String rise(ScheduleAdvice advice, ScheduleAdvice.Step step, UnitSystem units) {
    double rise =
        advice.segments().stream()
            .filter(s -> s.step().equals(step.step()))
            .filter(s -> s.kind() == ScheduleAdvice.Segment.Kind.RISE)
            .mapToDouble(ScheduleAdvice.Segment::minutes)
            .sum();
    return rise > 0 ? new Amounts(units).time(rise) + " to come up" : "";
  }

  /** How a stay in the fire went otherwise than planned, or was said to. */
  public static String held(String at, String time) {
    return (at.isEmpty() ? "the planned heat" : at)
        + " for "
        + (time.isEmpty() ? "the planned time" : time);
  }

  /** Two people entered one thing. */
  public static String twice(String title, String theirs, String mine) {
    return Sentence.capital(title)
        + " is entered already: "
        + theirs
        + ". What you sent: "
        + mine
        + ". Nothing was changed.";
  }

  /** That the plan is another than the one that was on the page. */
  public static final String OTHER_PLAN =
      "The plan has changed since that page was shown, so nothing was entered. Here it is as it is"
          + " now.";

  public static String otherBillet(String meant, String here) {
    return "That was meant for " + meant + ", and this is " + here + ": nothing was entered.";
  }

  public static final String ETCH_NOW = "What would tell most: an etch now, as it has cooled.";

  /** Minutes and seconds, with a plus beyond the end. */
  public static String clock(long millis) {
    long seconds = (Math.abs(millis) + 999) / 1000;
    return (millis < 0 ? "+" : "")
        + (seconds >= 3600 ? seconds / 3600 + ":" : "")
        + String.format(
            Locale.ROOT,
            seconds >= 3600 ? "%02d:%02d" : "%d:%02d",
            seconds / 60 % 60,
            seconds % 60);
  }

  /** What was tapped on the drawing. */
  public static String tapped(String seam) {
    return "Tapped: " + seam + ".";
  }
}
