package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.support.Child;

/**
 * Killed at random moments while a billet is changed, the page keeps what was not saved: never an
 * older text than was kept already, and never half of one. {@code -Dkills=50} sets how often.
 */
@Tag("long")
@Timeout(3600)
class PageKilledTest {
  private static final int KILLS = Integer.getInteger("kills", Boolean.getBoolean("long") ? 50 : 2);
  private static final Pattern LINK = Pattern.compile("http://127\\.[0-9.]+:[0-9]+/in\\?t=[\\w-]+");
  private static final String FIELD = "stack.length";

  @TempDir private Path folder;

  @Test
  void noDraftIsLost() throws Exception {
    SplittableRandom random = new SplittableRandom(System.nanoTime());
    int sent = 100; // the length of the stack, mm: it only grows
    int last = 0;
    int behind = 0;
    for (int kill = 0; kill <= KILLS; kill++) {
      Child child = start();
      try {
        Visitor smith = Visitor.in(link(child));
        String desk =
            kill == 0
                ? smith
                    .post("/new", Map.of("pattern", "mosaic", "units", "metric", "name", "mine"))
                    .header("Location")
                : smith.post("/open", Map.of("file", "mine.json")).header("Location");
        Visitor.Reply bench = smith.get(desk);
        int found = Integer.parseInt(FormsOnly.value(bench, FIELD));
        if (kill > 0) {
          assertTrue(found >= last && found <= sent, last + " was kept, " + found + " is left");
          assertEquals(200, smith.get(desk + "/billet.json").status());
          behind += sent - found;
        }
        if (kill == KILLS) {
          System.out.println(
              "Killed " + KILLS + " times: " + behind + " changes of less than a second were lost");
          return;
        }
        sent = found;
        int number = Integer.parseInt(FormsOnly.number(bench));
        int until = 1 + random.nextInt(6);
        for (int i = 0; i < until; i++) {
          Map<String, String> change = Map.of("rev", "" + number++, FIELD, "" + (sent + 1));
          sent++;
          assertEquals(303, smith.post(desk + "/edit", change).status());
          if (i == until / 2) {
            last = kept(sent);
          }
        }
        Thread.sleep(random.nextInt(1500));
      } finally {
        child.process().destroyForcibly();
        child.code();
      }
    }
  }

  private Child start() throws IOException {
    return Child.start(
        folder,
        List.of("-Dseamsoak.state=" + folder.resolve("state")),
        "seamsoak.cli.Main",
        List.of("page", "--no-browser"));
  }

  private static String link(Child child) throws Exception {
    for (int i = 0; i < 1200; i++) {
      Matcher link = LINK.matcher(Files.readString(child.out()));
      if (link.find()) {
        return link.group();
      }
      Thread.sleep(50);
    }
    throw new AssertionError("no link: " + child.said());
  }

  /** Waits until a length stands in the draft on the disk. */
  private int kept(int length) throws Exception {
    for (int i = 0; i < 600; i++) {
      List<Path> drafts = new ArrayList<>();
      if (Files.isDirectory(folder.resolve("state/drafts"))) {
        try (Stream<Path> files = Files.list(folder.resolve("state/drafts"))) {
          files.filter(f -> f.toString().endsWith(".json")).forEach(drafts::add);
        }
      }
      for (Path draft : drafts) {
        if (Files.readString(draft).contains("\\\"length\\\": " + length)) {
          return length;
        }
      }
      Thread.sleep(50);
    }
    throw new AssertionError("it is not kept");
  }
}
