package seamsoak.carbon.second;

/**
 * RODAS4, a linearly implicit method of order 4 with an embedded one of order 3, six stages,
 * stiffly accurate: E. Hairer, G. Wanner, Solving Ordinary Differential Equations II, 2nd ed.,
 * Springer 1996, section IV.7; coefficients of the method that book and its published code call
 * RODAS (METH = 1). It needs no iteration, so it shares nothing with a method that runs Newton.
 *
 * <pre>
 * (1/(g h) - J) u_i = f(t + c_i h, y + sum a_ij u_j) + sum C_ij u_j / h + d_i h df/dt
 * next = y + sum a_5j u_j + u_5 + u_6, error = u_6
 * </pre>
 *
 * The Jacobian J is taken by differences, all unknowns three apart at once.
 */
final class Rodas4 {
  private static final double GAMMA = 0.25;
  private static final double[] TIME = {0, 0.386, 0.21, 0.63, 1, 1};
  private static final double[] BY_TIME = {0.25, -0.1043, 0.1035, -0.03620000000000023, 0, 0};
  private static final double[][] A = {
    {},
    {1.544},
    {0.9466785280815826, 0.2557011698983284},
    {3.314825187068521, 2.896124015972201, 0.9986419139977817},
    {1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950},
    {1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950, 1}
  };
  private static final double[][] C = {
    {},
    {-5.6688},
    {-2.430093356833875, -0.2063599157091915},
    {-0.1073529058151375, -9.594562251023355, -20.47028614809616},
    {7.496443313967647, -10.24680431464352, -33.99990352819905, 11.70890893206160},
    {
      8.083246795921522,
      -7.981132988064893,
      -31.52159432874371,
      16.31930543123136,
      -6.058818238834054
    }
  };
  private static final int STAGES = 6;
  private static final int MOST_STEPS = 200_000;

  private final Chain chain;
  private final int n;
  private final double[] below;
  private final double[] middle;
  private final double[] above;
  private final double[] pivot;
  private final double[] rate;
  private final double[] other;
  private final double[] byTime;
  private final double[] at;
  private final double[][] u;
  private int steps;

  Rodas4(Chain chain) {
    this.chain = chain;
    this.n = chain.size();
    below = new double[n];
    middle = new double[n];
    above = new double[n];
    pivot = new double[n];
    rate = new double[n];
    other = new double[n];
    byTime = new double[n];
    at = new double[n];
    u = new double[STAGES][n];
  }

  /** Steps taken so far, those thrown away included. */
  int steps() {
    return steps;
  }

  /** Carries y from one time to another, its steps chosen by the error. */
  void run(double[] y, double from, double to, double tolerance) {
    double t = from;
    double step = 1e-6 * (to - from);
    boolean fresh = true;
    while (t < to) {
      boolean last = t + step >= to * (1 - 1e-14);
      double h = last ? to - t : step;
      if (fresh) {
        linearize(t, h, y);
        fresh = false;
      }
      double error = stages(t, h, y, tolerance);
      if (++steps > MOST_STEPS) {
        throw new IllegalStateException("too many steps, at " + t);
      }
      double factor = error > 0 ? Math.max(0.2, Math.min(5, 0.9 * Math.pow(error, -0.25))) : 5;
      if (error <= 1) {
        accept(y);
        t = last ? to : t + h;
        fresh = true;
        step = h * factor;
      } else {
        step = error < Double.POSITIVE_INFINITY ? h * factor : 0.2 * h;
      }
    }
  }

  /** One step of given length, whatever its error. */
  void step(double[] y, double t, double h) {
    linearize(t, h, y);
    stages(t, h, y, 1);
    accept(y);
  }

  private void accept(double[] y) {
    for (int i = 0; i < n; i++) {
      y[i] = at[i] + u[5][i];
    }
  }

  private void linearize(double t, double h, double[] y) {
    chain.rates(t, y, rate);
    double later = 1e-4 * h;
    chain.rates(t + later, y, byTime);
    chain.rates(t + 2 * later, y, other);
    for (int i = 0; i < n; i++) {
      byTime[i] = (4 * byTime[i] - 3 * rate[i] - other[i]) / (2 * later);
    }
    for (int color = 0; color < 3; color++) {
      System.arraycopy(y, 0, at, 0, n);
      for (int j = color; j < n; j += 3) {
        at[j] += nudge(y, j);
      }
      chain.rates(t, at, other);
      for (int j = color; j < n; j += 3) {
        double by = at[j] - y[j];
        if (j > 0) {
          above[j - 1] = (other[j - 1] - rate[j - 1]) / by;
        }
        middle[j] = (other[j] - rate[j]) / by;
        if (j < n - 1) {
          below[j + 1] = (other[j + 1] - rate[j + 1]) / by;
        }
      }
    }
  }

  private double nudge(double[] y, int j) {
    return 1e-7 * Math.max(Math.abs(y[j]), chain.small(j));
  }

  private double stages(double t, double h, double[] y, double tolerance) {
    double diagonal = 1 / (GAMMA * h);
    pivot[0] = diagonal - middle[0];
    for (int i = 1; i < n; i++) {
      pivot[i] = diagonal - middle[i] - below[i] * above[i - 1] / pivot[i - 1];
    }
    for (int s = 0; s < STAGES; s++) {
      if (s == 0) {
        System.arraycopy(rate, 0, other, 0, n);
      } else {
        combine(y, A[s]);
        chain.rates(t + TIME[s] * h, at, other);
      }
      for (int i = 0; i < n; i++) {
        double sum = other[i] + BY_TIME[s] * h * byTime[i];
        for (int j = 0; j < s; j++) {
          sum += C[s][j] / h * u[j][i];
        }
        u[s][i] = sum;
      }
      solve(u[s]);
    }
    double square = 0;
    for (int i = 0; i < n; i++) {
      double share = u[5][i] / (tolerance * Math.max(Math.abs(y[i]), chain.small(i)));
      square += share * share;
    }
    double error = Math.sqrt(square / n);
    return Double.isNaN(error) ? Double.POSITIVE_INFINITY : error;
  }

  private void combine(double[] y, double[] weights) {
    for (int i = 0; i < n; i++) {
      double sum = y[i];
      for (int j = 0; j < weights.length; j++) {
        sum += weights[j] * u[j][i];
      }
      at[i] = sum;
    }
  }

  private void solve(double[] x) {
    for (int i = 1; i < n; i++) {
      x[i] += below[i] * x[i - 1] / pivot[i - 1];
    }
    x[n - 1] /= pivot[n - 1];
    for (int i = n - 2; i >= 0; i--) {
      x[i] = (x[i] + above[i] * x[i + 1]) / pivot[i];
    }
  }
}
