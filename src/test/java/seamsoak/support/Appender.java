package seamsoak.support;

import java.nio.file.Path;
import seamsoak.data.Fault;
import seamsoak.data.JsonEditor;
import seamsoak.data.JsonPath;
import seamsoak.data.JsonValue;
import seamsoak.data.UserFile;

/** Adds items to the list {@code all} of a file of the user's, or takes the last one back. */
public final class Appender {
  private static final JsonPath ALL = JsonPath.ROOT.key("all");

  private Appender() {}

  /**
   * File, name, and how many: those are added; with none, one is added and taken back in turns
   * until the program is killed.
   */
  public static void main(String[] args) {
    Path file = Path.of(args[0]);
    int many = args.length > 2 ? Integer.parseInt(args[2]) : 0;
    for (int i = 0; many == 0 || i < many; i++) {
      append(file, args[1] + i);
      if (many == 0 && i % 3 > 0) {
        undo(file);
      }
      System.out.write('.');
      System.out.flush();
    }
  }

  /** Tries again as long as others are quicker. */
  public static void append(Path file, String item) {
    again(
        () -> {
          UserFile read = UserFile.read(file.toString(), file);
          JsonEditor editor = new JsonEditor(file.toString(), read.text());
          int size = ((JsonValue.ListValue) editor.at(ALL).orElseThrow()).items().size();
          read.write(editor.set(ALL.item(size), item).text(), item);
        });
  }

  private static void undo(Path file) {
    again(() -> UserFile.read(file.toString(), file).undo());
  }

  private static void again(Runnable writing) {
    while (true) {
      try {
        writing.run();
        return;
      } catch (Fault late) {
        if (!late.getMessage().contains("it was changed by another hand while this ran")) {
          throw late;
        }
      }
    }
  }
}
