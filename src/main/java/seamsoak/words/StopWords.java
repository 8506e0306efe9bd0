package seamsoak.words;

import java.util.List;
import seamsoak.safety.Danger;
import seamsoak.safety.HardStop;
import seamsoak.safety.Stop;
import seamsoak.unit.TemperatureDifference;
import seamsoak.unit.UnitSystem;

/** Why a step must not be done as planned, and what to do instead. */
public record StopWords(UnitSystem units) {
  /** Below them, before the answer itself. */
  public static final String OTHERWISE = "But for that, what follows would hold.";

  private static final Sayings<StopWords, Danger, String> ALL =
      new Sayings<StopWords, Danger, String>(Danger.class)
          .of(Danger.CoatedJacket.class, StopWords::of)
          .of(Danger.SealedCan.class, StopWords::of)
          .of(Danger.HotSalt.class, StopWords::of)
          .of(Danger.HotOil.class, StopWords::of)
          .of(Danger.Melts.class, StopWords::of)
          .of(Danger.NoWeld.class, StopWords::of)
          .of(Danger.NitrateHeat.class, StopWords::of)
          .complete();

  /** All of them, to be read first. */
  public List<String> forbid(List<Stop> stops) {
    return stops.stream().map(stop -> "Do not do this. " + says(stop)).toList();
  }

  public String says(Stop stop) {
    return stop.step() + ": " + says(stop.danger());
  }

  /** Of what, and why not. */
  public String says(Danger danger) {
    return ALL.say(this, danger);
  }

  private String of(Danger.CoatedJacket danger) {
    return switch (danger.coating()) {
      case GALVANIZED ->
          "The jacket is galvanized: its zinc turns to poisonous fume in the fire, so this"
              + " jacket is refused; take plain uncoated steel.";
      case PLATED ->
          "The jacket is plated: zinc, cadmium or chromium turn to poisonous fume in the fire,"
              + " and cadmium can kill, so this jacket is refused; take plain uncoated steel.";
      case NONE, PAINTED, UNKNOWN -> throw new IllegalStateException("no stop: " + danger);
    };
  }

  private String of(Danger.SealedCan danger) {
    String inside =
        switch (danger.inside()) {
          case DAMP -> "damp";
          case OILY -> "oily";
          case PAINTED -> "painted";
          case BAKED_DRY, UNKNOWN -> throw new IllegalStateException("no stop: " + danger);
        };
    return "The can is "
        + inside
        + " inside and has no vent hole that is known of: gas may burst it like a bomb, so it is"
        + " refused; bake what is in it dry, free of oil and paint, or drill a hole facing away"
        + " from people.";
  }

  private String of(Danger.HotSalt danger) {
    return "The salt is at "
        + show(danger.celsius())
        + ": low-temperature salt is nitrate, which above "
        + show(HardStop.NITRATE_CELSIUS)
        + " breaks up and may explode, so this bath is refused; hold it between "
        + show(HardStop.NITRATE_BATH_LOW_CELSIUS)
        + " and "
        + show(HardStop.NITRATE_BATH_HIGH_CELSIUS)
        + ".";
  }

  private String of(Danger.HotOil danger) {
    return "The oil is at "
        + show(danger.celsius())
        + ", a blade warms it by about "
        + new TemperatureDifference(danger.bladeWarmsKelvin()).format(units)
        + ", and "
        + (danger.ofLabel() ? "it flashes at " : "such oil flashes at about ")
        + show(danger.flashC())
        + ": that is too near, so this bath is refused; let it cool, or take oil with a higher"
        + " flash point.";
  }

  private String of(Danger.Melts danger) {
    return "At "
        + show(danger.celsius())
        + " "
        + danger.steel()
        + " melts or is about to: above "
        + show(danger.stopCelsius())
        + " its first melting is too near, so this heat is refused; stay below that, and give the"
        + " heat of the metal, not that of the fire.";
  }

  private String of(Danger.NoWeld danger) {
    return "At "
        + show(danger.celsius())
        + " steel does not weld, so this heat is refused as a weld; it welds readily from "
        + show(danger.leastCelsius())
        + " on.";
  }

  private String of(Danger.NitrateHeat danger) {
    return "Only nitrate salt is at hand to heat in, and "
        + show(danger.celsius())
        + " is above the "
        + show(HardStop.NITRATE_CELSIUS)
        + " at which it must never be: it may explode, so this step is refused; use a kiln, a"
        + " forge or neutral salt made for it.";
  }

  private String show(double celsius) {
    return new Amounts(units).heat(celsius);
  }
}
