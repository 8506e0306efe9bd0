package seamsoak.billet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.billet.Default.Part;
import seamsoak.billet.Default.What;
import seamsoak.carbon.LineVisibility;
import seamsoak.data.Place;
import seamsoak.unit.Hardness;
import seamsoak.unit.HeatingRate;
import seamsoak.unit.Length;
import seamsoak.unit.Percent;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;

/** What is assumed where a billet file says nothing, and where that was done. */
public final class Defaults {
  public static final TimeSpan RISE = TimeSpan.ofMinutes(5);
  public static final Cooling COOL = Cooling.AIR;
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
  public static final Percent VISIBLE_DIP = new Percent(LineVisibility.USUAL.dipPct());
  public static final Percent COVERED = new Percent(50);

  public static final Hardness HARDNESS = new Hardness(60);
  public static final Temperature KILN_HIGHEST = Temperature.ofCelsius(1200);
  public static final HeatingRate KILN_RAMP = new HeatingRate(600);
  public static final List<Bath> QUENCHANTS =
      List.of(new Bath("oil-fast", Optional.empty(), Optional.empty(), Place.of("the default")));

  private final List<Default> all = new ArrayList<>();

  private Defaults() {}

  static List<Default> taken(Billet billet) {
    Defaults defaults = new Defaults();
    defaults.taken(billet.stack().skin().isEmpty(), Part.STACK, What.NO_SKIN);
    billet.steps().forEach(defaults::step);
    defaults.rest(billet);
    defaults.shop(billet);
    return List.copyOf(defaults.all);
  }

  private void step(Step step) {
    List<Heat> heats = step.heats();
    if (step instanceof Step.Weld weld) {
      taken(weld.can().filter(c -> c.inside().isEmpty()), step, What.CAN_INSIDE_UNKNOWN);
      taken(weld.can().filter(c -> c.vent().isEmpty()), step, What.CAN_VENT_UNKNOWN);
      taken(weld.faces().isEmpty(), step, What.FACES);
    }
    taken(!heats.isEmpty() && step.outside().isEmpty(), step, What.OUTSIDE);
    taken(heats.stream().anyMatch(h -> h.rise().isEmpty()), step, What.RISE);
    boolean cools = step instanceof Step.Soak || step instanceof Step.Normalize;
    taken(cools && heats.stream().anyMatch(h -> h.cool().isEmpty()), step, What.COOL);
    if (step instanceof Step.Restack restack) {
      taken(restack.turn().isEmpty(), step, What.NO_TURN);
      taken(restack.kerf().isEmpty(), step, What.KERF);
    } else if (step instanceof Step.Tile tile) {
      taken(tile.grind().isEmpty(), step, What.NO_GRIND);
      taken(tile.kerf().isEmpty(), step, What.KERF);
      taken(tile.count().isEmpty(), step, What.ALL_SLICES);
      taken(tile.jacket().filter(j -> j.coating().isEmpty()), step, What.COATING_UNKNOWN);
    } else if (step instanceof Step.Unjacket unjacket) {
      taken(unjacket.depth().isEmpty(), step, What.ONLY_JACKET);
    }
  }

  private void rest(Billet billet) {
    taken(billet.soak().most().isEmpty(), Part.SOAK, What.MOST_SOAK);
    taken(billet.soak().outside().isEmpty(), Part.SOAK, What.SOAK_OUTSIDE);
    taken(billet.visible().dip().isEmpty(), Part.LINES, What.VISIBLE_DIP);
    taken(billet.covered().isEmpty(), Part.COVERED_FACES, What.COVERED);
  }

  private void shop(Billet billet) {
    Blade blade = billet.blade();
    taken(blade.thickness().isEmpty(), Part.BLADE, What.BLADE_THICKNESS);
    taken(blade.width().isEmpty(), Part.BLADE, What.BLADE_WIDTH);
    taken(blade.hardness().isEmpty(), Part.BLADE, What.HARDNESS);
    boolean unlike = billet.stack().steels().stream().distinct().count() > 1;
    taken(blade.edge().isEmpty() && unlike, Part.BLADE, What.EDGE);
    Equipment has = billet.equipment();
    taken(has.forge().isEmpty(), Part.EQUIPMENT, What.GAS_FORGE);
    Kiln kiln = has.kilnTaken();
    taken(kiln.there() && kiln.highest().isEmpty(), Part.EQUIPMENT, What.KILN_HIGHEST);
    taken(kiln.there() && kiln.ramp().isEmpty(), Part.EQUIPMENT, What.KILN_RAMP);
    taken(has.salt().isEmpty(), Part.EQUIPMENT, What.NO_SALT);
    taken(has.cold().isEmpty(), Part.EQUIPMENT, What.NO_COLD);
    taken(has.shop().isEmpty(), Part.EQUIPMENT, What.CLOSED_SHOP);
    taken(has.descale().isEmpty(), Part.EQUIPMENT, What.NO_ACID);
    taken(billet.quenchants().isEmpty(), Part.QUENCHANTS, What.FAST_OIL);
  }

  private void taken(boolean taken, Part part, What what) {
    if (taken) {
      all.add(new Default(part, Optional.empty(), what));
    }
  }

  private void taken(Optional<?> of, Step step, What what) {
    taken(of.isPresent(), step, what);
  }

  private void taken(boolean taken, Step step, What what) {
    if (taken) {
      all.add(new Default(Part.STEPS, Optional.of(step), what));
    }
  }
}
