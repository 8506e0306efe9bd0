package seamsoak.billet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import seamsoak.data.Place;
import seamsoak.unit.Hardness;
import seamsoak.unit.HeatingRate;
import seamsoak.unit.Length;
import seamsoak.unit.Percent;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;
import seamsoak.unit.UnitSystem;

/** What is assumed where a billet file says nothing, and the sentences that own up to it. */
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
  public static final Percent VISIBLE_DIP = new Percent(0.10);
  public static final Percent COVERED = new Percent(50);

  public static final Hardness HARDNESS = new Hardness(60);
  public static final Temperature KILN_HIGHEST = Temperature.ofCelsius(1200);
  public static final HeatingRate KILN_RAMP = new HeatingRate(600);
  public static final List<Bath> QUENCHANTS =
      List.of(new Bath("oil-fast", Optional.empty(), Optional.empty(), Place.of("the default")));

  private final UnitSystem units;
  private final List<String> sentences = new ArrayList<>();

  private Defaults(UnitSystem units) {
    this.units = units;
  }

  static List<String> taken(Billet billet, UnitSystem units) {
    Defaults defaults = new Defaults(units);
    defaults.stack(billet.stack());
    billet.steps().forEach(defaults::step);
    defaults.rest(billet);
    defaults.shop(billet);
    return List.copyOf(defaults.sentences);
  }

  private void stack(Stack stack) {
    say(stack.skin().isEmpty(), "stack", "no skin on the stock (default)");
  }

  private void step(Step step) {
    String title = step.title();
    List<Heat> heats = step.heats();
    if (step instanceof Step.Weld weld) {
      weld.can().ifPresent(can -> can(can, title));
      judged(weld.faces().isEmpty(), title, "faces to be joined " + word(FACES));
    }
    judged(!heats.isEmpty() && step.outside().isEmpty(), title, "outer faces " + word(OUTSIDE));
    judged(heats.stream().anyMatch(h -> h.rise().isEmpty()), title, "rise " + RISE.format(units));
    boolean cools = step instanceof Step.Soak || step instanceof Step.Normalize;
    judged(
        cools && heats.stream().anyMatch(h -> h.cool().isEmpty()), title, "cools in " + word(COOL));
    if (step instanceof Step.Restack restack) {
      say(restack.turn().isEmpty(), title, "no piece turned (default)");
      judged(restack.kerf().isEmpty(), title, "kerf " + KERF.format(units));
    } else if (step instanceof Step.Tile tile) {
      say(tile.grind().isEmpty(), title, "nothing ground off before closing (default)");
      judged(tile.kerf().isEmpty(), title, "kerf " + KERF.format(units));
      say(tile.count().isEmpty(), title, "as many slices as the bar gives (default)");
      boolean coatingUnknown = tile.jacket().filter(j -> j.coating().isEmpty()).isPresent();
      say(coatingUnknown, title, "coating of the jacket unknown (default)");
    } else if (step instanceof Step.Unjacket unjacket) {
      say(unjacket.depth().isEmpty(), title, "only the jacket ground off (default)");
    }
  }

  private void can(Can can, String title) {
    say(can.inside().isEmpty(), title, "nothing known of what is in the can (default)");
    say(can.vent().isEmpty(), title, "nothing known of a vent in the can (default)");
  }

  private void rest(Billet billet) {
    SoakWish soak = billet.soak();
    judged(soak.most().isEmpty(), "soak", "at most " + MOST_SOAK.format(units));
    judged(soak.outside().isEmpty(), "soak", "outer faces " + word(SOAK_OUTSIDE));
    Visible visible = billet.visible();
    judged(
        visible.dip().isEmpty(),
        "lines",
        "visible from " + VISIBLE_DIP.format(units) + " of carbon missing");
    judged(
        billet.covered().isEmpty(),
        "covered faces",
        "reached by the fire " + COVERED.format(units) + " as much as open ones");
  }

  private void shop(Billet billet) {
    Blade blade = billet.blade();
    say(blade.thickness().isEmpty(), "blade", "as thick as the billet leaves it (default)");
    say(blade.width().isEmpty(), "blade", "as wide as the billet (default)");
    judged(blade.hardness().isEmpty(), "blade", HARDNESS.format(units) + " wanted");
    say(
        blade.edge().isEmpty() && billet.stack().steels().stream().distinct().count() > 1,
        "blade",
        "the steel with the most carbon cuts (default)");
    Equipment has = billet.equipment();
    say(has.forge().isEmpty(), "equipment", "a gas forge (default)");
    Kiln kiln = has.kilnTaken();
    judged(
        kiln.there() && kiln.highest().isEmpty(),
        "equipment",
        "a kiln that goes to " + KILN_HIGHEST.format(units));
    judged(
        kiln.there() && kiln.ramp().isEmpty(),
        "equipment",
        "its fastest climb " + KILN_RAMP.format(units));
    say(has.salt().isEmpty(), "equipment", "no molten salt to heat in (default)");
    say(has.cold().isEmpty(), "equipment", "nothing to cool below room temperature (default)");
    say(has.shop().isEmpty(), "equipment", "a closed shop (default)");
    say(has.descale().isEmpty(), "equipment", "scale ground off, no acid (default)");
    say(billet.quenchants().isEmpty(), "quenchants", "fast quench oil (default)");
  }

  private void judged(boolean taken, String where, String what) {
    say(taken, where, what + " (default, judgement)");
  }

  private void say(boolean taken, String where, String what) {
    if (taken) {
      sentences.add(where + ": " + what);
    }
  }

  private static String word(Enum<?> choice) {
    return choice.name().toLowerCase(Locale.ROOT);
  }
}
