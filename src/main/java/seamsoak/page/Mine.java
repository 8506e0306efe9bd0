package seamsoak.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import seamsoak.data.Fault;
import seamsoak.data.JsonValue.Member;
import seamsoak.data.JsonValue.ObjectValue;
import seamsoak.data.JsonValue.TextValue;
import seamsoak.data.PrivateFile;

/** Files that the program keeps for itself where nobody but the user reads. */
final class Mine {
  private Mine() {}

  /** The user's own folder for what programs remember, as each system has it. */
  static Path folder() {
    String given = System.getProperty("seamsoak.state"); // for tests, and for more than one user
    if (given != null) {
      return Path.of(given);
    }
    String home = System.getProperty("user.home", ".");
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    String windows = System.getenv("LOCALAPPDATA");
    String linux = System.getenv("XDG_STATE_HOME");
    Path state =
        system.startsWith("windows") && windows != null
            ? Path.of(windows)
            : system.startsWith("mac")
                ? Path.of(home, "Library", "Application Support")
                : linux != null && linux.startsWith("/")
                    ? Path.of(linux)
                    : Path.of(home, ".local", "state");
    return state.resolve("seamsoak");
  }

  /** Writes it whole or not at all; a full or missing disk costs the file, not the work. */
  static void write(Path file, String text) {
    try {
      PrivateFile.write(file, text);
    } catch (Fault fault) {
      // the page goes on without
    }
  }

  /** What such a file says; nothing where there is none. */
  static String read(Path file) {
    try {
      return Files.exists(file) ? Files.readString(file) : "";
    } catch (IOException e) {
      return "";
    }
  }

  /**
   * What such a file holds under a key; {@code IllegalArgumentException} where it is none of ours.
   */
  static String text(ObjectValue object, String key) {
    Member member = object.members().get(key);
    if (member != null && member.value() instanceof TextValue text) {
      return text.text();
    }
    throw new IllegalArgumentException("not written by us");
  }

  static void remove(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      // it says nothing that is believed without looking
    }
  }
}
