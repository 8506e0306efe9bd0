package seamsoak.page.fire;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import seamsoak.data.Fault;
import seamsoak.data.JsonTree;
import seamsoak.data.JsonValue;
import seamsoak.data.JsonValue.NumberValue;
import seamsoak.data.JsonValue.ObjectValue;
import seamsoak.data.JsonValue.TextValue;
import seamsoak.data.JsonWriter;

/** The holds that are being counted, one for each billet, kept so that a crash stops none. */
public final class Holds {
  /** Of one that is over and that nobody took out, nobody is waiting any more. */
  private static final long FORGOTTEN_MILLIS = TimeUnit.HOURS.toMillis(12);

  private final Clock clock;
  private final Consumer<String> keep;
  private final Map<String, Hold> all = new LinkedHashMap<>();
  private int changes;

  /**
   * @param kept what was kept by a run before; blank for nothing
   * @param keep keeps them
   */
  public Holds(Clock clock, String kept, Consumer<String> keep) {
    this.clock = clock;
    this.keep = keep;
    read(kept);
  }

  private void read(String kept) {
    try {
      if (!kept.isBlank() && JsonTree.parse("holds", kept) instanceof ObjectValue o) {
        o.members().forEach((billet, m) -> all.put(billet, hold(m.value()).again(clock)));
      }
    } catch (Fault | IllegalArgumentException notOurs) {
      all.clear(); // better no clock than a wrong one
    }
  }

  private static Hold hold(JsonValue value) {
    if (!(value instanceof ObjectValue o)) {
      throw new IllegalArgumentException("no hold");
    }
    return new Hold(
        (int) number(o, "step"),
        (int) number(o, "heat"),
        o.members().get("title") != null
                && o.members().get("title").value() instanceof TextValue text
            ? text.text()
            : "",
        number(o, "wanted"),
        number(o, "gone"),
        number(o, "seen"),
        0,
        false);
  }

  private static long number(ObjectValue o, String key) {
    if (o.members().get(key) != null && o.members().get(key).value() instanceof NumberValue n) {
      return (long) n.value();
    }
    throw new IllegalArgumentException("no number");
  }

  private void keep() {
    changes++;
    Map<String, Object> file = new LinkedHashMap<>();
    all.forEach(
        (billet, hold) -> {
          Map<String, Object> one = new LinkedHashMap<>();
          one.put("step", hold.step());
          one.put("heat", hold.heat());
          one.put("title", hold.title());
          one.put("wanted", hold.wantedMillis());
          one.put("gone", hold.goneMillis());
          one.put("seen", hold.seenMillis());
          file.put(billet, one);
        });
    keep.accept(JsonWriter.write(file));
  }

  /** Begins to count; of a billet that is counted already the new one takes its place. */
  public synchronized void begin(String billet, int step, int heat, String title, double minutes) {
    all.put(billet, Hold.begun(step, heat, title, Math.round(minutes * 60_000), clock));
    keep();
  }

  public synchronized void longer(String billet, double minutes) {
    all.computeIfPresent(billet, (b, h) -> h.at(clock).longer(Math.round(minutes * 60_000)));
    keep();
  }

  public synchronized void end(String billet) {
    if (all.remove(billet) != null) {
      keep();
    }
  }

  /** The hold of a billet as it is now, if one is counted. */
  public synchronized Optional<Hold> of(String billet) {
    return Optional.ofNullable(
        all.computeIfPresent(
            billet,
            (b, h) -> {
              Hold now = h.at(clock);
              if (now.jumped() != h.jumped()) {
                changes++;
              }
              return now.leftMillis() < -FORGOTTEN_MILLIS ? null : now;
            }));
  }

  /** Whether one is counted that may still matter to somebody. */
  public synchronized boolean areRunning() {
    return all.keySet().stream().toList().stream().anyMatch(b -> of(b).isPresent());
  }

  /** Is another whenever one was begun, changed or ended. */
  public synchronized int changes() {
    return changes;
  }
}
