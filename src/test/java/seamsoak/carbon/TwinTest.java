package seamsoak.carbon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import seamsoak.carbon.StripSolver.Advanced;
import seamsoak.carbon.problem.Steels;
import seamsoak.heat.HeatCurve;

/** What is taken over from a twin is what would have been computed. */
class TwinTest {
  private static final Metal PLAIN = Steels.metal("1084");
  private static final Metal NICKEL = Steels.metal("75Ni8");
  private static final Edge COVERED = new Edge(0.4);
  private static final StripSolver SOLVER = new StripSolver(Steels.FIRE, 1e-5);
  private static final HeatCurve HEAT = HeatCurve.riseAndHold(1100, 1400, 300, 900);

  /** 1084 on 75Ni8, poorer at its first face. */
  private static Strip pair(double poorest, double secondMetres) {
    Strip first = Strip.of(PLAIN, 2e-3, new Grid(0.02e-3, 1.2, true));
    double[] ratio = first.ratios();
    for (int i = 0; i < ratio.length / 2; i++) {
      ratio[i] *= poorest + (1 - poorest) * 2 * i / ratio.length;
    }
    Strip skinned = first.with(first.thicknesses(), ratio, 3e-6, 0);
    return skinned.followedBy(Strip.of(NICKEL, secondMetres, new Grid(0.02e-3, 1.2, true)));
  }

  private static Optional<Twin> twin(Strip it, Edge near, Edge far, Strip other) {
    return Twin.of(it, near, far, other, Edge.OPEN, COVERED);
  }

  @Test
  void turnedEndForEnd() {
    Strip other = pair(0.6, 1.5e-3);
    Strip it = other.reversed();
    Advanced computed = SOLVER.advance(it, HEAT, COVERED, Edge.OPEN);
    Advanced others = SOLVER.advance(other, HEAT, Edge.OPEN, COVERED);
    Twin twin = twin(it, COVERED, Edge.OPEN, other).orElseThrow();
    assertTrue(twin.turned());
    isThat(computed, twin.follows(it, others).orElseThrow());
  }

  @Test
  void asItLies() {
    Strip other = pair(0.6, 1.5e-3);
    Strip it = pair(0.6, 1.5e-3);
    Advanced others = SOLVER.advance(other, HEAT, Edge.OPEN, COVERED);
    Twin twin = twin(it, Edge.OPEN, COVERED, other).orElseThrow();
    isThat(others, twin.follows(it, others).orElseThrow());
  }

  private static void isThat(Advanced computed, Advanced followed) {
    Strip a = computed.strip();
    Strip b = followed.strip();
    assertEquals(a.cells(), b.cells());
    for (int i = 0; i < a.cells(); i++) {
      assertEquals(a.ratio(i), b.ratio(i), 1e-6 * a.ratio(i), "carbon of cell " + i);
      assertEquals(a.metres(i), b.metres(i), 1e-9 * a.metres(i), "thickness of cell " + i);
      assertEquals(a.metal(i), b.metal(i));
    }
    assertEquals(a.planes(), b.planes());
    assertEquals(a.scaledMetres(), b.scaledMetres(), 1e-9 * a.scaledMetres());
    assertEquals(a.farScaledMetres(), b.farScaledMetres(), 1e-9 * a.farScaledMetres());
    assertEquals(computed.metalLost(), followed.metalLost(), 1e-6 * computed.metalLost());
    assertEquals(computed.carbonLost(), followed.carbonLost(), 1e-5 * computed.carbonLost());
  }

  @Test
  void whatDiffersIsNone() {
    Strip other = pair(0.6, 1.5e-3);
    assertTrue(twin(pair(0.6, 1.5e-3), Edge.OPEN, COVERED, other).isPresent());
    assertTrue(twin(other, COVERED, Edge.OPEN, other).isEmpty(), "edges");
    assertTrue(twin(other.reversed(), Edge.OPEN, COVERED, other).isEmpty(), "turned, edges not");
    assertTrue(twin(pair(0.6000001, 1.5e-3), Edge.OPEN, COVERED, other).isEmpty(), "carbon");
    assertTrue(twin(pair(0.6, 1.5000001e-3), Edge.OPEN, COVERED, other).isEmpty(), "thickness");
    assertTrue(twin(other.descaled(), Edge.OPEN, COVERED, other).isEmpty(), "scale");
    assertTrue(twin(other.part(0, 9), Edge.OPEN, COVERED, other).isEmpty(), "cells");
  }

  /** Its cells are others then: it is computed by itself. */
  @Test
  void scaleThatComesThroughALayer() {
    Strip thin =
        Strip.of(PLAIN, 0.05e-3, new Grid(0.02e-3, 1.2, true))
            .followedBy(Strip.of(NICKEL, 2e-3, new Grid(0.02e-3, 1.2, true)));
    Strip it = thin.reversed();
    Advanced others = SOLVER.advance(thin, HEAT, Edge.OPEN, COVERED);
    assertTrue(others.strip().cells() < thin.cells());
    Twin twin = twin(it, COVERED, Edge.OPEN, thin).orElseThrow();
    assertTrue(twin.follows(it, others).isEmpty());
  }
}
