package seamsoak.carbon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.carbon.problem.PhaseLaw;
import seamsoak.carbon.problem.Problem;
import seamsoak.carbon.problem.Steels;
import seamsoak.heat.HeatCurve;

/** Seams at which one side holds all the carbon that its austenite can. */
class SeamTest {
  private static final double D = 1e-11;
  private static final double SECONDS = 3600;

  /** Activity y, and no more than 0.5 of it: what comes on top is carbide. */
  private static final PhaseLaw SATURATED = new PhaseLaw(1e-11, 0.5, 0.5, 1e-11, 0.5);

  /** Activity y without end; both laws count their level as activity 1, so halve the scale. */
  private static final PhaseLaw OPEN_ENDED = PhaseLaw.single(D, 2);

  /**
   * The interface stays at the level, so the rich side is a half space with a fixed surface: {@code
   * 2 (y0 - yi) sqrt(D t/pi)} crosses and stays as carbide at the seam. The amount does not depend
   * on the grid, its height in the first cell does.
   */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void carbideTakesUpWhatARicherMetalBrings(boolean saturatedFirst) {
    double crossing = 2 * (0.8 - 0.5) * Math.sqrt(D * SECONDS / Math.PI);
    for (double finest : new double[] {1e-3, 2e-4}) {
      Grid grid = new Grid(finest, 1.05, false);
      Strip full = Strip.of(SATURATED.metal("full", 0.6), 3e-3, grid);
      Strip rich = Strip.of(OPEN_ENDED.metal("rich", 0.8), 3e-3, grid);
      Strip start = saturatedFirst ? full.weldedTo(rich) : rich.weldedTo(full);
      Strip end = Problem.sealed(start, SECONDS, 1e-5);
      double gained = 0;
      for (int i = 0; i < end.cells(); i++) {
        if (end.metal(i).name().equals("full")) {
          gained += end.metres(i) * (end.ratio(i) - 0.6);
        }
      }
      assertEquals(crossing, gained, 2e-3 * crossing);
      assertEquals(0.6, end.ratio(saturatedFirst ? 0 : end.cells() - 1), 1e-12);
      assertEquals(start.carbon(), end.carbon(), 1e-14 * start.carbon());
    }
  }

  /** A chromium steel below its Accm draws carbon out of a plain one and keeps it as carbide. */
  @Test
  void chromiumSteelDrawsCarbonBelowItsAccm() {
    Grid grid = new Grid(5e-3, 1.1, true);
    Strip chromium = Strip.of(Steels.metal("52100"), 1e-3, grid);
    Strip start = chromium.followedBy(Strip.of(Steels.metal("1084"), 1e-3, grid));
    Strip end =
        new StripSolver(Steels.FIRE, 1e-4)
            .advance(start, HeatCurve.hold(1073.15, 3600), Edge.SEALED)
            .strip();
    int cells = Zones.of(end)[1];
    assertTrue(end.part(0, cells).carbon() > 1.01 * start.part(0, cells).carbon());
    assertTrue(end.percent(cells) < 0.7);
  }

  /** No carbon on either side, or none on one: nothing divides by it. */
  @Test
  void noCarbonAtAll() {
    Grid grid = new Grid(0.05, 1.2, true);
    Strip iron = Strip.of(Steels.metal("iron"), 1e-3, grid);
    Strip nickel = Strip.of(Steels.metal("nickel"), 1e-3, grid);
    for (double celsius : new double[] {20, 700, 850, 1200}) {
      Strip end =
          new StripSolver(Steels.FIRE, 1e-3)
              .advance(nickel.weldedTo(iron), HeatCurve.hold(celsius + 273.15, 3600), Edge.SEALED)
              .strip();
      assertEquals(0, end.carbon());
    }
  }
}
