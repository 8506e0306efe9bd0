package seamsoak.cli;

import java.util.Iterator;
import seamsoak.data.DataFolder;
import seamsoak.steel.Steel;

/** The packed steels, for a shell to complete; read when it asks. */
final class SteelNames implements Iterable<String> {
  @Override
  public Iterator<String> iterator() {
    return Steels.load(DataFolder.packed()).table().steels().stream().map(Steel::id).iterator();
  }
}
