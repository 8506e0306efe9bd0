package seamsoak.soak;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.Shop;
import seamsoak.billet.Step;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.LineVisibility;
import seamsoak.data.Fault;
import seamsoak.unit.Length;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;
import seamsoak.unit.UnitSystem;

/** What would make a billet come clear that no allowed soak clears; each answer is computed. */
record Remedies(Billet billet, Shop shop, LineVisibility visibility, UnitSystem units) {
  private static final double DEEPER_METRES = 0.25e-3;
  private static final double SHORTER = 0.6;
  private static final double THINNER = 0.7;

  List<String> at(double celsius) {
    List<String> all = new ArrayList<>();
    Assumptions a = shop.assumptions();
    boolean grinds =
        billet.steps().stream()
            .anyMatch(
                s ->
                    s instanceof Step.Grind
                        || (s instanceof Step.Tile t && t.grindTaken().metres() > 0));
    if (grinds) {
      deeper(a)
          .ifPresent(
              piece ->
                  all.add(
                      says(
                          "Grinding "
                              + new Length(DEEPER_METRES).format(units)
                              + " deeper before each closing next time",
                          seconds(piece, celsius),
                          celsius)));
    } else {
      all.add("Grinding the faces to clean metal before closing them, next time, comes first.");
    }
    all.add(
        says(
            "Six tenths of the time in the fire next time",
            seconds(end(a.withTimeFactor(a.timeFactor() * SHORTER)), celsius),
            celsius));
    Workpiece now = end(a);
    all.add(
        says(
            "Drawing the billet to seven tenths of its thickness before the soak",
            seconds(now.drawnThinner(THINNER), celsius),
            celsius));
    return all;
  }

  /** Ground deeper; empty where the bar has not so much to give. */
  private Optional<Workpiece> deeper(Assumptions a) {
    try {
      return Optional.of(end(a.withGrindingOff(a.grindingMetresOff() + DEEPER_METRES)));
    } catch (Fault tooThin) {
      return Optional.empty();
    }
  }

  private Workpiece end(Assumptions a) {
    Shop other = new Shop(shop.correlations(), a, shop.resolution());
    return Clearing.after(billet, other, visibility).piece();
  }

  private OptionalDouble seconds(Workpiece piece, double celsius) {
    return Clearing.of(piece, visibility, shop).secondsAt(celsius + 273.15);
  }

  private String says(String what, OptionalDouble seconds, double celsius) {
    String at = Temperature.ofCelsius(celsius).format(units);
    if (seconds.orElse(Double.POSITIVE_INFINITY) > Clearing.LONGEST_SECONDS) {
      return what + " would still leave more than 24 h at " + at + ".";
    }
    double minutes = Math.ceil(seconds.getAsDouble() / 60);
    return minutes == 0
        ? what + " would leave no line to clear."
        : what + " would leave " + TimeSpan.ofMinutes(minutes).format(units) + " at " + at + ".";
  }
}
