package seamsoak.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class TrBdf2Test {
  private static final double HOUR = 1;

  @Test
  void secondOrderInTime() {
    double[] reference = run(2048);
    double e8 = distance(run(8), reference);
    double e16 = distance(run(16), reference);
    double e32 = distance(run(32), reference);
    double e64 = distance(run(64), reference);
    assertEquals(2, Math.log(e8 / e16) / Math.log(2), 0.15);
    assertEquals(2, Math.log(e16 / e32) / Math.log(2), 0.15);
    assertEquals(2, Math.log(e32 / e64) / Math.log(2), 0.15);
  }

  @Test
  void fallbackIsFirstOrder() {
    double[] reference = run(2048);
    double e64 = distance(euler(64), reference);
    double e128 = distance(euler(128), reference);
    assertEquals(1, Math.log(e64 / e128) / Math.log(2), 0.15);
  }

  /** The estimate is a third-order quantity: half the step, an eighth of it. */
  @Test
  void estimatesTheErrorOfAStep() {
    double ratio = estimate(1.0 / 1024) / estimate(1.0 / 2048);
    assertEquals(3, Math.log(ratio) / Math.log(2), 0.2);
  }

  @Test
  void keepsContentsExactly() {
    double[] start = Bumps.start();
    double[] end = run(16);
    assertEquals(sum(start), sum(end), 1e-14 * sum(start));
  }

  /**
   * A step of z times the slowest time constant, here 6700, leaves some 6/z of it (a trapezoid
   * would leave all of it, with its sign turned); a million times the cells' own.
   */
  @Test
  void dampsWhatIsFarTooFast() {
    Bumps system = new Bumps(0, 1e-6);
    double[] y = Bumps.start();
    double[] after = new double[y.length];
    double mean = sum(y) / y.length;
    assertTrue(new TrBdf2(system).step(0, 5e3, y, after));
    for (double v : after) {
      assertEquals(mean, v, 1e-3);
    }
  }

  private static double estimate(double step) {
    double[] y = Bumps.start();
    TrBdf2 stepper = new TrBdf2(new Bumps(1, 1e-10));
    double[] settled = new double[y.length];
    stepper.step(0, 0.1, y, settled);
    stepper.step(0.1, step, settled, y);
    return stepper.error();
  }

  private static double[] run(int steps) {
    return steps(steps, false);
  }

  private static double[] euler(int steps) {
    return steps(steps, true);
  }

  private static double[] steps(int steps, boolean euler) {
    TrBdf2 stepper = new TrBdf2(new Bumps(1, 1e-10));
    double[] y = Bumps.start();
    double[] after = new double[y.length];
    double h = HOUR / steps;
    for (int i = 0; i < steps; i++) {
      boolean done =
          euler ? stepper.eulerStep(i * h, h, y, after) : stepper.step(i * h, h, y, after);
      assertTrue(done, "no convergence in step " + i + " of " + steps);
      System.arraycopy(after, 0, y, 0, y.length);
    }
    return y;
  }

  private static double distance(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += (a[i] - b[i]) * (a[i] - b[i]);
    }
    return Math.sqrt(sum);
  }

  private static double sum(double[] y) {
    double sum = 0;
    for (double v : y) {
      sum += v;
    }
    return sum;
  }

  /** A smooth nonlinear chain, D = exp(y) (1 + rise t), sealed at both ends, on [0, 1]. */
  private static final class Bumps implements ConservativeSystem {
    private static final int N = 20;
    private final double rise;
    private final double tolerance;
    private double now;

    Bumps(double rise, double tolerance) {
      this.rise = rise;
      this.tolerance = tolerance;
    }

    static double[] start() {
      double[] y = new double[N];
      for (int i = 0; i < N; i++) {
        y[i] = 1 + 0.8 * Math.cos(Math.PI * (i + 0.5) / N);
      }
      return y;
    }

    @Override
    public int cells() {
      return N;
    }

    @Override
    public void beginStep(double startSeconds, double endSeconds) {}

    @Override
    public void moveTo(double seconds) {
      now = seconds;
    }

    @Override
    public void sizes(double[] into) {
      Arrays.fill(into, 1.0 / N);
    }

    @Override
    public void fluxes(double[] y, double[] flux, double[] byLeft, double[] byRight) {
      double k = 0.05 * N * (1 + rise * now);
      for (int f = 0; f <= N; f++) {
        boolean outer = f == 0 || f == N;
        flux[f] = outer ? 0 : k * (Math.exp(y[f - 1]) - Math.exp(y[f]));
        byLeft[f] = outer ? 0 : k * Math.exp(y[f - 1]);
        byRight[f] = outer ? 0 : -k * Math.exp(y[f]);
      }
    }

    @Override
    public double largest(double[] change, double[] y) {
      return Arrays.stream(change).map(Math::abs).max().orElseThrow() / tolerance;
    }
  }
}
