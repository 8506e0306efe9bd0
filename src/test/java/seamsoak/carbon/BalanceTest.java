package seamsoak.carbon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.carbon.problem.Steels;
import seamsoak.heat.HeatCurve;
import seamsoak.heat.HeatCurve.Segment;

/** All carbon is accounted for, whatever happens at the edge. */
class BalanceTest {
  private static final Grid GRID = new Grid(1e-3, 1.1, false);
  private static final HeatCurve FORGE_HEAT =
      new HeatCurve(
          List.of(
              new Segment(1123.15, 1473.15, 300),
              new Segment(1473.15, 1473.15, 300),
              new Segment(1473.15, 973.15, 240)));

  @ParameterizedTest
  @CsvSource({
    "1084, 1",
    "1084, 0.5",
    "1084, 0",
    "52100, 1",
    "O1, 0.3",
    "9260, 1",
    "1008, 1",
    "D2, 1",
    "nickel, 1",
    "75Ni8, 0.5",
    "304, 1",
    "iron, 1"
  })
  void throughAForgeHeat(String steel, double share) {
    balances(Strip.of(Steels.metal(steel), 5e-3, GRID), FORGE_HEAT, new Edge(share), 1e-3);
  }

  /** What is lost is lost from the profile, counted apart from the solver's own sums. */
  @Test
  void lossIsWhatTheProfileLacks() {
    Metal steel = Steels.metal("1084");
    Strip start = Strip.of(steel, 5e-3, GRID);
    StripSolver.Advanced end = balances(start, FORGE_HEAT, Edge.OPEN, 1e-4);
    double left = 0;
    double thick = 0;
    for (int i = 0; i < end.strip().cells(); i++) {
      left += end.strip().metres(i) * end.strip().ratio(i);
      thick += end.strip().metres(i);
    }
    assertEquals(5e-3 * steel.startRatio() - left, end.carbonLost(), 1e-15);
    assertEquals(5e-3 - thick, end.metalLost(), 1e-15);
    assertEquals(end.metalLost(), end.strip().scaledMetres(), 1e-15);
  }

  /** Scale grows as the root of the sum of k_c dt, through ramps, and on from heat to heat. */
  @Test
  void scaleGoesOnUntilKnockedOff() {
    Strip start = Strip.of(Steels.metal("1084"), 5e-3, GRID);
    double squared = 0;
    for (int i = 0; i < 100000; i++) {
      double seconds = (i + 0.5) * FORGE_HEAT.seconds() / 100000;
      squared += 2 * scaling(seconds) * FORGE_HEAT.seconds() / 100000;
    }
    StripSolver.Advanced once = balances(start, FORGE_HEAT, Edge.OPEN, 1e-4);
    assertEquals(Math.sqrt(squared), once.metalLost(), 1e-3 * once.metalLost());
    StripSolver.Advanced on = balances(once.strip(), FORGE_HEAT, Edge.OPEN, 1e-4);
    assertEquals((Math.sqrt(2) - 1) * Math.sqrt(squared), on.metalLost(), 2e-3 * on.metalLost());
    StripSolver.Advanced anew = balances(once.strip().descaled(), FORGE_HEAT, Edge.OPEN, 1e-4);
    assertEquals(Math.sqrt(squared), anew.metalLost(), 1e-3 * anew.metalLost());
  }

  private static double scaling(double seconds) {
    double left = seconds;
    for (Segment s : FORGE_HEAT.segments()) {
      if (left <= s.seconds()) {
        return Steels.FIRE.scaling().applyAsDouble(s.kelvinAt(left));
      }
      left -= s.seconds();
    }
    throw new IllegalArgumentException("past the end");
  }

  /** A thin jacket is scaled away and the body behind it goes on losing. */
  @Test
  void aJacketBurnsThrough() {
    Strip body = Strip.of(Steels.metal("1084"), 5e-3, GRID);
    Strip jacketed =
        Strip.of(Steels.metal("1008"), 0.2e-3, new Grid(0.05, 1.1, true)).followedBy(body);
    HeatCurve soak = HeatCurve.hold(1423.15, 3600);
    StripSolver.Advanced end = balances(jacketed, soak, Edge.OPEN, 1e-3);
    assertTrue(end.metalLost() > 0.2e-3);
    assertEquals("1084", end.strip().metal(0).name());
    assertEquals(jacketed.metres() - end.metalLost(), end.strip().metres(), 1e-15);
    double expected = Math.sqrt(2 * Steels.FIRE.scaling().applyAsDouble(1423.15) * 3600);
    // the last 1 um of a layer goes at once
    assertEquals(expected, end.metalLost(), 1e-6);
  }

  /** Two jackets of unlike steels, one after the other. */
  @Test
  void twoThinLayersBurnThrough() {
    Strip body = Strip.of(Steels.metal("9260"), 5e-3, GRID);
    Strip inner = Strip.of(Steels.metal("nickel"), 0.05e-3, new Grid(0.1, 1.1, true));
    Strip outer = Strip.of(Steels.metal("1018"), 0.05e-3, new Grid(0.1, 1.1, true));
    StripSolver.Advanced end =
        balances(outer.followedBy(inner.followedBy(body)), FORGE_HEAT, Edge.OPEN, 1e-3);
    assertEquals("9260", end.strip().metal(0).name());
  }

  @Test
  void saysWhenNothingIsLeft() {
    Strip foil = Strip.of(Steels.metal("1084"), 50e-6, new Grid(0.1, 1.1, false));
    StripSolver solver = new StripSolver(Steels.FIRE, 1e-3);
    HeatCurve soak = HeatCurve.hold(1473.15, 3600);
    assertThrows(IllegalArgumentException.class, () -> solver.advance(foil, soak, Edge.OPEN));
  }

  @Test
  void nothingHappensInNoTimeOrInTheCold() {
    Strip strip = Strip.of(Steels.metal("1084"), 5e-3, GRID);
    StripSolver solver = new StripSolver(Steels.FIRE, 1e-3);
    StripSolver.Advanced none = solver.advance(strip, new HeatCurve(List.of()), Edge.OPEN);
    assertEquals(0, none.carbonLost());
    StripSolver.Advanced cold = solver.advance(strip, HeatCurve.hold(293.15, 1e6), Edge.OPEN);
    assertEquals(0, cold.carbonLost(), 1e-12);
    assertEquals(0, cold.massErrorRelative(), 1e-12);
  }

  @Test
  void handlingKeepsCarbon() {
    Strip skin =
        balances(Strip.of(Steels.metal("1084"), 5e-3, GRID), FORGE_HEAT, Edge.OPEN, 1e-3).strip();
    Strip other = Strip.of(Steels.metal("52100"), 2e-3, GRID);
    double both = skin.carbon() + other.carbon();
    assertEquals(both, skin.weldedTo(other).carbon(), 1e-15 * both);
    assertEquals(both, other.followedBy(skin).carbon(), 1e-15 * both);
    assertEquals(skin.carbon(), skin.reversed().carbon(), 1e-15);
    assertEquals(0.25 * skin.carbon(), skin.scaled(0.25).carbon(), 1e-15);
    Strip rest = skin.ground(0.3e-3);
    assertEquals(skin.metres() - 0.3e-3, rest.metres(), 1e-15);
    assertTrue(rest.carbon() > (1 - 0.3e-3 / skin.metres()) * skin.carbon());
    assertEquals(skin.cells(), skin.weldedTo(other).seam());
    assertThrows(IllegalArgumentException.class, () -> skin.ground(6e-3));
  }

  private static StripSolver.Advanced balances(
      Strip start, HeatCurve heat, Edge edge, double tolerance) {
    StripSolver.Advanced end = new StripSolver(Steels.FIRE, tolerance).advance(start, heat, edge);
    assertEquals(0, end.massErrorRelative(), 1e-12);
    assertEquals(start.carbon(), end.strip().carbon() + end.carbonLost(), 1e-12 * start.carbon());
    if (edge.share() == 0) {
      assertEquals(0, end.carbonLost());
      assertEquals(0, end.metalLost());
    }
    return end;
  }
}
