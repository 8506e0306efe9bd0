package seamsoak.steel;

import java.util.List;
import java.util.Optional;
import seamsoak.data.DataFolder;

/** The steels by id and alias. To be completed. */
public final class SteelTable {
  private final List<Steel> steels;

  private SteelTable(List<Steel> steels) {
    this.steels = List.copyOf(steels);
  }

  /** Reads {@code steels.csv} and its companions. */
  public static SteelTable load(DataFolder data) {
    return new SteelTable(List.of());
  }

  public List<Steel> steels() {
    return steels;
  }

  /** The steel of that id or alias, ignoring case; or an analysis written out as C0.84 Mn0.75. */
  public Optional<Steel> find(String name) {
    return steels.stream().filter(s -> s.id().equalsIgnoreCase(name)).findFirst();
  }

  /** The known id or alias nearest to a misspelt one, if any is near. */
  public Optional<String> nearest(String name) {
    return Optional.empty();
  }
}
