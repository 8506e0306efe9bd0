package seamsoak.page;

import java.nio.file.Path;
import java.util.Optional;
import seamsoak.data.DataFolder;
import seamsoak.report.Colophon;
import seamsoak.steel.SteelTable;
import seamsoak.support.Walks;
import seamsoak.unit.UnitSystem;

/** Pages for tests, which try fewer cases than a smith's: what is tested is the page. */
final class Pageful {
  /** Enough for a band. */
  static final int CASES = 12;

  private Pageful() {}

  /** One whose drafts lie in a folder below the billets. */
  static Page open(Path folder) {
    return open(folder, Optional.empty());
  }

  /** The same that answers in the units asked for. */
  static Page open(Path folder, Optional<UnitSystem> units) {
    DataFolder data = DataFolder.packed();
    return Page.open(
        new Page.Setting(
            data,
            Walks.CORRELATIONS,
            SteelTable.load(data),
            folder,
            folder.resolve("state"),
            units,
            CASES,
            0,
            new Colophon("seamsoak", "The tables packed with it.", "page")));
  }
}
