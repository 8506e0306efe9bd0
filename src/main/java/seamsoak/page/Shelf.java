package seamsoak.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import seamsoak.data.Fault;
import seamsoak.data.JsonTree;
import seamsoak.data.JsonValue.ObjectValue;
import seamsoak.data.Place;

/** The billets of one folder, and of none below it. */
record Shelf(Path folder) {
  private static final int MOST = 500;

  /** What is shown of it. */
  record View(String folder, List<String> names) {}

  View view() {
    return new View(folder.toString(), names());
  }

  /**
   * The files that hold a billet, by their names; {@link Fault} where the folder cannot be read.
   */
  List<String> names() {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(f -> Files.isRegularFile(f, LinkOption.NOFOLLOW_LINKS))
          .map(f -> f.getFileName().toString())
          .filter(n -> n.endsWith(".json") && !n.startsWith("."))
          .sorted()
          .limit(MOST)
          .filter(n -> mayBeBillet(folder.resolve(n)))
          .toList();
    } catch (IOException e) {
      throw new Fault(
          Place.of(folder.toString()), "this folder cannot be read", "give another by --folder");
    }
  }

  /** Whether it has steps; one that cannot be read may be a billet with a slip in it. */
  private static boolean mayBeBillet(Path file) {
    try {
      return JsonTree.read(file.toString(), file) instanceof ObjectValue o
          && (o.members().containsKey("steps") || o.members().containsKey("stack"));
    } catch (Fault unreadable) {
      return true;
    }
  }
}
