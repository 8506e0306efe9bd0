package seamsoak.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** The browser that the user of this machine has chosen, if the system knows how to open it. */
final class BrowserOfUser {
  private BrowserOfUser() {}

  /** Opens a link; where that cannot be done, the printed one is there to be copied. */
  static void open(String link) {
    for (List<String> command : commands(link)) {
      try {
        new ProcessBuilder(command)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
        return;
      } catch (IOException e) {
        // not on this machine
      }
    }
  }

  private static List<List<String>> commands(String link) {
    String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
    List<String> usual =
        system.startsWith("windows")
            ? List.of("rundll32", "url.dll,FileProtocolHandler", link)
            : List.of(system.startsWith("mac") ? "open" : "xdg-open", link);
    String chosen = System.getenv("BROWSER");
    return chosen == null || chosen.isBlank()
        ? List.of(usual)
        : List.of(List.of(chosen, link), usual);
  }
}
