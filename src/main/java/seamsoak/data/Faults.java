package seamsoak.data;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Gathers what is wrong, so that the user is told all of it at once. */
public final class Faults {
  private final List<Mistake> all = new ArrayList<>();
  private boolean failed;

  /** What is read, or nothing where that fails; then its faults are kept. */
  public <T> Optional<T> tried(Supplier<T> reading) {
    try {
      return Optional.of(reading.get());
    } catch (Fault fault) {
      add(fault);
      return Optional.empty();
    }
  }

  public void add(Fault fault) {
    all.addAll(fault.mistakes());
    failed = true;
  }

  /** Those of others too. */
  public void addAll(Faults others) {
    all.addAll(others.all);
    failed |= others.failed;
  }

  /** All of them, in the order of the file. */
  public List<Mistake> mistakes() {
    return all.stream().sorted(Mistake.BY_PLACE).toList();
  }

  /** Throws what was gathered, in the order of the file; nothing where nothing failed. */
  public void throwAny() {
    if (failed) {
      throw new Fault(mistakes());
    }
  }
}
