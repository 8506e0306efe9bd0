package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.support.Ran;

/** The gallery in {@code charts/} is what the demo command draws today. */
class GalleryTest {
  private static final Pattern TEXT = Pattern.compile("<(?:text|title|desc)[^>]*>([^<]*)<");

  /** What is drawn: paths, lines, shapes; the numbers in them are the data on the page. */
  private static final Pattern DRAWN =
      Pattern.compile(" (?:d|x|y|x1|x2|y1|y2|cx|cy|r|width|height|points)=\"([^\"]*)\"");

  private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(?:\\.[0-9]+)?");

  /** In units of the page, of which a chart is 960 wide. */
  private static final double LINE = 0.5;

  @TempDir private Path folder;

  @Test
  void theGalleryIsWhatTheDemoDraws() throws IOException {
    Path out = folder.resolve("charts");
    Ran ran = Ran.run("plan", "alloy-data/billets/mosaic.json", "--out", out.toString());
    assertEquals(0, ran.code(), ran.err());
    List<Path> kept;
    try (Stream<Path> files = Files.list(Path.of("charts"))) {
      kept = files.filter(f -> f.toString().endsWith(".svg")).sorted().toList();
    }
    assertTrue(kept.size() >= 3, kept.toString());
    for (Path chart : kept) {
      Path fresh = out.resolve(chart.getFileName());
      assertTrue(Files.exists(fresh), chart + " is drawn no more");
      String before = Files.readString(chart);
      String now = Files.readString(fresh);
      assertEquals(all(TEXT, before), all(TEXT, now), chart + ": words");
      List<Double> numbersBefore = numbers(before);
      List<Double> numbersNow = numbers(now);
      assertEquals(numbersBefore.size(), numbersNow.size(), chart + ": shapes");
      for (int i = 0; i < numbersNow.size(); i++) {
        assertEquals(numbersBefore.get(i), numbersNow.get(i), LINE, chart + ": place " + i);
      }
    }
    Matcher shown =
        Pattern.compile("\\]\\(charts/([^)]*)\\)").matcher(Files.readString(Path.of("README.md")));
    int count = 0;
    while (shown.find()) {
      count++;
      assertTrue(Files.exists(out.resolve(shown.group(1))), "README shows " + shown.group(1));
    }
    assertEquals(2, count, "pictures in the README");
  }

  private static List<String> all(Pattern pattern, String svg) {
    List<String> found = new ArrayList<>();
    Matcher m = pattern.matcher(svg);
    while (m.find()) {
      found.add(m.group(1));
    }
    return found;
  }

  private static List<Double> numbers(String svg) {
    List<Double> numbers = new ArrayList<>();
    for (String drawn : all(DRAWN, svg)) {
      Matcher m = NUMBER.matcher(drawn);
      while (m.find()) {
        numbers.add(Double.valueOf(m.group()));
      }
    }
    return numbers;
  }
}
