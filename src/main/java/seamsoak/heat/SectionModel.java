package seamsoak.heat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import seamsoak.numeric.TrBdf2;

/**
 * How a section heats and cools: conduction along its thickness ({@link Section}), heat with its
 * transformation ({@code SteelHeat}), radiation and a film at the face ({@link Environment}).
 *
 * <p>Finite volumes of heat, TR-BDF2 in time with steps chosen by its own error.
 *
 * <p>Range: 20 to 1200 C. Against the exact series and an independent computation within 1 %. The
 * transformation heat comes where EN 1993-1-2 has it, at 735 C: right for heating, too hot for
 * cooling, where the arrest comes at 540 to 690 C.
 *
 * <p>Error: none stated; film coefficient and emissivity leave some 15 %, judgement.
 */
public final class SectionModel {
  private static final int CELLS = 12;
  private static final double STEP_ERROR_KELVIN = 0.25;

  /**
   * The heat of so many kelvin at the start is the most that a cell may take or give in one step:
   * the curve is read straight between steps, and in the arrest its slope changes threefold.
   */
  private static final double MOST_KELVIN_PER_STEP = 12;

  private static final double CLOSE_KELVIN = 0.01;
  private static final int MOST_STEPS = 20_000;

  private final HeatLaw law;
  private final int cells;

  public SectionModel(HeatLaw law) {
    this(law, CELLS);
  }

  /** With other cells, to see how much they matter. */
  public SectionModel(HeatLaw law, int cells) {
    this.law = law;
    this.cells = cells;
  }

  /**
   * From one temperature throughout until the core reaches another, or a time has passed, whichever
   * comes first.
   *
   * @param untilKelvin not counted as reached at the start
   * @param longestSeconds above 0, finite
   */
  public SectionCurve run(
      Section section,
      double fromKelvin,
      Environment environment,
      double untilKelvin,
      double longestSeconds) {
    Conduction body =
        new Conduction(
            law,
            environment,
            cells,
            section.thicknessMetres() / 2,
            section.roundness(),
            STEP_ERROR_KELVIN);
    TrBdf2 stepper = new TrBdf2(body);
    double[] y = new double[cells];
    double[] after = new double[cells];
    Arrays.fill(y, law.heat(fromKelvin));
    List<SectionCurve.Moment> moments = new ArrayList<>();
    moments.add(new SectionCurve.Moment(0, fromKelvin, body.faceKelvin(0, y[cells - 1])));
    double half = section.thicknessMetres() / 2;
    double step = 1e-3 * half * half * law.capacity(fromKelvin) / law.conductivity(fromKelvin);
    double seconds = 0;
    double core = fromKelvin;
    for (int i = 0; i < MOST_STEPS && seconds < longestSeconds; i++) {
      step = Math.min(step, longestSeconds - seconds);
      step = Math.min(step, environment.around().cornerAfter(seconds) - seconds);
      boolean converged = stepper.step(seconds, step, y, after);
      double error = converged ? stepper.error() : Double.POSITIVE_INFINITY;
      if (error > 1) {
        step *= converged ? Math.max(0.2, 0.8 * Math.cbrt(1 / error)) : 0.25;
        continue;
      }
      seconds += step;
      double before = core;
      double change = 0;
      for (int c = 0; c < cells; c++) {
        change = Math.max(change, Math.abs(after[c] - y[c]) / law.capacity(fromKelvin));
      }
      System.arraycopy(after, 0, y, 0, cells);
      core = body.middleKelvin(y);
      double face = body.faceKelvin(seconds, y[cells - 1]);
      SectionCurve.Moment last = moments.get(moments.size() - 1);
      if (before != untilKelvin && (before - untilKelvin) * (core - untilKelvin) <= 0) {
        double share = (untilKelvin - before) / (core - before);
        moments.add(
            new SectionCurve.Moment(
                last.seconds() + share * step,
                untilKelvin,
                last.faceKelvin() + share * (face - last.faceKelvin())));
        break;
      }
      moments.add(new SectionCurve.Moment(seconds, core, face));
      step *=
          Math.min(
              Math.min(3, 0.8 * Math.cbrt(1 / Math.max(error, 0.01))),
              Math.max(0.3, MOST_KELVIN_PER_STEP / Math.max(change, CLOSE_KELVIN)));
    }
    return new SectionCurve(moments);
  }
}
