package seamsoak.carbon;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import seamsoak.carbon.problem.FiniteDip;
import seamsoak.carbon.problem.HalfSpace;
import seamsoak.carbon.problem.Lamellae;
import seamsoak.carbon.problem.PartitionCouple;
import seamsoak.carbon.problem.PhaseLaw;
import seamsoak.carbon.problem.Problem;
import seamsoak.carbon.problem.SeamOfTwoFaces;
import seamsoak.carbon.problem.Steels;
import seamsoak.heat.HeatCurve;
import seamsoak.reference.Inputs;
import seamsoak.steel.Composition;
import seamsoak.support.Analyses;
import seamsoak.support.Depths;

/** What the engine computes through a heat, by the names of the reference folders. */
public final class CarbonReferences {
  private static final double TIGHT = 1e-6;
  private static final double ZERO_CELSIUS = 273.15;

  private CarbonReferences() {}

  /** The properties by name. */
  public static Map<String, ToDoubleFunction<Inputs>> all() {
    Map<String, ToDoubleFunction<Inputs>> all = new HashMap<>();
    DarkenCouple.add(all);
    SkinReferences.add(all);
    closedForms(all);
    evened(all);
    return all;
  }

  private static void closedForms(Map<String, ToDoubleFunction<Inputs>> all) {
    all.put("middle-of-a-dip", in -> dip(in, in.get("seconds")).solved(TIGHT).ratio(0));
    all.put("seam-of-two-faces", in -> 0.8 * (1 - seamDipLeft(in)));
    all.put("seam-dip-left", CarbonReferences::seamDipLeft);
    all.put("range-of-lamellae", in -> range(lamellae(in, in.get("seconds")).solved(TIGHT)));
    all.put("lamellae-seconds", CarbonReferences::lamellaeSeconds);
    all.put("dip-seconds", CarbonReferences::dipSeconds);
    all.put("partition-first", in -> beside(couple(in), -1));
    all.put("partition-second", in -> beside(couple(in), 0));
    all.put("half-space-seconds", CarbonReferences::halfSpaceSeconds);
    all.put("half-space-depth", CarbonReferences::halfSpaceDepth);
    all.put("half-space-carbon", CarbonReferences::halfSpaceCarbon);
    all.put("half-space-surface", CarbonReferences::halfSpaceSurface);
  }

  private static FiniteDip dip(Inputs in, double seconds) {
    return new FiniteDip(in.get("D"), 0.8, 0.6, 1e-6 * in.get("halfMicrometres"), seconds);
  }

  /** Two faces that lost all their carbon at the surface, welded, thinned and soaked. */
  private static double seamDipLeft(Inputs in) {
    HalfSpace face = new HalfSpace(2.5e-11, 0.8, 0, 300);
    double soak = 300 * in.get("ratio");
    return 1 - new SeamOfTwoFaces(face, soak).solved(in.get("thinning"), TIGHT).ratio(0) / 0.8;
  }

  private static Lamellae lamellae(Inputs in, double seconds) {
    return new Lamellae(in.get("D"), 1, 0.2, 2e-3 * in.get("millimetres"), 0.5, seconds);
  }

  private static double range(Strip strip) {
    return Math.abs(strip.ratio(0) - strip.ratio(strip.cells() - 1));
  }

  /** Time at which equal layers differ by 5 % of what they did. */
  private static double lamellaeSeconds(Inputs in) {
    Lamellae start = lamellae(in, 1);
    Metal metal = PhaseLaw.single(in.get("D"), 1).metal("plain", 1);
    double longest = Math.pow(1e-3 * in.get("millimetres"), 2) / in.get("D");
    return seconds(start.start(metal), longest, s -> range(s) / 0.8, 0.05);
  }

  /** Time at which the middle of a dip has 10 % of its depth left. */
  private static double dipSeconds(Inputs in) {
    double longest = 50 * Math.pow(1e-6 * in.get("halfMicrometres"), 2) / in.get("D");
    Strip start = dip(in, longest).unspread();
    return seconds(start, longest, s -> (0.8 - s.ratio(0)) / 0.6, 0.1);
  }

  /** When what falls passes a level, between two steps on logarithmic scales. */
  private static double seconds(
      Strip start, double longest, ToDoubleFunction<Strip> falling, double level) {
    List<double[]> steps = new ArrayList<>();
    new StripSolver(Steels.FIRE, TIGHT)
        .advance(
            start,
            HeatCurve.hold(Problem.KELVIN, longest),
            Edge.SEALED,
            (t, s) -> {
              steps.add(new double[] {t, falling.applyAsDouble(s)});
              return falling.applyAsDouble(s) > level;
            });
    double[] before = steps.get(steps.size() - 2);
    double[] after = steps.get(steps.size() - 1);
    double share = Math.log(before[1] / level) / Math.log(before[1] / after[1]);
    return before[0] * Math.pow(after[0] / before[0], share);
  }

  private static PartitionCouple couple(Inputs in) {
    return new PartitionCouple(
        in.get("D1"), in.get("D2"), in.get("C1"), in.get("C2"), in.get("K"), in.get("seconds"));
  }

  private static double beside(PartitionCouple p, int side) {
    Strip end = p.solved(TIGHT);
    int near = end.seam() + side;
    int next = near + (side < 0 ? -1 : 1);
    double slope = (end.ratio(near) - end.ratio(next)) / (end.metres(near) + end.metres(next));
    return end.ratio(near) + slope * end.metres(near);
  }

  /**
   * What a thick piece lacks of its surface's carbon, as a share of what it lacked: carburizing is
   * decarburizing with the shortage in place of the carbon.
   */
  private static Strip shortage(Inputs in, double seconds) {
    return new HalfSpace(in.get("D"), 1, 0, seconds).solved(1e-5);
  }

  private static double shortageAt(Strip strip, double metres) {
    Metal metal = strip.metal(0);
    double percent = Depths.percentAt(strip, metres);
    return metal.lattice().ratio(percent);
  }

  private static double halfSpaceSeconds(Inputs in) {
    double wanted = (in.get("Cs") - in.get("Cx")) / (in.get("Cs") - in.get("C0"));
    double metres = 1e-3 * in.get("millimetres");
    // shape depends on depth over the root of time alone: one run, read where the share is
    double seconds = 3600;
    double depth = depthOf(shortage(in, seconds), wanted);
    return seconds * Math.pow(metres / depth, 2);
  }

  private static double depthOf(Strip strip, double share) {
    return Depths.to(strip, strip.metal(0).percent(share));
  }

  private static double halfSpaceDepth(Inputs in) {
    double wanted = (in.get("Cs") - in.get("Cx")) / (in.get("Cs") - in.get("C0"));
    return 1e3 * depthOf(shortage(in, 3600 * in.get("hours")), wanted);
  }

  private static double halfSpaceCarbon(Inputs in) {
    double left = shortageAt(shortage(in, 3600 * in.get("hours")), 1e-3 * in.get("millimetres"));
    return in.get("Cs") - left * (in.get("Cs") - in.get("C0"));
  }

  private static double halfSpaceSurface(Inputs in) {
    double left = shortageAt(shortage(in, 3600 * in.get("hours")), 1e-3 * in.get("millimetres"));
    return (in.get("Cx") - left * in.get("C0")) / (1 - left);
  }

  private static void evened(Map<String, ToDoubleFunction<Inputs>> all) {
    all.put("evened-first", in -> evened(in, true));
    all.put("evened-second", in -> evened(in, false));
  }

  /** Two equal layers soaked until nothing moves. */
  private static double evened(Inputs in, boolean first) {
    Grid grid = new Grid(0.05, 1.2, false);
    Strip one = Strip.of(metal(in.composition()), 1e-3, grid);
    Strip two = Strip.of(metal(in.composition("second.")), 1e-3, grid);
    Strip stack = one.weldedTo(two);
    EvenCarbon even = new EvenCarbon(stack, in.get("celsius") + ZERO_CELSIUS);
    return even.percent(first ? 0 : stack.cells() - 1);
  }

  /** A steel of a row as the engine takes it. */
  static Metal metal(Composition steel) {
    return Metal.of(Analyses.CORRELATIONS, "steel", steel, 1);
  }
}
