package seamsoak.property.section;

import java.util.function.DoubleUnaryOperator;
import seamsoak.heat.HeatLaw;
import seamsoak.property.hardening.GrossmannCriterion;
import seamsoak.unit.Temperature;

/**
 * Heat and conductivity of steel as a table every half kelvin, straight between its lines and on
 * beyond its ends.
 */
public final class SteelHeat implements HeatLaw {
  private static final double LOWEST_KELVIN = 173.15;
  private static final double STEP_KELVIN = 0.5;
  private static final int LINES = 2800;

  private final double[] heat = new double[LINES + 1];
  private final double[] potential = new double[LINES + 1];

  /** For equal slices of heat, the line at or before each: where a search begins. */
  private final int[] start = new int[LINES + 1];

  private SteelHeat(DoubleUnaryOperator heatAt, DoubleUnaryOperator conductivityAt) {
    for (int i = 0; i <= LINES; i++) {
      double celsius = LOWEST_KELVIN + i * STEP_KELVIN - Temperature.ZERO_CELSIUS;
      heat[i] = heatAt.applyAsDouble(celsius);
      potential[i] =
          i == 0
              ? 0
              : potential[i - 1]
                  + STEP_KELVIN * conductivityAt.applyAsDouble(celsius - STEP_KELVIN / 2);
    }
    int line = 0;
    for (int i = 0; i <= LINES; i++) {
      double from = heat[0] + (heat[LINES] - heat[0]) * i / LINES;
      while (line < LINES && heat[line + 1] <= from) {
        line++;
      }
      start[i] = line;
    }
  }

  /** Of steel that changes between pearlite and austenite on its way: heating, slow cooling. */
  public static SteelHeat changing(En1993Steel steel) {
    return new SteelHeat(c -> steel.density() * steel.heatContent(c), steel::conductivity);
  }

  /** Of austenite that does not change before martensite: quenching. */
  public static SteelHeat austenite(GrossmannCriterion criterion) {
    return constant(
        criterion.heatJoulesPerCubicMetreKelvin(), criterion.conductivityWattsPerMetreKelvin());
  }

  /** Of something with properties that do not depend on temperature. */
  public static SteelHeat constant(double joulesPerCubicMetreKelvin, double wattsPerMetreKelvin) {
    return new SteelHeat(c -> joulesPerCubicMetreKelvin * c, c -> wattsPerMetreKelvin);
  }

  @Override
  public double heat(double kelvin) {
    return at(heat, kelvin);
  }

  @Override
  public double kelvin(double amount) {
    double slice = (amount - heat[0]) / (heat[LINES] - heat[0]) * LINES;
    int low = Math.min(LINES - 1, start[(int) Math.max(0, Math.min(LINES, slice))]);
    while (low < LINES - 1 && heat[low + 1] <= amount) {
      low++;
    }
    return LOWEST_KELVIN + STEP_KELVIN * (low + (amount - heat[low]) / (heat[low + 1] - heat[low]));
  }

  @Override
  public double capacity(double kelvin) {
    return slope(heat, kelvin);
  }

  @Override
  public double potential(double kelvin) {
    return at(potential, kelvin);
  }

  @Override
  public double conductivity(double kelvin) {
    return slope(potential, kelvin);
  }

  private static int line(double kelvin) {
    return Math.max(0, Math.min(LINES - 1, (int) ((kelvin - LOWEST_KELVIN) / STEP_KELVIN)));
  }

  private static double at(double[] table, double kelvin) {
    int i = line(kelvin);
    return table[i] + (table[i + 1] - table[i]) * ((kelvin - LOWEST_KELVIN) / STEP_KELVIN - i);
  }

  private static double slope(double[] table, double kelvin) {
    int i = line(kelvin);
    return (table[i + 1] - table[i]) / STEP_KELVIN;
  }
}
