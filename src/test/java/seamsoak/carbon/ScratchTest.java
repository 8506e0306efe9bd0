package seamsoak.carbon;

import java.util.*;
import org.junit.jupiter.api.Test;
import seamsoak.data.DataFolder;
import seamsoak.heat.HeatCurve;
import seamsoak.property.*;
import seamsoak.steel.*;

class ScratchTest {
  @Test
  void darken() {
    Correlations k = Correlations.load(DataFolder.packed());
    Surroundings fire =
        new Surroundings(
            T -> Math.exp(k.scaledSurface().lnActivity(T, 1)), T -> 57.1e-6 * Math.exp(-21720 / T));
    StripSolver solver = new StripSolver(fire, 1e-3);
    Metal a = Metal.of(k, "Si", Composition.of(Map.of(Element.C, 0.478, Element.SI, 3.80)), 1);
    Metal b = Metal.of(k, "plain", Composition.of(Map.of(Element.C, 0.441)), 1);
    Grid g = new Grid(1e-3, 1.1, false);
    Strip s = Strip.of(a, 0.06, g).weldedTo(Strip.of(b, 0.06, g));
    for (int rep = 0; rep < 5; rep++) {
      long t0 = System.nanoTime();
      int[] steps = {0};
      StripSolver.Advanced r =
          solver.advance(
              s,
              HeatCurve.hold(1323.15, 312 * 3600.),
              Edge.SEALED,
              (t, x) -> {
                steps[0]++;
                return true;
              });
      System.out.printf(
          "darken %.4f %.4f err %.2e steps %d %.2f ms%n",
          r.strip().percent(s.seam() - 1),
          r.strip().percent(s.seam()),
          r.massErrorRelative(),
          steps[0],
          (System.nanoTime() - t0) / 1e6);
    }
    Metal c = Metal.of(k, "C0.85", Composition.of(Map.of(Element.C, 0.85)), 1);
    for (double rt : new double[] {1e-3, 1e-4})
      for (double gr : new double[] {1.2, 1.1, 1.05}) {
        Strip d =
            Strip.of(c, 0.01, new Grid(gr == 1.05 ? 1e-4 : gr == 1.1 ? 2e-4 : 4e-4, gr, false));
        int[] steps = {0};
        StripSolver.Advanced q =
            new StripSolver(fire, rt)
                .advance(
                    d,
                    HeatCurve.hold(1273.15, 3600.),
                    Edge.OPEN,
                    (t, x) -> {
                      steps[0]++;
                      return true;
                    });
        System.out.printf(
            "decarb %g %g cells %d: metal %.4f lost %.5e err %.2e steps %d  d50 %.4f d90 %.4f d98 %.4f%n",
            rt,
            gr,
            d.cells(),
            q.metalLost() * 1e3,
            q.carbonLost(),
            q.massErrorRelative(),
            steps[0],
            depth(q.strip(), .5 * .85),
            depth(q.strip(), .9 * .85),
            depth(q.strip(), .98 * .85));
      }
    for (double tc : new double[] {650, 750, 800, 850, 900, 1150, 1250}) {
      Strip d = Strip.of(c, 0.01, new Grid(2e-4, 1.1, false));
      int[] steps = {0};
      StripSolver.Advanced q =
          new StripSolver(fire, 1e-3)
              .advance(
                  d,
                  HeatCurve.hold(tc + 273.15, 3600.),
                  Edge.OPEN,
                  (t, x) -> {
                    steps[0]++;
                    return true;
                  });
      System.out.printf(
          "%.0f metal %.4f err %.2e steps %d surface %.4f d92 %.4f%n",
          tc,
          q.metalLost() * 1e3,
          q.massErrorRelative(),
          steps[0],
          q.strip().percent(0),
          depth(q.strip(), .92 * .85));
    }
  }

  static double depth(Strip s, double pct) {
    double x = 0;
    double lastX = 0, lastC = 0;
    for (int i = 0; i < s.cells(); i++) {
      double m = x + s.metres(i) / 2;
      double c = s.percent(i);
      if (c >= pct) return i == 0 ? 0 : 1e3 * (lastX + (m - lastX) * (pct - lastC) / (c - lastC));
      lastX = m;
      lastC = c;
      x += s.metres(i);
    }
    return 1e3 * x;
  }
}
