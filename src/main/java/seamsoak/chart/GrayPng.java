package seamsoak.chart;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import seamsoak.face.FacePicture;

/**
 * Writes a picture of even steps of lightness as PNG, with its size in the world in it: the same
 * bytes on every machine.
 */
public final class GrayPng {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
  private static final int STEPS = 256;
  private static final int INDEXED = 3;
  private static final int PIXELS_PER_METRE = 1;

  /** Each pixel is told by what it has more than the one before it. */
  private static final byte LESS_THE_LEFT = 1;

  private GrayPng() {}

  /**
   * The file.
   *
   * @param title what it shows
   * @param description the same for who cannot see it
   */
  public static byte[] of(FacePicture picture, String title, String description) {
    int across = picture.size().across();
    int up = picture.size().up();
    int perMetre = picture.size().perMetre();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(SIGNATURE);
    chunk(
        out,
        "IHDR",
        ByteBuffer.allocate(13)
            .putInt(across)
            .putInt(up)
            .put((byte) 8)
            .put((byte) INDEXED)
            .array());
    chunk(out, "sRGB", new byte[1]);
    chunk(out, "PLTE", palette());
    chunk(
        out,
        "pHYs",
        ByteBuffer.allocate(9)
            .putInt(perMetre)
            .putInt(perMetre)
            .put((byte) PIXELS_PER_METRE)
            .array());
    text(out, "Title", title);
    text(out, "Description", description);
    chunk(out, "IDAT", Deflated.of(rows(across, up, picture.levels())));
    chunk(out, "IEND", new byte[0]);
    return out.toByteArray();
  }

  /** 256 grays, each as much lighter than the one before (CIE L*), in sRGB. */
  private static byte[] palette() {
    byte[] all = new byte[3 * STEPS];
    for (int i = 0; i < STEPS; i++) {
      double f = (100.0 * i / (STEPS - 1) + 16) / 116;
      double light = f > 6.0 / 29 ? f * f * f : (f - 4.0 / 29) * 3 * 36 / 841;
      double gray =
          light <= 0.0031308 ? 12.92 * light : 1.055 * StrictMath.pow(light, 1 / 2.4) - 0.055;
      byte level = (byte) StrictMath.round(255 * gray);
      for (int c = 0; c < 3; c++) {
        all[3 * i + c] = level;
      }
    }
    return all;
  }

  private static byte[] rows(int across, int up, byte[] levels) {
    byte[] rows = new byte[up * (across + 1)];
    for (int y = 0; y < up; y++) {
      int at = y * (across + 1);
      rows[at] = LESS_THE_LEFT;
      byte left = 0;
      for (int x = 0; x < across; x++) {
        byte here = levels[y * across + x];
        rows[at + 1 + x] = (byte) (here - left);
        left = here;
      }
    }
    return rows;
  }

  /** In UTF-8, not packed. */
  private static void text(ByteArrayOutputStream out, String key, String text) {
    chunk(out, "iTXt", (key + "\0\0\0\0\0" + text).getBytes(StandardCharsets.UTF_8));
  }

  private static void chunk(ByteArrayOutputStream out, String name, byte[] content) {
    byte[] named =
        ByteBuffer.allocate(4 + content.length)
            .put(name.getBytes(StandardCharsets.US_ASCII))
            .put(content)
            .array();
    CRC32 sum = new CRC32();
    sum.update(named);
    out.writeBytes(ByteBuffer.allocate(4).putInt(content.length).array());
    out.writeBytes(named);
    out.writeBytes(ByteBuffer.allocate(4).putInt((int) sum.getValue()).array());
  }
}
