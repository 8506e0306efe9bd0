package seamsoak.page;

import java.nio.file.Path;
import seamsoak.data.DataFolder;
import seamsoak.report.Colophon;
import seamsoak.steel.SteelTable;
import seamsoak.support.Walks;

/** Pages for tests. */
final class Pageful {
  private Pageful() {}

  /** One whose drafts lie in a folder below the billets. */
  static Page open(Path folder) {
    DataFolder data = DataFolder.packed();
    return Page.open(
        new Page.Setting(
            data,
            Walks.CORRELATIONS,
            SteelTable.load(data),
            folder,
            folder.resolve("state"),
            0,
            new Colophon("seamsoak", "The tables packed with it.", "page")));
  }
}
