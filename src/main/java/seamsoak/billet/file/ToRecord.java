package seamsoak.billet.file;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import seamsoak.billet.Step;

/**
 * What is to be written into a billet file about one of its steps, in the smith's own words.
 *
 * @param heat which stay in the fire, counted from 1 through all of the step's; empty for what is
 *     not about one
 * @param how it went where not as planned: {@code at}, {@code for}
 * @param ended whether the whole step is done
 * @param came how the step came out where not as planned, by its own keys
 * @param seen where, how the line looked, perhaps how wide; empty when nothing was looked at
 * @param on which day, if said
 */
public record ToRecord(
    Step step,
    OptionalInt heat,
    Map<String, String> how,
    boolean ended,
    Map<String, String> came,
    Map<String, String> seen,
    Optional<String> on) {
  public ToRecord {
    how = Collections.unmodifiableMap(new LinkedHashMap<>(how));
    came = Collections.unmodifiableMap(new LinkedHashMap<>(came));
    seen = Collections.unmodifiableMap(new LinkedHashMap<>(seen));
  }

  /** The keys of what one measures when a step of a kind is done. */
  public static List<String> measured(Step.Kind kind) {
    return switch (kind) {
      case DRAW -> List.of("thickness", "width");
      case PRESS, ROLL -> List.of("thickness");
      case GRIND, UNJACKET -> List.of("depth");
      case TWIST -> List.of("turns");
      case WELD, RESTACK, TILE, SOAK, ANNEAL, NORMALIZE, REFINE, RELIEVE, HARDEN, TEMPER, COOL ->
          List.of();
    };
  }

  public ToRecord withHow(String key, String value) {
    return new ToRecord(step, heat, with(how, key, value), ended, came, seen, on);
  }

  public ToRecord withCame(String key, String value) {
    return new ToRecord(step, heat, how, true, with(came, key, value), seen, on);
  }

  public ToRecord withDay(String day) {
    return new ToRecord(step, heat, how, ended, came, seen, Optional.of(day));
  }

  private static Map<String, String> with(Map<String, String> map, String key, String value) {
    Map<String, String> more = new LinkedHashMap<>(map);
    more.put(key, value);
    return more;
  }

  /** Short, for whoever takes it back. */
  public String title() {
    String which = heat.isPresent() && step.times() > 1 ? ", heat " + heat.getAsInt() : "";
    String looked = heat.isPresent() || ended ? " and what was seen" : ", what was seen";
    return step.title() + which + (seen.isEmpty() ? "" : looked);
  }

  /** Whether something is recorded already where this goes; one may look more than once. */
  public boolean isIn(WorkBook book) {
    return heat.isPresent() && book.hasHeat(step, heat.getAsInt()) || ended && book.hasStep(step);
  }

  /** Written into a file. */
  public WorkBook into(WorkBook book) {
    WorkBook written = book;
    if (heat.isPresent()) {
      written = written.heat(step, heat.getAsInt(), dated(how));
    }
    if (ended) {
      written = written.step(step, dated(came));
    }
    return seen.isEmpty() ? written : written.seen(step, dated(seen));
  }

  private Map<String, String> dated(Map<String, String> values) {
    Map<String, String> all = new LinkedHashMap<>();
    on.ifPresent(day -> all.put("on", day));
    all.putAll(values);
    return all;
  }
}
