package seamsoak.face;

/** What a picture's metal has of a grain: the same at the same place, in every picture. */
final class Grain {
  private static final double HALF = 0x1p31;

  private Grain() {}

  /** From -1 to 1, most about 0: the mean of two numbers that are as good as random. */
  static double at(int column, int row) {
    return (mixed(2 * row, column) + mixed(2 * row + 1, column)) / (2 * HALF);
  }

  /** The bits of two numbers stirred, as hash tables do. */
  private static int mixed(int a, int b) {
    int h = a * 0x9E3779B1 ^ Integer.rotateLeft(b * 0x85EBCA6B, 15);
    h ^= h >>> 16;
    h *= 0x85EBCA6B;
    h ^= h >>> 13;
    h *= 0xC2B2AE35;
    return h ^ h >>> 16;
  }
}
