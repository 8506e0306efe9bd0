package seamsoak.heatlog;

import java.util.Arrays;

/** Numbers of which nobody knows yet how many there will be. */
final class Numbers {
  private double[] values = new double[1024];
  private int size;

  void add(double value) {
    if (size == values.length) {
      values = Arrays.copyOf(values, 2 * size);
    }
    values[size++] = value;
  }

  int size() {
    return size;
  }

  double last() {
    return values[size - 1];
  }

  double[] array() {
    return Arrays.copyOf(values, size);
  }
}
