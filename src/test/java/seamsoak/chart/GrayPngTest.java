package seamsoak.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.face.FacePicture;
import seamsoak.face.FaceSize;

/** A picture as it is written, read by somebody else's reader. */
class GrayPngTest {
  @ParameterizedTest
  @CsvSource({
    "1, 1, 0",
    "1, 1, 255",
    "64, 64, 0",
    "300, 7, 1",
    "257, 3, 2",
    "40, 40, 3",
    "640, 480, 4"
  })
  void isReadAsItWasWritten(int across, int up, int kind) throws IOException {
    byte[] levels = new byte[across * up];
    Random random = new Random(20261130);
    for (int i = 0; i < levels.length; i++) {
      levels[i] =
          (byte)
              switch (kind) {
                case 0, 255 -> kind;
                case 1 -> i % across;
                case 2 -> random.nextInt(256);
                // some come a million times as often as others
                case 3 -> 128 + (int) (12 * random.nextGaussian());
                default -> i % 97 == 0 ? random.nextInt(256) : 60;
              };
    }
    BufferedImage read = read(levels, across, up);
    assertEquals(across, read.getWidth());
    assertEquals(up, read.getHeight());
    int[] index = read.getRaster().getSamples(0, 0, across, up, 0, new int[levels.length]);
    for (int i = 0; i < levels.length; i++) {
      assertEquals(levels[i] & 0xFF, index[i]);
    }
  }

  /** Each a step of CIE L*, as near as 256 grays come. */
  @Test
  void lightnessGoesInEvenSteps() throws IOException {
    byte[] levels = new byte[256];
    for (int i = 0; i < 256; i++) {
      levels[i] = (byte) i;
    }
    BufferedImage read = read(levels, 256, 1);
    for (int i = 0; i < 256; i++) {
      int rgb = read.getRGB(i, 0);
      assertEquals(rgb & 0xFF, rgb >> 8 & 0xFF);
      assertEquals(rgb & 0xFF, rgb >> 16 & 0xFF);
      double gray = (rgb & 0xFF) / 255.0;
      double light = gray <= 0.04045 ? gray / 12.92 : Math.pow((gray + 0.055) / 1.055, 2.4);
      double lightness = light > 216.0 / 24389 ? 116 * Math.cbrt(light) - 16 : light * 24389 / 27;
      assertEquals(100.0 * i / 255, lightness, 0.25);
    }
  }

  @Test
  void saysItsSizeInTheWorldAndWhatItShows() {
    byte[] png =
        GrayPng.of(new FacePicture(new FaceSize(1, 1, 0.05), new byte[1]), "A face", "No line.");
    String text = new String(png, StandardCharsets.ISO_8859_1);
    int at = text.indexOf("pHYs") + 4;
    byte[] perMetre = {0, 0, 0x4E, 0x20, 0, 0, 0x4E, 0x20, 1};
    assertTrue(Arrays.equals(perMetre, Arrays.copyOfRange(png, at, at + 9)));
    assertTrue(text.contains("Title\0\0\0\0\0A face"));
    assertTrue(text.contains("Description\0\0\0\0\0No line."));
  }

  private static BufferedImage read(byte[] levels, int across, int up) throws IOException {
    byte[] png =
        GrayPng.of(new FacePicture(new FaceSize(across, up, 0.1), levels), "title", "shows");
    return ImageIO.read(new ByteArrayInputStream(png));
  }
}
