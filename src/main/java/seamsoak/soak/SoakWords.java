package seamsoak.soak;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import seamsoak.billet.Billet;
import seamsoak.billet.Seen;
import seamsoak.billet.Step;
import seamsoak.state.CrossingReport;
import seamsoak.state.LineReport;
import seamsoak.unit.Length;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;
import seamsoak.unit.UnitSystem;

/** Says in sentences what a soak advice means for the smith. */
record SoakWords(Billet billet, SoakAdvice advice, UnitSystem units) {
  /** A measured line this much narrower than any carbon line can be is something else. */
  private static final double CLEARLY_NARROWER = 0.5;

  /** Share of the histories that may be left out without a word. */
  private static final double MOST_LEFT_OUT = 0.05;

  SoakAdvice withAdvice(List<String> seen, List<String> remedies) {
    List<String> said = new ArrayList<>(seen);
    if (advice.recommended().isEmpty()) {
      said.add(
          "No soak within what is allowed clears the lines by the middle estimate"
              + advice
                  .withinLongestPct()
                  .map(
                      p ->
                          String.format(
                              Locale.ROOT,
                              "; the hottest allowed clears them in %.0f %% of the possible"
                                  + " histories.",
                              p))
                  .orElse("."));
    }
    said.addAll(remedies);
    said.add(
        advice.samples() == 0
            ? "No possible histories were asked for, so how sure this is cannot be said."
            : String.format(
                Locale.ROOT,
                "The lines are gone before any soak in %.0f %% of %d possible histories, and after"
                    + " the normalizing and refining cycles alone in %.0f %%.",
                advice.goneAlreadyPct().orElseThrow(),
                advice.samples(),
                advice.goneByScheduleAlonePct().orElseThrow()));
    lastPlace().ifPresent(said::add);
    leftOut().ifPresent(said::add);
    if (billet.visible().width().isPresent()) {
      said.add(
          "The width in \"visible\" decides no more: how wide a line is counts in its contrast.");
    }
    notCarbon().ifPresent(said::add);
    measured().ifPresent(said::add);
    narrower().ifPresent(said::add);
    said.add(
        "Try a test etch on a ground corner after the soak and before the rest: if a line is left"
            + " that this says should be gone, do not soak again. It is then not missing carbon.");
    return advice.saying(said);
  }

  /** Where a line stays longest, and how long beside it. */
  private Optional<String> lastPlace() {
    Optional<CrossingReport> crossing =
        advice.crossings().stream()
            .filter(CrossingReport::visible)
            .max(Comparator.comparingDouble(c -> minutes(c.minutes())));
    Optional<LineReport> line =
        advice.lines().stream()
            .filter(LineReport::visible)
            .max(Comparator.comparingDouble(l -> minutes(l.minutes())));
    boolean last =
        minutes(crossing.flatMap(CrossingReport::minutes))
            >= line.flatMap(LineReport::minutes).orElse(0.0);
    return crossing
        .filter(c -> last)
        .map(
            c ->
                "Last to clear is where "
                    + c.first()
                    + " cross "
                    + c.second()
                    + ": "
                    + told(c.minutes())
                    + " at "
                    + Temperature.ofCelsius(advice.clearedAtC()).format(units)
                    + "; "
                    + line.map(l -> "between the crossings " + l.name() + ", " + told(l.minutes()))
                        .orElse("between the crossings no line shows")
                    + ".");
  }

  private static double minutes(Optional<Double> taken) {
    return taken.orElse(Double.POSITIVE_INFINITY);
  }

  private String told(Optional<Double> taken) {
    return taken.map(m -> TimeSpan.ofMinutes(Math.ceil(m)).format(units)).orElse("more than 24 h");
  }

  /** A history that cannot be walked counts as one that was not; many are worth a word. */
  private Optional<String> leftOut() {
    int asked = advice.samples() + advice.samplesLeftOut();
    return advice.samplesLeftOut() > MOST_LEFT_OUT * asked
        ? Optional.of(
            advice.samplesLeftOut()
                + " of "
                + asked
                + " possible histories cannot be walked to the end (the metal would be scaled or"
                + " ground away) and are left out.")
        : Optional.empty();
  }

  /** How wide a carbon line must be by now; anything much finer is something else. */
  private Optional<String> notCarbon() {
    return advice.lines().stream()
        .filter(l -> l.narrowestMm().isPresent() && !l.boundary())
        .min(Comparator.comparingDouble(l -> l.narrowestMm().orElseThrow()))
        .map(
            l ->
                "A line of missing carbon is at least "
                    + Length.ofMillimetres(l.narrowestMm().orElseThrow()).format(units)
                    + " wide on the face by now ("
                    + l.name()
                    + "). A hair-thin bright line is nickel, arsenic or copper brought up by scale,"
                    + " or oxide: it will not soak out, so stop soaking.");
  }

  /** A line that the smith measured and that is too fine for carbon. */
  private Optional<String> measured() {
    for (Step step : billet.steps()) {
      Optional<Seen> seen = step.mark().seen();
      if (seen.isEmpty() || seen.get().width().isEmpty()) {
        continue;
      }
      double millimetres = seen.get().width().get().millimetres();
      Optional<LineReport> line =
          advice.lines().stream()
              .filter(l -> Sightings.isMeant(seen.get(), l.kind(), l.step()))
              .filter(
                  l ->
                      l.narrowestMm().isPresent()
                          && millimetres < CLEARLY_NARROWER * l.narrowestMm().get())
              .findFirst();
      if (line.isPresent()) {
        return Optional.of(
            "The line seen after "
                + step.title()
                + ", "
                + seen.get().width().get().format(units)
                + " wide, is too fine to be missing carbon.");
      }
    }
    return Optional.empty();
  }

  private Optional<String> narrower() {
    String measure =
        switch (advice.dominant()) {
          case "temperature of the fire" -> "a thermocouple beside the work in every heat";
          case "times in the fire" -> "a clock: write down how long each heat stays in the fire";
          case "ground depths" -> "measure the bar before and after each grinding";
          case "cover of the faces" -> "break open and etch one test weld made the same way";
          case "dip that shows" -> "a test etch now: it shows which of the lines you can see";
          case "carbon of the steels" -> "a mill certificate for the steels";
          case "breadth that the eye compares" ->
              "a test etch now: it shows which of the lines you can see";
          case "scaling" -> "measure the bar before and after one long heat";
          default -> "";
        };
    return measure.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "What sways the minutes most: "
                + advice.dominant()
                + ". What would narrow the band: "
                + measure
                + ".");
  }
}
