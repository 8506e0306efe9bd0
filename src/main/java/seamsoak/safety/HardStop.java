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
import seamsoak.state.HeatRisk;
import seamsoak.unit.Temperature;

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
  public static final double NITRATE_CELSIUS = 649;

  /** A quench bath of nitrate salt is kept from here to {@link #NITRATE_BATH_HIGH_CELSIUS}. */
  public static final double NITRATE_BATH_LOW_CELSIUS = 160;

  public static final double NITRATE_BATH_HIGH_CELSIUS = 290;

  private HardStop() {}

  /**
   * What in the history of a billet must not be carried out as written.
   *
   * @param risks of its heats, for the stack and then for each step
   */
  public static List<Stop> history(Billet billet, List<List<HeatRisk>> risks) {
    List<Stop> stops = new ArrayList<>();
    for (Step step : billet.steps()) {
      for (HeatRisk risk : risks.get(step.mark().number())) {
        Optional.of(risk)
            .filter(HeatRisk::isRefused)
            .flatMap(HardStop::heat)
            .ifPresent(d -> stops.add(new Stop(step.title(), d)));
      }
      Optional<Danger> danger = Optional.empty();
      if (step instanceof Step.Tile t && t.jacket().isPresent()) {
        danger = jacket(t.jacket().get().coatingTaken());
      } else if (step instanceof Step.Weld w && w.can().isPresent()) {
        danger = can(w.can().get());
      }
      danger.ifPresent(d -> stops.add(new Stop(step.title(), d)));
    }
    return List.copyOf(stops);
  }

  private static Optional<Danger> heat(HeatRisk risk) {
    return switch (risk.kind()) {
      case MELTS -> Optional.of(new Danger.Melts(risk.steel(), risk.celsius(), risk.limitC()));
      case NO_WELD -> Optional.of(new Danger.NoWeld(risk.celsius(), risk.limitC()));
      case MAY_BURN, NO_TEMPER, COARSENS, COLD_TO_WELD, COLD_TO_FORGE, ABOVE_FORGING ->
          Optional.empty();
    };
  }

  /**
   * Why a jacket of such sheet must not go into the fire; empty when it may. Paint and an unknown
   * coating are left to the cautions.
   */
  public static Optional<Danger> jacket(Coating coating) {
    return switch (coating) {
      case GALVANIZED, PLATED -> Optional.of(new Danger.CoatedJacket(coating));
      case NONE, PAINTED, UNKNOWN -> Optional.empty();
    };
  }

  /**
   * Why a can must not be heated: something in it makes gas, and no hole is known to let it out.
   */
  public static Optional<Danger> can(Can can) {
    boolean gas =
        switch (can.insideTaken()) {
          case DAMP, OILY, PAINTED -> true;
          case BAKED_DRY, UNKNOWN -> false;
        };
    return gas && can.ventTaken() != Can.Vent.HOLE
        ? Optional.of(new Danger.SealedCan(can.insideTaken()))
        : Optional.empty();
  }

  /** Why a bath must not be used; empty when it may. */
  public static Optional<Danger> bath(BathAtHand known) {
    Quenchant q = known.quenchant();
    double celsius = known.celsius();
    if (q.kind() == Quenchant.Kind.SALT && celsius > NITRATE_CELSIUS) {
      return Optional.of(new Danger.HotSalt(celsius));
    }
    if (!q.kind().isOil()) {
      return Optional.empty();
    }
    Optional<Double> flash = known.bath().flash().map(Temperature::celsius);
    double point = flash.orElseGet(() -> q.flashC().orElse(Double.POSITIVE_INFINITY));
    return celsius + BLADE_WARMS_KELVIN > point - BELOW_FLASH_KELVIN
        ? Optional.of(new Danger.HotOil(celsius, BLADE_WARMS_KELVIN, point, flash.isPresent()))
        : Optional.empty();
  }

  /** Why a blade must not be brought to heat in nitrate salt; empty when it may. */
  public static Optional<Danger> nitrateHeat(double celsius) {
    return celsius > NITRATE_CELSIUS
        ? Optional.of(new Danger.NitrateHeat(celsius))
        : Optional.empty();
  }
}
