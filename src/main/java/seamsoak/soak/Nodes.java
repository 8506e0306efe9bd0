package seamsoak.soak;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * A normal distribution at a few equally spaced places, by which a smooth function is averaged over
 * it nearly exactly.
 *
 * @param sigmas the places
 * @param weights of each, 1 together
 */
record Nodes(double[] sigmas, double[] weights) {
  static Nodes of(int count, double apart) {
    double[] z =
        IntStream.range(0, count).mapToDouble(i -> apart * (i - (count - 1) / 2.0)).toArray();
    double[] density = Arrays.stream(z).map(x -> Math.exp(-x * x / 2)).toArray();
    double sum = Arrays.stream(density).sum();
    return new Nodes(z, Arrays.stream(density).map(d -> d / sum).toArray());
  }

  int count() {
    return sigmas.length;
  }
}
