package seamsoak.numeric;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TridiagonalTest {
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 50, 400})
  void givesBackTheVectorThatTheRightSideWasMadeFrom(int n) {
    SplittableRandom random = new SplittableRandom(n);
    double[] lower = random.doubles(n, -1, 1).toArray();
    double[] upper = random.doubles(n, -1, 1).toArray();
    double[] diagonal = random.doubles(n, 2.1, 4).toArray();
    double[] x = random.doubles(n, -5, 5).toArray();
    double[] right = new double[n];
    for (int i = 0; i < n; i++) {
      right[i] =
          (i > 0 ? lower[i] * x[i - 1] : 0)
              + diagonal[i] * x[i]
              + (i < n - 1 ? upper[i] * x[i + 1] : 0);
    }
    Tridiagonal matrix = new Tridiagonal(n);
    for (int i = 0; i < n; i++) {
      matrix.row(i, lower[i], diagonal[i], upper[i], right[i]);
    }
    assertArrayEquals(x, matrix.solved(), 1e-12, "seed " + n);
    for (int i = 0; i < n; i++) {
      matrix.right(i, -2 * right[i]);
    }
    double[] other = Arrays.stream(x).map(v -> -2 * v).toArray();
    assertArrayEquals(other, matrix.solved(), 2e-12, "seed " + n);
  }
}
