package seamsoak.carbon;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import seamsoak.carbon.problem.Steels;
import seamsoak.heat.HeatCurve;

/** The order in space, on a smooth profile in austenite whose diffusivity rises with carbon. */
class OrderTest {
  private static final int COARSEST = 20;

  @Test
  void secondOrderInSpace() {
    double[] coarse = solved(COARSEST);
    double[] middle = solved(2 * COARSEST);
    double[] fine = solved(4 * COARSEST);
    double[] finest = solved(8 * COARSEST);
    double first = difference(coarse, middle);
    double second = difference(middle, fine);
    double third = difference(fine, finest);
    assertEquals(2, Math.log(first / second) / Math.log(2), 0.15);
    assertEquals(2, Math.log(second / third) / Math.log(2), 0.15);
  }

  /** And where two steels meet: each side is smooth, the jump lies on a face. */
  @Test
  void secondOrderAcrossASeam() {
    double first = difference(couple(COARSEST), couple(2 * COARSEST));
    double second = difference(couple(2 * COARSEST), couple(4 * COARSEST));
    double third = difference(couple(4 * COARSEST), couple(8 * COARSEST));
    assertEquals(2, Math.log(first / second) / Math.log(2), 0.15);
    assertEquals(2, Math.log(second / third) / Math.log(2), 0.15);
  }

  private static double[] solved(int cells) {
    Metal steel = Steels.metal("1084");
    double length = 1e-3;
    double[] metres = new double[cells];
    double[] ratio = new double[cells];
    Arrays.fill(metres, length / cells);
    for (int i = 0; i < cells; i++) {
      double from = Math.PI * i / cells;
      double to = Math.PI * (i + 1) / cells;
      ratio[i] = 0.03 - 0.015 * (Math.sin(to) - Math.sin(from)) / (to - from);
    }
    return tight(Strip.of(steel, metres, ratio), 1323.15, 1200).ratios();
  }

  private static double[] couple(int cells) {
    double[] metres = new double[cells];
    double[] left = new double[cells];
    double[] right = new double[cells];
    Arrays.fill(metres, 0.5e-3 / cells);
    Arrays.fill(left, 0.02);
    Arrays.fill(right, 0.04);
    Strip start =
        Strip.of(Steels.metal("52100"), metres, left)
            .weldedTo(Strip.of(Steels.metal("75Ni8"), metres, right));
    return tight(start, 1373.15, 1800).ratios();
  }

  private static Strip tight(Strip start, double kelvin, double seconds) {
    return new StripSolver(Steels.FIRE, 1e-9)
        .advance(start, HeatCurve.hold(kelvin, seconds), Edge.SEALED)
        .strip();
  }

  /** Root mean square difference of the coarse cells from the pairs of fine cells within them. */
  private static double difference(double[] coarse, double[] fine) {
    double sum = 0;
    for (int i = 0; i < coarse.length; i++) {
      double d = coarse[i] - 0.5 * (fine[2 * i] + fine[2 * i + 1]);
      sum += d * d;
    }
    return Math.sqrt(sum / coarse.length);
  }
}
