package seamsoak.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.billet.Billet;
import seamsoak.billet.Can;
import seamsoak.billet.Coating;
import seamsoak.billet.Step;
import seamsoak.property.hardening.Quenchant;
import seamsoak.state.BathAtHand;
import seamsoak.unit.Temperature;
import seamsoak.unit.UnitSystem;

/** Plans so dangerous that a caution is not enough: they are answered, but refused. */
public final class HardStop {
  /**
   * The bath's alarm: 50 F below the flash point, an interval of 28 C (29 CFR 1910.126(a)(1)-(2),
   * whose printed 10 C converts the figure as a reading).
   */
  private static final double BELOW_FLASH_KELVIN = 28;

  /**
   * What a blade at 815 C warms 8 L of oil per kg by: 0.56 MJ/kg over 8 L of 0.87 kg/L and 2.0
   * kJ/kg/K, the oil's figures from memory.
   */
  private static final double BLADE_WARMS_KELVIN = 40;

  /** Nitrate salt is never heated above this, C: California Title 8, section 5188. */
  private static final double NITRATE_CELSIUS = 649;

  private HardStop() {}

  /** Why the history of a billet must not be carried out as written, empty if it may. */
  public static List<String> history(Billet billet) {
    List<String> stops = new ArrayList<>();
    for (Step step : billet.steps()) {
      Optional<String> why = Optional.empty();
      if (step instanceof Step.Tile t && t.jacket().isPresent()) {
        why = jacket(t.jacket().get().coatingTaken());
      } else if (step instanceof Step.Weld w && w.can().isPresent()) {
        why = can(w.can().get());
      }
      why.ifPresent(s -> stops.add(step.title() + ": " + s));
    }
    return List.copyOf(stops);
  }

  /**
   * Why a jacket of such sheet must not go into the fire, as one sentence; empty when it may. Paint
   * and an unknown coating are left to the cautions.
   */
  public static Optional<String> jacket(Coating coating) {
    return switch (coating) {
      case GALVANIZED ->
          Optional.of(
              "The jacket is galvanized: its zinc turns to poisonous fume in the fire, so this"
                  + " jacket is refused; take plain uncoated steel.");
      case PLATED ->
          Optional.of(
              "The jacket is plated: zinc, cadmium or chromium turn to poisonous fume in the fire,"
                  + " and cadmium can kill, so this jacket is refused; take plain uncoated steel.");
      case NONE, PAINTED, UNKNOWN -> Optional.empty();
    };
  }

  /**
   * Why a can must not be heated: something in it makes gas, and no hole is known to let it out.
   */
  public static Optional<String> can(Can can) {
    boolean gas =
        switch (can.insideTaken()) {
          case DAMP, OILY, PAINTED -> true;
          case BAKED_DRY, UNKNOWN -> false;
        };
    return gas && can.ventTaken() != Can.Vent.HOLE
        ? Optional.of(
            "The can is "
                + (can.insideTaken() == Can.Inside.DAMP
                    ? "damp"
                    : can.insideTaken() == Can.Inside.OILY ? "oily" : "painted")
                + " inside and has no vent hole that is known of: gas may burst it like a bomb, so"
                + " it is refused; bake what is in it dry, free of oil and paint, or drill a hole"
                + " facing away from people.")
        : Optional.empty();
  }

  /** Why a bath must not be used, as one sentence; empty when it may. */
  public static Optional<String> bath(BathAtHand known, UnitSystem units) {
    Quenchant q = known.quenchant();
    double celsius = known.celsius();
    if (q.kind() == Quenchant.Kind.SALT && celsius > NITRATE_CELSIUS) {
      return Optional.of(
          "The salt is at "
              + show(celsius, units)
              + ": low-temperature salt is nitrate, which above "
              + show(NITRATE_CELSIUS, units)
              + " breaks up and may explode, so this bath is refused; hold it between "
              + show(160, units)
              + " and "
              + show(290, units)
              + ".");
    }
    if (q.kind() != Quenchant.Kind.OIL) {
      return Optional.empty();
    }
    Optional<Double> flash = known.bath().flash().map(Temperature::celsius);
    double point = flash.orElseGet(() -> q.flashC().orElse(Double.POSITIVE_INFINITY));
    return celsius + BLADE_WARMS_KELVIN > point - BELOW_FLASH_KELVIN
        ? Optional.of(
            "The oil is at "
                + show(celsius, units)
                + ", a blade warms it by about "
                + new seamsoak.unit.TemperatureDifference(BLADE_WARMS_KELVIN).format(units)
                + ", and "
                + (flash.isPresent() ? "it flashes at " : "such oil flashes at about ")
                + show(point, units)
                + ": that is too near, so this bath is refused; let it cool, or take oil with a"
                + " higher flash point.")
        : Optional.empty();
  }

  /** Why a blade must not be brought to heat in nitrate salt. */
  public static Optional<String> nitrateHeat(double celsius, UnitSystem units) {
    return celsius > NITRATE_CELSIUS
        ? Optional.of(
            "Only nitrate salt is at hand to heat in, and "
                + show(celsius, units)
                + " is above the "
                + show(NITRATE_CELSIUS, units)
                + " at which it must never be: it may explode, so this step is refused; use a kiln,"
                + " a forge or neutral salt made for it.")
        : Optional.empty();
  }

  private static String show(double celsius, UnitSystem units) {
    return Temperature.ofCelsius(celsius).format(units);
  }
}
