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
    private Optional<Charge> like = Optional.empty();
    private Optional<Twin> twin = Optional.empty();
    private StripSolver.Advanced becomes;
    private RuntimeException failed;

    Charge(Strip strip, Edges edges) {
      this.strip = strip;
      this.edges = edges;
    }

    /** Looks for one of which it is a twin among those laid in before. */
    void compare(List<Charge> before) {
      for (Charge c : before) {
        twin = twin.or(() -> c.twin.isPresent() ? Optional.empty() : twinOf(c));
        if (twin.isPresent()) {
          like = Optional.of(c);
          return;
        }
      }
    }

    private Optional<Twin> twinOf(Charge c) {
      return Twin.of(strip, edges.near, edges.far, c.strip, c.edges.near, c.edges.far);
    }
  }

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
    all.stream().filter(c -> c.like.isPresent()).forEach(this::follow);
    // the first in order, whichever came first in time, and as it was thrown
    for (Charge c : all) {
      if (c.failed != null) {
        throw c.failed;
      }
    }
  }

  private void follow(Charge c) {
    Charge like = c.like.orElseThrow();
    c.failed = like.failed;
    if (like.failed == null) {
      c.twin
          .orElseThrow()
          .follows(c.strip, like.becomes)
          .ifPresentOrElse(advanced -> c.becomes = advanced, () -> heat(c));
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
