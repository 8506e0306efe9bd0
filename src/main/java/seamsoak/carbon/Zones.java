package seamsoak.carbon;

import java.util.Arrays;

/** The stretches of a strip in which nothing hinders a new grid, or scale that eats its way in. */
public final class Zones {
  private Zones() {}

  /** Where the metal changes or a seam lies, as faces, both edges included. */
  public static int[] of(Strip strip) {
    int cells = strip.cells();
    int[] faces = new int[cells + 1];
    int count = 1;
    int next = 0;
    for (int f = 1; f <= cells; f++) {
      while (next < strip.planes().size() && strip.planes().get(next).face() < f) {
        next++;
      }
      boolean seam = next < strip.planes().size() && strip.planes().get(next).face() == f;
      if (seam || f == cells || strip.metalIndex(f - 1) != strip.metalIndex(f)) {
        faces[count++] = f;
      }
    }
    return Arrays.copyOf(faces, count);
  }
}
