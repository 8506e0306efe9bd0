package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.support.Ran;

/** The face as a file, in words and as JSON. */
@Tag("slow")
class FaceCommandTest {
  private static final String MOSAIC = "alloy-data/billets/mosaic.json";

  @TempDir private Path folder;

  private Ran face(String file, String... more) {
    Path out = folder.resolve(file);
    String[] args = new String[4 + more.length];
    System.arraycopy(new String[] {"face", MOSAIC, "--out", out.toString()}, 0, args, 0, 4);
    System.arraycopy(more, 0, args, 4, more.length);
    return Ran.run(args);
  }

  @Test
  void pictureIsAsLargeAsItSays() throws IOException {
    Ran ran = face("now.png", "--json");
    assertEquals(0, ran.code(), ran.err());
    BufferedImage picture = ImageIO.read(folder.resolve("now.png").toFile());
    assertEquals(ran.number("acrossPixels"), picture.getWidth());
    assertEquals(ran.number("upPixels"), picture.getHeight());
    assertEquals(ran.number("acrossMm"), picture.getWidth() * ran.number("mmPerPixel"), 1e-6);
    assertEquals("top", ran.text("view"));
    assertEquals("as-cooled", ran.text("etched"));
    assertEquals(15, ran.number("step"));
    assertEquals(folder.resolve("now.png").toString(), ran.text("files.0"));
    // each line has its contrast and what comes of it
    for (int i = 0; i < ran.list("lines").size(); i++) {
      String at = "lines." + i + ".";
      assertEquals(
          ran.number(at + "contrast") >= 1, ran.at(at + "visible").toString().contains("true"), at);
    }
    assertFalse(ran.list("edge.across").isEmpty());
  }

  /** What it says of the lines is what the soak says of them. */
  @Test
  void itAgreesWithTheSoak() {
    Ran face = face("now.png", "--json");
    Ran soak = Ran.run("soak", MOSAIC, "--samples", "0", "--json");
    assertEquals(soak.list("lines").size(), face.list("lines").size());
    for (int i = 0; i < face.list("lines").size(); i++) {
      String at = "lines." + i + ".contrast";
      assertEquals(soak.number(at), face.number(at), 1e-9);
    }
  }

  @Test
  void sizesAreToldInEitherSystemAndThePictureIsTheSame() throws IOException {
    Ran us = face("us.png", "--units", "us");
    Ran metric = face("metric.png", "--units", "metric");
    assertTrue(us.out().contains(" in ") && !us.out().contains(" mm by"), us.out());
    assertTrue(metric.out().contains(" mm by") && !metric.out().contains(" in by"), metric.out());
    assertArrayEquals(
        Files.readAllBytes(folder.resolve("us.png")),
        Files.readAllBytes(folder.resolve("metric.png")));
  }

  @Test
  void theEndOfTheBarIsShownBeforeTheTiles() {
    Ran ran = face("bar.png", "--after", "10", "--etch", "hardened", "--json");
    assertEquals(0, ran.code(), ran.err());
    assertEquals("end", ran.text("view"));
    assertEquals("hardened", ran.text("etched"));
    assertTrue(
        ran.out().replace(" ", "").contains("\"edge\":null"),
        "no blade lies in a bar that becomes tiles yet");
    Ran loose = face("loose.png", "--after", "4");
    assertEquals(3, loose.code());
    assertTrue(loose.err().contains("not welded"), loose.err());
    assertFalse(Files.exists(folder.resolve("loose.png")));
  }

  @Test
  void afterTheSoakAndAtTheEnd() {
    Ran soak = face("soak.png", "--after", "soak", "--samples", "2", "--json");
    assertEquals("soak", soak.text("after"));
    Ran end = face("end.png", "--after", "harden", "--samples", "2", "--json");
    assertEquals("schedule", end.text("after"));
    assertEquals("hardened", end.text("etched"));
  }

  @Test
  void aFileOfSomebodyElsesStaysUnlessThatIsAsked() throws IOException {
    Path mine = Files.writeString(folder.resolve("mine.png"), "mine");
    Ran ran = face("mine.png");
    assertEquals(3, ran.code());
    assertEquals("mine", Files.readString(mine));
    assertEquals(0, face("mine.png", "--replace").code());
    assertEquals(0, face("mine.png").code());
  }

  @Test
  void aTwistedBarIsRefused() throws IOException {
    String twisted =
        Files.readString(Path.of("src/test/resources/hostile/quick.json"))
            .replaceFirst(
                "\"for\": \"5 min\" }\\] }",
                "\"for\": \"5 min\" }] }, { \"do\": \"twist\", \"turns\": 2, \"over\": \"50 mm\","
                    + " \"heats\": [{ \"at\": \"1100 C\", \"for\": \"2 min\" }] }");
    Path file = Files.writeString(folder.resolve("twisted.json"), twisted);
    Ran ran = Ran.run("face", file.toString(), "--out", folder.resolve("t.png").toString());
    assertEquals(3, ran.code(), ran.out());
    assertEquals(1, ran.err().strip().lines().count(), ran.err());
    assertTrue(ran.err().contains("twisted bar"), ran.err());
  }
}
