package seamsoak.billet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import seamsoak.carbon.Edge;
import seamsoak.carbon.Strip;
import seamsoak.carbon.StripSolver;
import seamsoak.heat.HeatCurve;

/**
 * One stay of many strips in the fire, on as many cores as are idle. Strips that are the same
 * object, in the same edge, are computed once.
 */
final class Furnace {
  private final StripSolver solver;
  private final HeatCurve curve;
  private final Map<Strip, Map<Edge, Charge>> charges = new IdentityHashMap<>();
  private final List<Charge> all = new ArrayList<>();

  /** A strip in the fire, and what comes of it. */
  private static final class Charge {
    private final Strip strip;
    private final Edge edge;
    private StripSolver.Advanced becomes;
    private RuntimeException failed;

    Charge(Strip strip, Edge edge) {
      this.strip = strip;
      this.edge = edge;
    }
  }

  private Furnace(StripSolver solver, HeatCurve curve) {
    this.solver = solver;
    this.curve = curve;
  }

  /** All that a piece consists of. */
  static Furnace of(
      Workpiece piece, HeatCurve curve, Edge outside, Edge faces, StripSolver solver) {
    Edge skins = piece.loose() instanceof Loose.Jacket ? faces : outside;
    Furnace furnace = new Furnace(solver, curve);
    piece.families().forEach(f -> furnace.put(f.strip(), Edge.SEALED));
    for (Joint j : piece.joints()) {
      furnace.put(j.first(), faces);
      furnace.put(j.second(), faces);
    }
    furnace.put(piece.thicknessSkin(), skins);
    furnace.put(piece.widthSkin(), skins);
    if (piece.loose() instanceof Loose.Jacket j) {
      furnace.put(j.sheet(), outside);
    } else if (piece.loose() instanceof Loose.Layers l) {
      l.halves().forEach(h -> furnace.put(h, faces));
    }
    furnace.heat();
    return furnace;
  }

  private void put(Strip strip, Edge edge) {
    charges
        .computeIfAbsent(strip, s -> new HashMap<>())
        .computeIfAbsent(
            edge,
            e -> {
              Charge charge = new Charge(strip, e);
              all.add(charge);
              return charge;
            });
  }

  private void heat() {
    all.parallelStream().forEach(this::heat);
    // the first in order, whichever came first in time, and as it was thrown
    for (Charge c : all) {
      if (c.failed != null) {
        throw c.failed;
      }
    }
  }

  private void heat(Charge c) {
    try {
      c.becomes = solver.advance(c.strip, curve, c.edge);
    } catch (RuntimeException e) {
      c.failed = e;
    }
  }

  /** What came of a strip that was put in. */
  StripSolver.Advanced through(Strip strip, Edge edge) {
    return charges.get(strip).get(edge).becomes;
  }

  double worstMassError() {
    return all.stream().mapToDouble(c -> Math.abs(c.becomes.massErrorRelative())).max().orElse(0);
  }
}
