package seamsoak.property;

import java.util.Arrays;
import seamsoak.property.forging.LeeLee2008GrainGrowth;
import seamsoak.property.phase.PhaseLines;
import seamsoak.source.Estimate;
import seamsoak.steel.Composition;
import seamsoak.unit.Temperature;

/**
 * Austenite grains of one steel: how they grow, and how far while cementite is left between them.
 * What aluminum nitride and carbides of vanadium hold back beyond that no analysis tells: it is in
 * the band.
 */
public final class SteelGrains {
  private static final double STEP_KELVIN = 5;
  private static final double HOTTEST_CELSIUS = 1200;

  private final Correlations k;
  private final Composition steel;
  private final double fromKelvin;

  /** From there on, by steps, the size that cementite lets them come to, m. */
  private final double[] most;

  public SteelGrains(Correlations k, Composition steel) {
    this.k = k;
    this.steel = steel;
    PhaseLines lines = k.lines(steel);
    this.fromKelvin = lines.a1Celsius() + Temperature.ZERO_CELSIUS;
    this.most = QuenchedSteel.reaches(steel) ? most(lines) : new double[0];
  }

  private double[] most(PhaseLines lines) {
    double[] all =
        new double[(int) Math.max(1, (HOTTEST_CELSIUS - lines.a1Celsius()) / STEP_KELVIN)];
    for (int i = 0; i < all.length; i++) {
      all[i] =
          k.forging()
              .pinning()
              .metres(k.cementiteCarbonPct(lines, lines.a1Celsius() + (i + 0.5) * STEP_KELVIN));
      if (Double.isInfinite(all[i])) {
        return Arrays.copyOf(all, i);
      }
    }
    return all;
  }

  /**
   * What grains do not outgrow at a temperature, m; infinite where nothing is left to hold them.
   */
  double mostMetres(double kelvin) {
    int i = Math.max(0, (int) Math.floor((kelvin - fromKelvin) / STEP_KELVIN));
    return i < most.length ? most[i] : Double.POSITIVE_INFINITY;
  }

  /** Grain size after a time at one temperature, m, with its band. */
  public Estimate estimate(double kelvin, double seconds) {
    LeeLee2008GrainGrowth law = k.forging().grainGrowth();
    return law.estimate(Math.min(mostMetres(kelvin), law.metres(steel, kelvin, seconds)));
  }

  /**
   * Grain size after a temperature-time curve of straight pieces, m.
   *
   * @param startMetres grain size before, 0 for grains just formed
   * @param seconds times of the corners, rising
   * @param kelvin temperatures of the corners
   */
  public double metresAfter(double startMetres, double[] seconds, double[] kelvin) {
    return k.forging()
        .grainGrowth()
        .metresAfter(steel, startMetres, seconds, kelvin, this::mostMetres);
  }
}
