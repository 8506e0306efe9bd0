package seamsoak.cli;

import java.util.Iterator;
import seamsoak.data.DataFolder;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;

/** The packed steels, for a shell to complete; read when it asks. */
final class SteelNames implements Iterable<String> {
  @Override
  public Iterator<String> iterator() {
    return SteelTable.load(DataFolder.packed()).steels().stream().map(Steel::id).iterator();
  }
}
