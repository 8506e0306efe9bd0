package seamsoak.billet;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import seamsoak.carbon.Edge;
import seamsoak.carbon.Strip;
import seamsoak.carbon.StripSolver;
import seamsoak.heat.HeatCurve;

/** Strips that are the same object, in the same edge, go through the fire once. */
final class Furnace {
  private final StripSolver solver;
  private final HeatCurve curve;
  private final Map<Strip, Map<Edge, StripSolver.Advanced>> done = new IdentityHashMap<>();
  private double worst;

  Furnace(StripSolver solver, HeatCurve curve) {
    this.solver = solver;
    this.curve = curve;
  }

  StripSolver.Advanced through(Strip strip, Edge edge) {
    return done.computeIfAbsent(strip, s -> new HashMap<>())
        .computeIfAbsent(
            edge,
            e -> {
              StripSolver.Advanced a = solver.advance(strip, curve, e);
              worst = Math.max(worst, Math.abs(a.massErrorRelative()));
              return a;
            });
  }

  double worstMassError() {
    return worst;
  }
}
