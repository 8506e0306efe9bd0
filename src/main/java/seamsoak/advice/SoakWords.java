package seamsoak.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import seamsoak.billet.Billet;
import seamsoak.billet.Seen;
import seamsoak.billet.Step;
import seamsoak.unit.Length;
import seamsoak.unit.UnitSystem;

/** Says in sentences what a soak advice means for the smith. */
record SoakWords(Billet billet, SoakAdvice advice, UnitSystem units) {
  /** A measured line this much narrower than any carbon line can be is something else. */
  private static final double CLEARLY_NARROWER = 0.5;

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
    notCarbon().ifPresent(said::add);
    measured().ifPresent(said::add);
    narrower().ifPresent(said::add);
    said.add(
        "Try a test etch on a ground corner after the soak and before the rest: if a line is left"
            + " that this says should be gone, do not soak again. It is then not missing carbon.");
    return new SoakAdvice(
        advice.lines(),
        advice.options(),
        advice.recommended(),
        advice.clears(),
        advice.goneAlreadyPct(),
        advice.goneByScheduleAlonePct(),
        advice.withinLongestPct(),
        advice.samples(),
        advice.dominant(),
        advice.highestForgingC(),
        advice.burningC(),
        advice.refusalC(),
        advice.mostMinutes(),
        said);
  }

  /** How wide a carbon line must be by now; anything much finer is something else. */
  private Optional<String> notCarbon() {
    return advice.lines().stream()
        .filter(l -> l.narrowestMm().isPresent())
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
              .filter(l -> Sightings.isMeant(seen.get(), l.name(), l.step()))
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
