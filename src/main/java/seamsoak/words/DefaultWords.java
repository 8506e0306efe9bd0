package seamsoak.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import seamsoak.billet.Default;
import seamsoak.billet.Defaults;
import seamsoak.billet.JustWelded;
import seamsoak.unit.UnitSystem;

/** What was assumed because the file does not say it. */
public record DefaultWords(UnitSystem units) {
  public String says(Default taken) {
    return where(taken) + ": " + what(taken.what());
  }

  /** All of them, those that share an assumption named together. */
  public List<String> together(List<Default> defaults) {
    Map<Default.What, List<String>> byWhat = new LinkedHashMap<>();
    for (Default taken : defaults) {
      byWhat.computeIfAbsent(taken.what(), k -> new ArrayList<>()).add(where(taken));
    }
    List<String> items = new ArrayList<>();
    byWhat.forEach(
        (what, where) ->
            items.add(String.join(", ", where).replace(", step ", ", ") + ": " + what(what)));
    return items;
  }

  /** What must be looked at before anything is lit, since a guess at it can harm. */
  public static List<String> ask(List<Default> defaults) {
    return defaults.stream().anyMatch(d -> d.what() == Default.What.COATING_UNKNOWN)
        ? List.of(
            "Look first: is the sheet of the jacket bare? Zinc and plating turn to poisonous fume in"
                + " the fire. Write \"coating\": \"none\" where it is bare.")
        : List.of();
  }

  /** What steels without a history are taken for. */
  public String taken(JustWelded bar) {
    return "Taken as "
        + bar.count()
        + " layers, "
        + bar.thickness().format(units)
        + " thick and "
        + bar.width().format(units)
        + " wide, welded once at "
        + bar.weld().format(units)
        + " for "
        + JustWelded.HOLD.format(units)
        + " with nothing lost to the fire; every further heat evens the layers more, so write your"
        + " own billet's file for its own schedule.";
  }

  /** What it is said of, such as {@code step 1 weld}. */
  private String where(Default taken) {
    return switch (taken.part()) {
      case STACK -> "stack";
      case STEPS -> taken.step().orElseThrow().title();
      case SOAK -> "soak";
      case COVERED_FACES -> "covered faces";
      case BLADE -> "blade";
      case EQUIPMENT -> "equipment";
      case QUENCHANTS -> "quenchants";
    };
  }

  private String what(Default.What what) {
    return value(what) + (what.judged() ? " (default, judgement)" : " (default)");
  }

  private String value(Default.What what) {
    return switch (what) {
      case NO_SKIN -> "no skin on the stock";
      case FACES -> "faces to be joined " + Amounts.word(Defaults.FACES);
      case OUTSIDE -> "outer faces " + Amounts.word(Defaults.OUTSIDE);
      case RISE -> "rise " + Defaults.RISE.format(units);
      case COOL -> "cools in air";
      case SLOW_COOL -> "cools in the furnace";
      case NO_TURN -> "no piece turned";
      case KERF -> "kerf " + Defaults.KERF.format(units);
      case NO_GRIND -> "nothing ground off before closing";
      case ALL_SLICES -> "as many slices as the bar gives";
      case COATING_UNKNOWN -> "coating of the jacket unknown";
      case ONLY_JACKET -> "only the jacket ground off";
      case CAN_INSIDE_UNKNOWN -> "nothing known of what is in the can";
      case CAN_VENT_UNKNOWN -> "nothing known of a vent in the can";
      case MOST_SOAK -> "at most " + Defaults.MOST_SOAK.format(units);
      case SOAK_OUTSIDE -> "outer faces " + Amounts.word(Defaults.SOAK_OUTSIDE);
      case COVERED ->
          "reached by the fire " + Defaults.COVERED.format(units) + " as much as open ones";
      case BLADE_THICKNESS -> "as thick as the billet leaves it";
      case BLADE_WIDTH -> "as wide as the billet";
      case HARDNESS -> Defaults.HARDNESS.format(units) + " wanted";
      case EDGE -> "the steel with the most carbon cuts";
      case GAS_FORGE -> "a gas forge";
      case KILN_HIGHEST -> "a kiln that goes to " + Defaults.KILN_HIGHEST.format(units);
      case KILN_RAMP -> "its fastest climb " + Defaults.KILN_RAMP.format(units);
      case NO_SALT -> "no molten salt to heat in";
      case NO_COLD -> "nothing to cool below room temperature";
      case CLOSED_SHOP -> "a closed shop";
      case NO_ACID -> "scale ground off, no acid";
      case FAST_OIL -> "fast quench oil";
    };
  }
}
