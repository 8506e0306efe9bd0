package seamsoak.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import seamsoak.data.Fault;
import seamsoak.data.JsonTree;
import seamsoak.data.JsonValue;
import seamsoak.data.JsonValue.ListValue;
import seamsoak.data.JsonValue.ObjectValue;
import seamsoak.data.JsonValue.TextValue;
import seamsoak.data.Place;
import seamsoak.words.PageWords;

/** The billets of one folder, and of none below it. */
record Shelf(Path folder) {
  private static final int MOST = 500;
  private static final String ENDING = ".json";

  ShelfPage page(Desks desks, boolean metric, String notice) {
    Set<String> files = new LinkedHashSet<>();
    desks.all().forEach(d -> files.add(d.file()));
    List<String> there = files();
    files.addAll(there);
    List<ShelfPage.Entry> entries = new ArrayList<>();
    for (String file : files.stream().sorted(String.CASE_INSENSITIVE_ORDER).toList()) {
      Optional<Desk> desk = desks.of(file);
      entry(file, desk).ifPresent(entries::add);
    }
    return new ShelfPage(folder.toString(), entries, metric, notice);
  }

  /**
   * The names of the folder's files that may hold a billet; {@link Fault} where it cannot be read.
   */
  List<String> files() {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(f -> Files.isRegularFile(f, LinkOption.NOFOLLOW_LINKS))
          .map(f -> f.getFileName().toString())
          .filter(n -> n.endsWith(ENDING) && !n.startsWith("."))
          .sorted()
          .limit(MOST)
          .toList();
    } catch (IOException e) {
      throw new Fault(
          Place.of(folder.toString()), "this folder cannot be read", "give another by --folder");
    }
  }

  /** A file that holds something else is none. */
  private Optional<ShelfPage.Entry> entry(String file, Optional<Desk> desk) {
    String name = file.substring(0, file.length() - ENDING.length());
    if (desk.isPresent() && !desk.get().now().isSaved()) {
      return Optional.of(
          new ShelfPage.Entry(
              name, file, PageWords.NOT_SAVED, !desk.get().now().proof().made().isEmpty()));
    }
    try {
      return JsonTree.read(file, folder.resolve(file)) instanceof ObjectValue o && isBillet(o)
          ? Optional.of(new ShelfPage.Entry(name, file, state(o), true))
          : Optional.empty();
    } catch (Fault fault) {
      return Optional.of(
          new ShelfPage.Entry(
              name, file, PageWords.unreadable(fault.mistakes().get(0).said()), false));
    }
  }

  private static boolean isBillet(ObjectValue o) {
    return o.members().containsKey("steps") && o.members().containsKey("stack");
  }

  private static String state(ObjectValue o) {
    String called =
        o.members().containsKey("name") && o.members().get("name").value() instanceof TextValue text
            ? text.text()
            : "";
    List<JsonValue> steps =
        o.members().get("steps").value() instanceof ListValue list ? list.items() : List.of();
    return PageWords.steps(
        called, steps.size(), (int) steps.stream().filter(Shelf::isDone).count());
  }

  private static boolean isDone(JsonValue step) {
    if (!(step instanceof ObjectValue o)) {
      return false;
    }
    return o.members().containsKey("done")
        || o.members().containsKey("heats")
            && o.members().get("heats").value() instanceof ListValue heats
            && heats.items().stream()
                .anyMatch(h -> h instanceof ObjectValue heat && heat.members().containsKey("done"));
  }
}
