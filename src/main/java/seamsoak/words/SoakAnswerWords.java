package seamsoak.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import seamsoak.billet.Seen;
import seamsoak.soak.SoakAdvice;
import seamsoak.soak.SoakAdvice.Evidence;
import seamsoak.soak.SoakAdvice.Recommended;
import seamsoak.soak.SoakAdvice.TestEtch;
import seamsoak.soak.SoakNote;
import seamsoak.soak.SoakReason;
import seamsoak.unit.UnitSystem;

/** The answer on a soak: whether, where and how long. */
public record SoakAnswerWords(SoakAdvice soak, UnitSystem units) {
  /** Instead of a list of soaks. */
  public static final String NOWHERE =
      "At no temperature that the steels stand do the lines clear within 24 h.";

  private static final String[] TENTHS = {
    "none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "all"
  };

  private Amounts amounts() {
    return new Amounts(units);
  }

  /** What to do, how sure it is, what a test etch can say, and why. */
  public List<String> answer() {
    List<String> all = new ArrayList<>(brief());
    soaks().ifPresent(r -> all.add("Why: " + reason(r) + "."));
    return all;
  }

  /** The same without the reason. */
  public List<String> brief() {
    List<String> all = new ArrayList<>(List.of(says()));
    soaks().map(this::plan).ifPresent(all::add);
    soak.advice().stream()
        .filter(n -> n instanceof SoakNote.SeenWeighs || n instanceof SoakNote.TooFine)
        .map(new SoakWords(units)::note)
        .forEach(all::add);
    testEtch().ifPresent(all::add);
    return all;
  }

  private Optional<Recommended> soaks() {
    return soak.recommended().filter(r -> r.minutes() > 0);
  }

  /** What to do. */
  public String says() {
    if (soak.notCarbon()) {
      return "Do not soak: what you saw is most likely not missing carbon.";
    }
    if (soak.recommended().isEmpty()) {
      return "No soak within what is allowed (%s) clears the lines."
          .formatted(amounts().time(soak.mostMinutes()));
    }
    Recommended r = soak.recommended().get();
    if (r.minutes() == 0) {
      return "No soak needed: " + reason(r) + ".";
    }
    return "%s at %s for %s."
        .formatted(soak(r.reason()), amounts().heat(r.temperatureC()), amounts().time(r.minutes()));
  }

  /** At once, or only if an etch shows a line: such as {@code Soak}, heat and time to follow. */
  public static String soak(SoakReason why) {
    return why.first()
        .map(
            etch ->
                etch == Seen.Etched.AS_COOLED
                    ? "Test etch first; only if it shows a line, soak"
                    : "Go on without a soak; only " + condition(why) + "soak")
        .orElse("Soak");
  }

  /** The same in fewest words, before the soak; nothing where it is to be made at once. */
  public static String condition(SoakReason why) {
    return why.first()
        .map(
            etch ->
                switch (etch) {
                  case AS_COOLED -> "if a test etch shows a line, ";
                  case ANNEALED -> "if an etch after the anneal shows a line, ";
                  case HARDENED -> "if the hardened blade shows a line, ";
                })
        .orElse("");
  }

  /** Why. */
  public String reason(Recommended r) {
    return new SoakWords(units).reason(r.reason());
  }

  /** In how many such billets how long does; nothing where no cases were tried. */
  public String plan(Recommended r) {
    if (r.clearsPct().isEmpty()) {
      return "That is the likely case alone.";
    }
    double half = Math.ceil(r.minutesHalf().orElse(Double.POSITIVE_INFINITY));
    String sure = tenths(Math.floor(r.clearsPct().get() / 10 + 0.05));
    double without = Math.round(soak.goneByScheduleAlonePct().orElse(0.0) / 10);
    String none =
        without >= 1 && half > 0
            ? " In " + tenths(without) + " the blade comes clean without."
            : "";
    if (half <= 0) {
      return Sentence.capital(tenths(Math.max(5, without)))
          + " such billets come clean without; with that soak "
          + sure
          + " do.";
    }
    return (half < r.minutes()
            ? "%s will do in half of such billets, %s in %s."
                .formatted(amounts().time(half), amounts().time(r.minutes()), sure)
            : "That does in " + sure + " such billets.")
        + none;
  }

  /** Such as {@code nine of ten}. */
  private static String tenths(double tenths) {
    return TENTHS[(int) Math.max(0, Math.min(10, tenths))] + " of ten";
  }

  /** What a test etch now can tell, and what it cannot; nothing where no soak is asked for. */
  private Optional<String> testEtch() {
    boolean none = soak.notCarbon() || soak.recommended().filter(r -> r.minutes() == 0).isPresent();
    return none || soaks().filter(r -> r.reason().later()).isPresent()
        ? Optional.empty()
        : Stream.of(soak.testEtch().map(this::says), nextLook())
            .flatMap(Optional::stream)
            .reduce((a, b) -> a + " " + b);
  }

  /** Which other look would tell more than one at the steel as it has cooled. */
  private Optional<String> nextLook() {
    return soak.evidence()
        .flatMap(Evidence::nextLook)
        .filter(s -> s == Seen.Etched.ANNEALED)
        .map(s -> "An etch after an anneal would tell most of the blade.");
  }

  private String says(TestEtch t) {
    double shows = Math.round(t.showsPct() / 10);
    String clean = " blades come clean without a soak";
    if (shows <= 0) {
      return "A test etch now shows nothing, and says little of the blade.";
    }
    return shows >= 10
        ? "A test etch now surely shows a line."
        : "A test etch now shows a line in "
            + tenths(shows)
            + ": if it shows none, "
            + tenths(Math.round(t.cleanIfNothingPct().orElse(0.0) / 10))
            + clean
            + ", "
            + "if it shows one, "
            + tenths(Math.round(t.cleanIfSomethingPct().orElse(0.0) / 10))
            + ".";
  }
}
