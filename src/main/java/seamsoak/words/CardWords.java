package seamsoak.words;

import java.util.List;
import java.util.Optional;
import seamsoak.plan.Advice;
import seamsoak.soak.SoakAdvice.Recommended;
import seamsoak.unit.Temperature;
import seamsoak.unit.UnitSystem;

/** The answer in large letters, with one unit and the other below it. */
public record CardWords(Advice advice, UnitSystem units) {
  /** The steps of a card that is filled in by hand, with room between; common practice. */
  public static final List<String> USUAL_STEPS =
      List.of(
          "weld",
          "draw",
          "grind",
          "restack",
          "weld",
          "draw",
          "tile",
          "press",
          "soak",
          "normalize",
          "refine 1",
          "refine 2",
          "refine 3",
          "anneal",
          "stress relief",
          "harden",
          "temper 1",
          "temper 2");

  private boolean refused() {
    return !advice.hardStops().isEmpty();
  }

  private SoakAnswerWords soak() {
    return new SoakAnswerWords(advice.soak(), units);
  }

  private Optional<Recommended> recommended() {
    return advice.soak().recommended().filter(r -> r.minutes() > 0);
  }

  public String answer() {
    return refused() ? "Not to be done as it is written" : butForStops();
  }

  private String butForStops() {
    return recommended()
        .map(
            r ->
                "%s at %s for %s"
                    .formatted(
                        SoakAnswerWords.soak(r.reason()),
                        first(r.temperatureC()),
                        new Amounts(units).time(r.minutes())))
        .orElseGet(soak()::says);
  }

  /** The same temperature in the other unit, and the band. */
  public String second() {
    return refused()
        ? ""
        : recommended().map(r -> second(r.temperatureC()) + ". " + soak().plan(r)).orElse("");
  }

  public String why() {
    return refused()
        ? "But for that: " + Sentence.ended(butForStops())
        : recommended().map(r -> Sentence.capital(soak().reason(r)) + ".").orElse("");
  }

  /** In the shop's own unit. */
  public String first(double celsius) {
    return degrees(celsius, units == UnitSystem.METRIC ? UnitSystem.METRIC : UnitSystem.US);
  }

  /** In the other. */
  public String second(double celsius) {
    return degrees(celsius, units == UnitSystem.METRIC ? UnitSystem.US : UnitSystem.METRIC);
  }

  /** Such as {@code 1960 °F}. */
  public static String degrees(double celsius, UnitSystem unit) {
    return Temperature.ofCelsius(celsius).format(unit).replace(" ", " °");
  }
}
