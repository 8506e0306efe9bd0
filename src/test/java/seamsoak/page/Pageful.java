package seamsoak.page;

import java.nio.file.Path;

/** Pages for tests. */
final class Pageful {
  private Pageful() {}

  static Page open(Path folder) {
    return Page.open(folder, 0);
  }
}
