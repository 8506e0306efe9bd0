package seamsoak.billet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.carbon.Edge;
import seamsoak.carbon.Strip;
import seamsoak.carbon.StripSolver;
import seamsoak.carbon.Twin;
import seamsoak.heat.HeatCurve;

/**
 * One stay of many strips in the fire, on as many cores as are idle. Strips that are the same
 * object, in the same edges, are computed once, and so are twins.
 */
final class Furnace {
  private final StripSolver solver;
  private final HeatCurve curve;
  private final Map<Strip, Map<Edges, Charge>> charges = new IdentityHashMap<>();
  private final List<Charge> all = new ArrayList<>();

  private record Edges(Edge near, Edge far) {}

  /** A strip in the fire, and what comes of it. */
  private static final class Charge {
    private final Strip strip;
    private final Edges edges;
    private Optional<Like> like = Optional.empty();
    private StripSolver.Advanced becomes;
    private RuntimeException failed;

    Charge(Strip strip, Edges edges) {
      this.strip = strip;
      this.edges = edges;
    }

    /** Looks for one of which it is a twin among those laid in before that are none. */
    void compare(List<Charge> before) {
      for (Charge c : before) {
        if (like.isEmpty() && c.like.isEmpty()) {
          like =
              Twin.of(strip, edges.near, edges.far, c.strip, c.edges.near, c.edges.far)
                  .map(twin -> new Like(c, twin));
        }
      }
    }

    /** Takes over what became of the other one; whether it could. */
    boolean follows() {
      Like other = like.orElseThrow();
      failed = other.charge.failed;
      if (failed == null) {
        becomes = other.twin.follows(strip, other.charge.becomes).orElse(null);
      }
      return failed != null || becomes != null;
    }
  }

  /** Another charge, and how one is its twin. */
  private record Like(Charge charge, Twin twin) {}

  Furnace(StripSolver solver, HeatCurve curve) {
    this.solver = solver;
    this.curve = curve;
  }

  /** Lays a strip in; it stays as it is until the heat. */
  Strip put(Strip strip, Edge near, Edge far) {
    charges
        .computeIfAbsent(strip, s -> new HashMap<>())
        .computeIfAbsent(
            new Edges(near, far),
            e -> {
              Charge charge = new Charge(strip, e);
              charge.compare(all);
              all.add(charge);
              return charge;
            });
    return strip;
  }

  void heat() {
    all.parallelStream().filter(c -> c.like.isEmpty()).forEach(this::heat);
    all.stream().filter(c -> c.like.isPresent() && !c.follows()).forEach(this::heat);
    // the first in order, whichever came first in time, and as it was thrown
    for (Charge c : all) {
      if (c.failed != null) {
        throw c.failed;
      }
    }
  }

  private void heat(Charge c) {
    try {
      c.becomes = solver.advance(c.strip, curve, c.edges.near(), c.edges.far());
    } catch (RuntimeException e) {
      c.failed = e;
    }
  }

  /** What came of a strip that was put in. */
  Strip becomes(Strip strip, Edge near, Edge far) {
    return charges.get(strip).get(new Edges(near, far)).becomes.strip();
  }

  /** Metal that a strip lost at its near edge, m. */
  double lostAtNear(Strip strip, Edge near) {
    return charges.get(strip).values().stream()
        .filter(c -> c.edges.near().equals(near))
        .mapToDouble(c -> c.becomes.metalLost())
        .findFirst()
        .orElseThrow();
  }

  double worstMassError() {
    return all.stream().mapToDouble(c -> Math.abs(c.becomes.massErrorRelative())).max().orElse(0);
  }
}
