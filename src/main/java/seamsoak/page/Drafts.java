package seamsoak.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import seamsoak.data.Fault;
import seamsoak.data.JsonTree;
import seamsoak.data.JsonValue.ListValue;
import seamsoak.data.JsonValue.ObjectValue;
import seamsoak.data.JsonValue.TextValue;
import seamsoak.data.JsonWriter;
import seamsoak.data.PrivateFile;

/**
 * Changes that were not saved yet, kept where nobody but the user reads, so that a crash loses
 * nothing. What cannot be kept is not: the page goes on without.
 *
 * @param folder need not be there yet
 */
record Drafts(Path folder) {
  /**
   * A billet that was not saved.
   *
   * @param file that it is for
   * @param base digest of what the file said when the changes began; empty where there was none
   * @param text as it is by now
   * @param sent ids of what was recorded in it, the last ones: it may be sent once more
   */
  record Draft(Path file, String base, String text, List<String> sent) {}

  static String digest(String text) {
    return HexFormat.of().formatHex(Seal.sha256(text.getBytes(StandardCharsets.UTF_8)));
  }

  private Path place(Path file) {
    return folder.resolve(digest(file.toString()).substring(0, 32) + ".json");
  }

  void keep(Draft draft) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("file", draft.file().toString());
    all.put("base", draft.base());
    all.put("text", draft.text());
    all.put("sent", draft.sent());
    Mine.write(place(draft.file()), JsonWriter.write(all));
  }

  void drop(Path file) {
    Mine.remove(place(file));
  }

  /** Those of the billets in a folder. */
  List<Draft> of(Path billets) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    PrivateFile.clear(folder);
    List<Draft> all = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      files
          .filter(f -> f.getFileName().toString().matches("[0-9a-f]{32}\\.json"))
          .sorted()
          .forEach(
              f -> read(f).filter(d -> billets.equals(d.file().getParent())).ifPresent(all::add));
    } catch (IOException e) {
      return List.of();
    }
    return all;
  }

  /** Drafts of earlier versions have none. */
  private static List<String> sent(ObjectValue draft) {
    return draft.members().get("sent") != null
            && draft.members().get("sent").value() instanceof ListValue list
        ? list.items().stream()
            .filter(TextValue.class::isInstance)
            .map(i -> ((TextValue) i).text())
            .toList()
        : List.of();
  }

  private static Optional<Draft> read(Path file) {
    try {
      return JsonTree.read(file.toString(), file) instanceof ObjectValue o
          ? Optional.of(
              new Draft(
                  Path.of(Mine.text(o, "file")),
                  Mine.text(o, "base"),
                  Mine.text(o, "text"),
                  sent(o)))
          : Optional.empty();
    } catch (Fault | IllegalArgumentException unreadable) {
      return Optional.empty();
    }
  }
}
