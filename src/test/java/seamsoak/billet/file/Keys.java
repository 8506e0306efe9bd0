package seamsoak.billet.file;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import seamsoak.billet.Step;

/** Every key that a billet file may hold, as the reader declares them. */
final class Keys {
  private Keys() {}

  /** All of them, those within others too. */
  static Stream<Key<?>> all() {
    return Stream.of(
            within(BilletReader.BILLET),
            within(CurveReader.CURVE),
            Arrays.stream(Step.Kind.values()).flatMap(kind -> within(StepReader.form(kind))))
        .flatMap(keys -> keys)
        .distinct();
  }

  private static Stream<Key<?>> within(Reader<?> reader) {
    if (reader instanceof ListOf<?> list) {
      return within(list.item());
    }
    if (reader instanceof OneOrMore<?> some) {
      return within(some.list());
    }
    List<Key<?>> keys = reader instanceof Form<?> form ? form.keys() : List.of();
    return keys.stream().flatMap(key -> Stream.concat(Stream.of(key), within(key.values())));
  }
}
