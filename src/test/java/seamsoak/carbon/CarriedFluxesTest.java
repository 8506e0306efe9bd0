package seamsoak.carbon;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.carbon.problem.Steels;
import seamsoak.heat.HeatCurve.Segment;

/** A step that takes over the fluxes of the one before has those that it would have found anew. */
class CarriedFluxesTest {
  private static final Segment HOLD = new Segment(1373.15, 1373.15, 600);

  @ParameterizedTest
  @CsvSource({
    "one zone open and sealed, 1, 0, 0.5",
    "one zone open on both sides, 1, 0.4, 0.5",
    "two zones open on both sides, 0.7, 1, 0.5",
    "the fire has nothing to take, 1, 1, 0",
    "sealed, 0, 0, 0.5"
  })
  void areThoseFoundAnew(String what, double nearShare, double farShare, double poorest) {
    Strip strip = what.startsWith("two") ? twoZones() : oneZone(poorest);
    int n = strip.cells();
    double[] y = strip.ratios();
    double[] carried = new double[n + 1];
    double[] anew = new double[n + 1];
    double[] byLeft = new double[n + 1];
    double[] byRight = new double[n + 1];

    StripSystem system = system(strip, nearShare, farShare);
    step(system, nearShare * 2e-6, farShare * 3e-6, 40);
    system.fluxes(y, carried, byLeft, byRight);
    double[] before = carried.clone();
    step(system, nearShare * 5e-6, farShare * 1e-6, 70);
    system.carryOn(y, carried, byLeft, byRight);
    // and once more, as a try that was refused does
    step(system, nearShare * 1e-6, farShare * 0.5e-6, 10);
    system.carryOn(y, carried, byLeft, byRight);

    StripSystem fresh = system(strip, nearShare, farShare);
    step(fresh, nearShare * 1e-6, farShare * 0.5e-6, 10);
    fresh.fluxes(y, anew, byLeft, byRight);
    assertArrayEquals(anew, carried, 1e-12 * largest(anew), what);
    assertTrue(
        nearShare == 0 || differ(before, anew), "the steps must differ for this to say anything");
  }

  private static StripSystem system(Strip strip, double near, double far) {
    StripSystem system = new StripSystem(strip, new Edge(near), new Edge(far), Steels.FIRE, 1e-3);
    system.enter(HOLD);
    return system;
  }

  /** The next step begins: where the last one ended, so nothing is eaten yet at its start. */
  private static void step(StripSystem system, double nearEaten, double farEaten, double seconds) {
    system.recession().eat(0, nearEaten, 0, farEaten);
    system.beginStep(0, seconds);
    system.moveTo(0);
  }

  /** Of 1084, poorer towards both faces. */
  private static Strip oneZone(double poorest) {
    Metal steel = Steels.metal("1084");
    Strip strip = Strip.of(steel, 4e-3, new Grid(0.2e-3, 1.2, true));
    double[] ratio = strip.ratios();
    for (int i = 0; i < ratio.length; i++) {
      double fromFace = (double) Math.min(i, ratio.length - 1 - i) / ratio.length;
      ratio[i] *= poorest == 0 ? 1e-6 : Math.min(1, poorest + fromFace);
    }
    return Strip.of(steel, strip.thicknesses(), ratio);
  }

  /** Of 1084 and 75Ni8 side by side. */
  private static Strip twoZones() {
    Strip one = oneZone(0.5);
    int n = one.cells();
    int[] metal = new int[n];
    for (int i = n / 2; i < n; i++) {
      metal[i] = 1;
    }
    return new Strip(
        List.of(Steels.metal("1084"), Steels.metal("75Ni8")),
        metal,
        one.thicknesses(),
        one.ratios(),
        List.of(),
        0,
        0);
  }

  private static double largest(double[] of) {
    double most = 0;
    for (double v : of) {
      most = Math.max(most, Math.abs(v));
    }
    return most;
  }

  private static boolean differ(double[] a, double[] b) {
    for (int i = 0; i < a.length; i++) {
      if (Math.abs(a[i] - b[i]) > 1e-6 * largest(b)) {
        return true;
      }
    }
    return false;
  }
}
