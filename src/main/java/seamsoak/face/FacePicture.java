package seamsoak.face;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import seamsoak.billet.Shop;
import seamsoak.carbon.Metal;
import seamsoak.property.etch.Tone;
import seamsoak.state.Etch;
import seamsoak.steel.Steel;

/**
 * A part of the shown face in levels of lightness.
 *
 * @param size how much of it, to what scale
 * @param levels row by row from the top
 */
public record FacePicture(FaceSize size, byte[] levels) {
  /**
   * Places looked at in a pixel, so that thin layers do not make false ones: on one diagonal, and
   * in the pixels beside it on the other, which tells of lines along and across as much as a square
   * of them.
   */
  private static final int IN_A_PIXEL = 2;

  /** Pixels of a dash. */
  private static final int DASH = 8;

  /** How light each steel is far from any line, and how white by its carbon. */
  private record Shades(double[] layer, double[] far, DoubleUnaryOperator[] whiteness) {
    static Shades of(FaceField face, Shop shop, Etch etch) {
      List<Steel> steels = face.alloys();
      int n = steels.size();
      Shades s = new Shades(new double[n], new double[n], new DoubleUnaryOperator[n]);
      Tone tone = shop.correlations().etching().tone();
      for (int i = 0; i < n; i++) {
        Metal metal = face.steels().get(i);
        s.whiteness[i] = etch.byMetal().get(metal.name()).get(0);
        s.far[i] = s.whiteness[i].applyAsDouble(face.farPct(i));
        s.layer[i] =
            s.far[i]
                + tone.ofAlloy(
                    shop.correlations().mechanics().brightness().of(steels.get(i).analysis()));
      }
      double darkest = IntStream.range(0, n).mapToDouble(i -> s.layer[i]).min().orElse(0);
      for (int i = 0; i < n; i++) {
        s.layer[i] -= darkest;
      }
      return s;
    }
  }

  /**
   * The middle of a face.
   *
   * @param grain whether the metal has a grain; without it, what is measured in the picture is what
   *     the metal shows
   */
  public static FacePicture of(FaceField face, Shop shop, Etch etch, FaceSize size, boolean grain) {
    int across = size.across();
    int up = size.up();
    Shades shades = Shades.of(face, shop, etch);
    Tone tone = shop.correlations().etching().tone();
    double pixel = size.mmPerPixel() * 1e-3;
    byte[] levels = new byte[across * up];
    IntStream.range(0, up)
        .parallel()
        .forEach(
            row -> {
              FaceField.Look look = face.new Look();
              for (int column = 0; column < across; column++) {
                double sum = 0;
                for (int i = 0; i < IN_A_PIXEL; i++) {
                  double down = (i + 0.5) / IN_A_PIXEL;
                  double right = (column + row) % 2 == 0 ? down : 1 - down;
                  look.at((column + right - across / 2.0) * pixel, (up / 2.0 - row - down) * pixel);
                  int s = look.steel();
                  double white = shades.whiteness[s].applyAsDouble(look.percent());
                  sum += tone.level(shades.layer[s], white - shades.far[s]);
                }
                double level = sum / IN_A_PIXEL;
                level += grain ? tone.grain() * Grain.at(column, row) : 0;
                levels[row * across + column] = (byte) level(level);
              }
            });
    return new FacePicture(size, levels);
  }

  /** With the outline of a blade, dashed black and white, so that it is seen on anything. */
  public FacePicture with(BladeOutline blade, boolean plan) {
    byte[] drawn = levels.clone();
    for (BladeOutline.Stroke s : blade.strokes(plan)) {
      double x = pixel(s.x1()) + size.across() / 2.0;
      double y = size.up() / 2.0 - pixel(s.y1());
      double dx = pixel(s.x2() - s.x1());
      double dy = -pixel(s.y2() - s.y1());
      int steps = (int) Math.ceil(Math.max(Math.abs(dx), Math.abs(dy)));
      for (int i = 0; i <= steps; i++) {
        double part = steps == 0 ? 0 : (double) i / steps;
        byte ink = (byte) (i / DASH % 2 == 0 ? Tone.LEVELS - 1 : 0);
        dot(drawn, x + part * dx, y + part * dy, ink);
      }
    }
    return new FacePicture(size, drawn);
  }

  private double pixel(double metres) {
    return 1e3 * metres / size.mmPerPixel();
  }

  /** Two pixels wide. */
  private void dot(byte[] drawn, double x, double y, byte ink) {
    for (int i = 0; i < 4; i++) {
      int column = (int) Math.floor(x) + i % 2 - 1;
      int row = (int) Math.floor(y) + i / 2 - 1;
      if (column >= 0 && column < size.across() && row >= 0 && row < size.up()) {
        drawn[row * size.across() + column] = ink;
      }
    }
  }

  private static int level(double level) {
    return Math.max(0, Math.min(Tone.LEVELS - 1, (int) (level + 0.5)));
  }

  /** The level of a pixel, 0 black. */
  public int level(int column, int row) {
    return levels[row * size.across() + column] & 0xFF;
  }
}
