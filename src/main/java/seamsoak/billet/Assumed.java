package seamsoak.billet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.billet.Default.Part;
import seamsoak.billet.Default.What;

/** What was assumed of one billet because its file does not say it. */
public final class Assumed {
  private final List<Default> all = new ArrayList<>();

  private Assumed() {}

  public static List<Default> of(Billet billet) {
    Assumed defaults = new Assumed();
    defaults.taken(billet.stack().skin().isEmpty(), Part.STACK, What.NO_SKIN);
    billet.steps().forEach(defaults::step);
    defaults.rest(billet);
    defaults.shop(billet);
    return List.copyOf(defaults.all);
  }

  private void step(Step step) {
    List<Heat> heats = step.heats();
    EnumMap<What, Boolean> open = own(step);
    open.put(What.OUTSIDE, !heats.isEmpty() && step.outside().isEmpty());
    open.put(What.RISE, heats.stream().anyMatch(h -> h.rise().isEmpty()));
    open.forEach(
        (what, taken) -> {
          if (taken) {
            all.add(new Default(Part.STEPS, Optional.of(step), what));
          }
        });
  }

  /** What a step of its kind may leave open, and whether this one does. */
  private static EnumMap<What, Boolean> own(Step step) {
    EnumMap<What, Boolean> open = new EnumMap<>(What.class);
    open.putAll(
        switch (step.kind()) {
          case WELD -> weld((Step.Weld) step);
          case RESTACK -> restack((Step.Restack) step);
          case TILE -> tile((Step.Tile) step);
          case UNJACKET -> Map.of(What.ONLY_JACKET, ((Step.Unjacket) step).depth().isEmpty());
          case SOAK, NORMALIZE, REFINE, RELIEVE, TEMPER -> Map.of(What.COOL, coolOpen(step));
          case ANNEAL -> Map.of(What.SLOW_COOL, coolOpen(step));
          case DRAW, PRESS, ROLL, TWIST, GRIND, HARDEN, COOL -> Map.of();
        });
    return open;
  }

  private static boolean coolOpen(Step step) {
    return step.heats().stream().anyMatch(h -> h.cool().isEmpty());
  }

  private static Map<What, Boolean> weld(Step.Weld weld) {
    return Map.of(
        What.FACES, weld.faces().isEmpty(),
        What.CAN_INSIDE_UNKNOWN, weld.can().filter(c -> c.inside().isEmpty()).isPresent(),
        What.CAN_VENT_UNKNOWN, weld.can().filter(c -> c.vent().isEmpty()).isPresent());
  }

  private static Map<What, Boolean> restack(Step.Restack restack) {
    return Map.of(What.NO_TURN, restack.turn().isEmpty(), What.KERF, restack.kerf().isEmpty());
  }

  private static Map<What, Boolean> tile(Step.Tile tile) {
    return Map.of(
        What.NO_GRIND, tile.grind().isEmpty(),
        What.KERF, tile.kerf().isEmpty(),
        What.ALL_SLICES, tile.count().isEmpty(),
        What.COATING_UNKNOWN, tile.jacket().filter(j -> j.coating().isEmpty()).isPresent());
  }

  private void rest(Billet billet) {
    taken(billet.soak().most().isEmpty(), Part.SOAK, What.MOST_SOAK);
    taken(billet.soak().outside().isEmpty(), Part.SOAK, What.SOAK_OUTSIDE);
    taken(billet.covered().isEmpty(), Part.COVERED_FACES, What.COVERED);
  }

  private void shop(Billet billet) {
    Blade blade = billet.blade();
    taken(blade.thickness().isEmpty(), Part.BLADE, What.BLADE_THICKNESS);
    taken(blade.width().isEmpty(), Part.BLADE, What.BLADE_WIDTH);
    taken(blade.hardness().isEmpty(), Part.BLADE, What.HARDNESS);
    boolean unlike = billet.stack().steels().stream().distinct().count() > 1;
    taken(blade.cuts().isEmpty() && unlike, Part.BLADE, What.EDGE);
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
}
