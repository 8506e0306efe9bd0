package seamsoak.billet;

import java.util.List;
import java.util.Optional;
import seamsoak.data.Place;
import seamsoak.unit.Hardness;
import seamsoak.unit.HeatingRate;
import seamsoak.unit.Length;
import seamsoak.unit.Percent;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;

/** What is assumed where a billet file says nothing. */
public final class Defaults {
  public static final TimeSpan RISE = TimeSpan.ofMinutes(5);
  public static final Exposure FACES = Exposure.COVERED;
  public static final Exposure OUTSIDE = Exposure.OPEN;
  public static final Length SKIN = new Length(0);
  public static final Turn TURN = Turn.NONE;
  public static final Length KERF = Length.ofMillimetres(2);
  public static final Length TILE_GRIND = new Length(0);
  public static final Length UNJACKET_DEPTH = new Length(0);
  public static final Coating COATING = Coating.UNKNOWN;
  public static final TimeSpan MOST_SOAK = TimeSpan.ofMinutes(60);
  public static final Exposure SOAK_OUTSIDE = Exposure.COVERED;
  public static final Percent COVERED = new Percent(50);

  public static final Hardness HARDNESS = new Hardness(60);
  public static final Temperature KILN_HIGHEST = Temperature.ofCelsius(1200);
  public static final HeatingRate KILN_RAMP = new HeatingRate(600);
  public static final List<Bath> QUENCHANTS =
      List.of(new Bath("oil-fast", Optional.empty(), Optional.empty(), Place.of("the default")));

  private Defaults() {}

  /** How a heat treatment cools: an anneal slowly, a hardening in its quench, others in air. */
  static Cooling cool(Step.Kind kind) {
    return switch (kind) {
      case ANNEAL -> Cooling.FURNACE;
      case HARDEN -> Cooling.QUENCH;
      case WELD,
          DRAW,
          PRESS,
          ROLL,
          GRIND,
          RESTACK,
          TILE,
          UNJACKET,
          TWIST,
          SOAK,
          NORMALIZE,
          REFINE,
          RELIEVE,
          TEMPER,
          COOL ->
          Cooling.AIR;
    };
  }
}
