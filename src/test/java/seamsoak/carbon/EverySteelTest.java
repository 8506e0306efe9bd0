package seamsoak.carbon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.carbon.problem.Steels;
import seamsoak.heat.HeatCurve;
import seamsoak.heat.HeatCurve.Segment;
import seamsoak.property.phase.PhaseLines;

/** Every metal of the list, room temperature to 1300 C: finite, ordered, conserving. */
class EverySteelTest {
  private static final int MOST_STEPS = 2000;

  static List<Named<Metal>> steels() {
    return Steels.all().stream().map(m -> Named.of(m.name(), m)).toList();
  }

  @ParameterizedTest
  @MethodSource("steels")
  void lawIsFiniteAndRises(Metal metal) {
    String name = metal.name();
    for (double celsius = 20; celsius <= 1300; celsius += 20) {
      CarbonLaw.Isotherm law = metal.law().at(celsius + 273.15);
      double lastActivity = 0;
      double lastPotential = 0;
      for (double percent = 0; percent <= 8.001; percent += 0.04) {
        double y = metal.lattice().ratio(percent);
        String where = name + " " + celsius + " C, " + percent + " %C";
        double activity = law.activity(y);
        double potential = law.potential(y);
        assertTrue(Double.isFinite(activity) && Double.isFinite(potential), where);
        assertTrue(activity >= lastActivity * (1 - 1e-14), where);
        assertTrue(potential >= lastPotential * (1 - 1e-14), where);
        for (double slope : new double[] {law.potentialSlope(y), law.mobility(y)}) {
          assertTrue(slope >= 0 && Double.isFinite(slope), where);
        }
        double back = law.ratioAt(activity);
        assertTrue(back <= y * (1 + 1e-9), where);
        assertEquals(activity, law.activity(back), 1e-12 * activity, where);
        lastActivity = activity;
        lastPotential = potential;
      }
    }
  }

  /** Slope and mobility are what they say: derivatives of the potential by carbon and activity. */
  @ParameterizedTest
  @MethodSource("steels")
  void derivativesAgreeWithDifferences(Metal metal) {
    String name = metal.name();
    for (double celsius : new double[] {740, 850, 1000, 1200}) {
      CarbonLaw.Isotherm law = metal.law().at(celsius + 273.15);
      for (double percent = 0.003; percent < 1.5; percent *= 1.37) {
        double y = metal.lattice().ratio(percent);
        double low = y * (1 - 1e-5);
        double high = y * (1 + 1e-5);
        boolean kink = law.potentialSlope(low) == 0 || law.potentialSlope(high) == 0;
        boolean jump = Math.abs(law.potentialSlope(low) / law.potentialSlope(high) - 1) > 1e-3;
        if (kink || jump) {
          continue;
        }
        double rise = law.potential(high) - law.potential(low);
        String where = name + " " + celsius + " C, " + percent + " %C";
        double slope = law.potentialSlope(y);
        assertEquals(slope, rise / (high - low), 1e-6 * slope, where);
        // ferrite's is that of a dilute solution: it leaves out 1 + 15 z, z below 5e-4 of its sites
        double mobility = law.mobility(y);
        assertEquals(
            mobility, rise / (law.activity(high) - law.activity(low)), 8e-3 * mobility, where);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("steels")
  void carbonMovesFasterInHotterAustenite(Metal metal) {
    PhaseLines lines = metal.law().phases().orElseThrow();
    int compared = 0;
    for (double percent = 0.05; percent < 1.6; percent += 0.15) {
      double y = metal.lattice().ratio(percent);
      double last = 0;
      for (double celsius = 700; celsius <= 1300; celsius += 20) {
        boolean allAustenite =
            lines.alwaysAustenite() || celsius > lines.fullAusteniteCelsius(percent);
        double d = metal.law().at(celsius + 273.15).potentialSlope(y);
        if (allAustenite && d > 0) {
          double before = last;
          assertTrue(d > before, percent + " %C, " + before + " then " + d);
          last = d;
          compared++;
        }
      }
    }
    assertTrue(compared > 40, "compared only " + compared);
  }

  @ParameterizedTest
  @MethodSource("steels")
  void survivesAHeatAgainst1084(Metal metal) {
    HeatCurve heat =
        new HeatCurve(
            List.of(
                new Segment(293.15, 1573.15, 1200),
                new Segment(1573.15, 1573.15, 600),
                new Segment(1573.15, 293.15, 1200)));
    balanced(metal, Steels.metal("1084"), heat, Edge.SEALED);
    balanced(metal, Steels.metal("1084"), heat, Edge.OPEN);
  }

  /** Levels on both sides, one side or none. */
  @Test
  void survivesHoldsWhereCarbideAndFerriteMeet() {
    String[][] pairs = {
      {"52100", "1084"}, {"D2", "1018"}, {"nickel", "1095"}, {"O1", "75Ni8"}, {"S5", "125Cr1"},
      {"440C", "iron"}, {"iron", "nickel"}, {"iron", "iron"}, {"304", "D2"}, {"A2", "9260"}
    };
    for (String[] pair : pairs) {
      for (double celsius : new double[] {650, 735, 760, 800, 850, 900}) {
        HeatCurve hold = HeatCurve.hold(celsius + 273.15, 3600);
        balanced(Steels.metal(pair[0]), Steels.metal(pair[1]), hold, Edge.SEALED);
        balanced(Steels.metal(pair[0]), Steels.metal(pair[1]), hold, new Edge(0.5));
      }
    }
  }

  private static void balanced(Metal outer, Metal inner, HeatCurve heat, Edge edge) {
    Grid grid = new Grid(4e-3, 1.15, true);
    Strip start = Strip.of(outer, 1.2e-3, grid).followedBy(Strip.of(inner, 3e-3, grid));
    String where =
        outer.name() + " on " + inner.name() + " at " + heat.peakKelvin() + " K, " + edge;
    int[] steps = {0};
    StripSolver.Advanced end =
        new StripSolver(Steels.FIRE, 1e-3)
            .advance(start, heat, edge, (t, s) -> ++steps[0] <= MOST_STEPS);
    assertTrue(steps[0] <= MOST_STEPS, where + " takes more than " + MOST_STEPS + " steps");
    assertEquals(0, end.massErrorRelative(), 1e-12, where);
    double most = 0;
    for (int i = 0; i < end.strip().cells(); i++) {
      // tolerance of the steps, a few times over: nothing is clamped
      assertTrue(end.strip().percent(i) >= -1e-3, where);
      most = Math.max(most, end.strip().percent(i));
    }
    assertTrue(Double.isFinite(most), where);
  }
}
