package seamsoak.carbon;

import java.util.Map;
import java.util.function.ToDoubleFunction;
import seamsoak.carbon.problem.Steels;
import seamsoak.heat.HeatCurve;
import seamsoak.reference.Inputs;
import seamsoak.support.Depths;

/**
 * L.S. Darken, Trans. AIME 180 (1949) 430: silicon steel (0.478 C, 3.80 Si) against plain steel
 * (0.441 C), 13 days at 1050 C. Carbon climbs into the plain side, which holds as much already.
 * Simulated from the bulk analyses alone.
 */
final class DarkenCouple {
  private static final double SIDE = 0.06;
  private static final double PLAIN = 0.441;
  private static final double SILICON = 0.478;
  private static final double KELVIN = 1323.15;
  private static final Metal SILICON_STEEL = Steels.of("C0.478 Si3.80");
  private static final Metal PLAIN_STEEL = Steels.of("C0.441");

  private DarkenCouple() {}

  /** The couple after its heat; simulated when first asked for. */
  private static final class Heated {
    static final StripSolver.Advanced END = advanced();

    private static StripSolver.Advanced advanced() {
      Grid grid = new Grid(2e-4, 1.05, false);
      Strip start = Strip.of(SILICON_STEEL, SIDE, grid).weldedTo(Strip.of(PLAIN_STEEL, SIDE, grid));
      return new StripSolver(Steels.FIRE, 1e-5)
          .advance(start, HeatCurve.hold(KELVIN, 312 * 3600), Edge.SEALED);
    }
  }

  static StripSolver.Advanced heated() {
    return Heated.END;
  }

  static void add(Map<String, ToDoubleFunction<Inputs>> all) {
    all.put("darken-couple", in -> at(in.get("millimetres")));
    all.put("darken-partner", in -> partner(in.get("C")));
    all.put("darken-kinetics", in -> (seam(0) - PLAIN) / (SILICON - seam(-1)));
  }

  /** Carbon at a distance from the weld, the silicon side negative; -0 and 0 are its two sides. */
  private static double at(double millimetres) {
    if (millimetres == 0) {
      return seam(1 / millimetres < 0 ? -1 : 0);
    }
    return Depths.percentAt(heated().strip(), SIDE + 1e-3 * millimetres);
  }

  private static double seam(int side) {
    Strip end = heated().strip();
    return end.percent(end.seam() + side);
  }

  /** Carbon of the silicon steel at the activity of the plain one with that much. */
  private static double partner(double plainPct) {
    CarbonLaw.Isotherm plain = PLAIN_STEEL.law().at(KELVIN);
    double activity = plain.activity(PLAIN_STEEL.lattice().ratio(plainPct));
    return SILICON_STEEL.percent(SILICON_STEEL.law().at(KELVIN).ratioAt(activity));
  }
}
