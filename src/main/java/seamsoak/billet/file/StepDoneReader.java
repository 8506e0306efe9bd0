package seamsoak.billet.file;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import seamsoak.billet.Step;
import seamsoak.data.JsonValue.Member;
import seamsoak.data.JsonValue.ObjectValue;

/**
 * Reads how a step came out: the day, and those of the step's own keys that came out otherwise.
 *
 * @param on which day, if stated
 * @param object as it stands in the file
 */
record StepDoneReader(Optional<LocalDate> on, ObjectValue object) {
  private static final String NAME = "done";

  /**
   * The key for it.
   *
   * @param own the keys of the step that may have come out otherwise
   */
  static Key<Optional<StepDoneReader>> key(List<Key<?>> own) {
    List<Key<?>> all =
        Stream.<Key<?>>concat(Stream.of(HeatReader.ON), own.stream().map(Key::ifThere)).toList();
    return Key.optional(
        NAME,
        "{ \"on\": \"2026-11-21\" }",
        new Form<>(all, f -> new StepDoneReader(f.get(HeatReader.ON), f.object().object())));
  }

  /** The step as it came out: what was planned, with what came out otherwise in its place. */
  Step over(Entry planned, List<Key<?>> keys, Function<Fields, Step> maker) {
    Map<String, Member> all = new LinkedHashMap<>(planned.object().members());
    all.remove(NAME);
    all.putAll(object.members());
    all.remove(HeatReader.ON.name());
    return new Form<>(keys, maker).read(planned.holding(new ObjectValue(planned.place(), all)));
  }
}
