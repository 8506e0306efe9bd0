package seamsoak.carbon.second;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class Rodas4Test {
  /** Made up so that products, time and all neighbors count. */
  private static final Chain SMOOTH =
      new Chain() {
        @Override
        public int size() {
          return 3;
        }

        @Override
        public void rates(double t, double[] y, double[] rate) {
          rate[0] = y[0] * y[1] * Math.cos(t);
          rate[1] = -y[0] * y[0] + y[2] * Math.sin(2 * t);
          rate[2] = -y[1] * y[2] + t * t;
        }

        @Override
        public double small(int i) {
          return 1;
        }
      };

  private static double[] solved(int steps) {
    double[] y = {1, 0.5, -0.3};
    Rodas4 rodas = new Rodas4(SMOOTH);
    for (int i = 0; i < steps; i++) {
      rodas.step(y, 2.0 * i / steps, 2.0 / steps);
    }
    return y;
  }

  /** Halving the step divides the error by sixteen; a wrong digit in a coefficient would show. */
  @Test
  void isOfFourthOrder() {
    double[] exact = solved(4000);
    double last = Double.NaN;
    for (int steps : new int[] {40, 80, 160, 320}) {
      double[] y = solved(steps);
      double error = 0;
      for (int i = 0; i < y.length; i++) {
        error = Math.max(error, Math.abs(y[i] - exact[i]));
      }
      if (!Double.isNaN(last)) {
        assertEquals(4, Math.log(last / error) / Math.log(2), 0.3, steps + " steps");
      }
      last = error;
    }
  }

  /** A. Prothero, A. Robinson, Math. Comp. 28 (1974) 145: y' = -k (y - cos t) - sin t is cos t. */
  @Test
  void staysOnASmoothAnswerHoweverStiff() {
    for (double stiff : new double[] {1, 1e3, 1e6}) {
      Chain chain =
          new Chain() {
            @Override
            public int size() {
              return 1;
            }

            @Override
            public void rates(double t, double[] y, double[] rate) {
              rate[0] = -stiff * (y[0] - Math.cos(t)) - Math.sin(t);
            }

            @Override
            public double small(int i) {
              return 1;
            }
          };
      double[] y = {1};
      Rodas4 rodas = new Rodas4(chain);
      rodas.run(y, 0, 10, 1e-6);
      assertEquals(Math.cos(10), y[0], 1e-5, "k " + stiff);
      // a method that is not stiffly stable needs steps of about 3/k
      assertTrue(rodas.steps() < 1000, () -> rodas.steps() + " steps");
    }
  }
}
