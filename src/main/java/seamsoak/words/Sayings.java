package seamsoak.words;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;

/**
 * What words say of each kind of a sealed type. None may be left out: where one is, those words
 * cannot be used at all.
 *
 * @param <W> the words
 * @param <S> the sealed type
 * @param <T> what is said
 */
final class Sayings<W, S, T> {
  private final Class<S> sealed;
  private final Map<Class<?>, BiFunction<W, S, T>> all = new HashMap<>();

  Sayings(Class<S> sealed) {
    this.sealed = sealed;
  }

  <C extends S> Sayings<W, S, T> of(Class<C> kind, BiFunction<W, C, T> says) {
    all.put(kind, (words, of) -> says.apply(words, kind.cast(of)));
    return this;
  }

  Sayings<W, S, T> complete() {
    if (!all.keySet().equals(Set.of(sealed.getPermittedSubclasses()))) {
      throw new IllegalStateException("not every " + sealed.getSimpleName() + " has its words");
    }
    return this;
  }

  T say(W words, S of) {
    return all.get(of.getClass()).apply(words, of);
  }
}
