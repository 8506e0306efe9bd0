package seamsoak.property;

import java.util.ArrayList;
import java.util.List;

/**
 * Cooling of a plate or bar in still air, at one temperature throughout.
 *
 * <p>rho c (V/A) dT/dt = -(e s (T^4 - Ta^4) + h (T - Ta)), V/A = t w / (2 (t + w))
 *
 * <p>T in K, Ta of the air; rho, c of {@link En1993Steel}; t thickness and w width in m, ends
 * neglected; e = 0.8; s = 5.67e-8 W/m2/K4; h = 10 W/m2/K.
 *
 * <p>Emissivity of oxidized steel from published tables; h from memory (5 to 15). Time follows by
 * integration over temperature, so it has no time step.
 *
 * <p>Range: 20 to 1200 C, both faces free; up to 50 mm the core of a plate stays within 33 K of the
 * face.
 *
 * <p>Stated error: none. Against a solution with gradients it is within 5 % up to 25 mm, 9 % short
 * for the core of 50 mm from 900 to 700 C; h and the emissivity leave some 15 %, judgement.
 */
public final class AirCooling {
  private static final double STEFAN_BOLTZMANN = 5.670374419e-8;
  private static final double ZERO_CELSIUS = 273.15;

  /** Corners of the specific heat, where the integral is divided. */
  private static final double[] CORNERS = {600, 735, 900};

  private final En1993Steel steel;
  private final double emissivity;
  private final double convection;
  private final double ambientCelsius;
  private final Correlation correlation;

  public AirCooling(Coefficients k, En1993Steel steel) {
    this.steel = steel;
    this.emissivity = k.get("emissivity");
    this.convection = k.get("convection");
    this.ambientCelsius = k.get("ambient");
    this.correlation =
        k.describe(
            "cooling rate in still air",
            "K/s",
            List.of(Correlation.celsiusRange(20, 1200)),
            "none stated; some 15 % by convection and emissivity, judgement");
  }

  /** What the rate says about itself; what the metal holds is {@link En1993Steel}. */
  public Correlation correlation() {
    return correlation;
  }

  /** A corner of a temperature-time curve. */
  public record Moment(double seconds, double kelvin) {}

  /** Cooling rate, K/s. An infinite width makes a plate cooled on its two faces. */
  public double kelvinPerSecond(double thicknessMetres, double widthMetres, double kelvin) {
    double air = ambientCelsius + ZERO_CELSIUS;
    double flux =
        emissivity * STEFAN_BOLTZMANN * (Math.pow(kelvin, 4) - Math.pow(air, 4))
            + convection * (kelvin - air);
    double volumePerArea = thicknessMetres / 2 / (1 + thicknessMetres / widthMetres);
    double heat = steel.density() * steel.specificHeat(kelvin - ZERO_CELSIUS);
    return flux / (heat * volumePerArea);
  }

  /**
   * Seconds to cool from one temperature to a lower one. Infinite when the lower one is not above
   * that of the air.
   */
  public double seconds(
      double thicknessMetres, double widthMetres, double fromKelvin, double toKelvin) {
    if (toKelvin <= ambientCelsius + ZERO_CELSIUS) {
      return Double.POSITIVE_INFINITY;
    }
    double total = 0;
    double low = toKelvin;
    for (double corner : CORNERS) {
      double high = Math.min(fromKelvin, corner + ZERO_CELSIUS);
      if (high > low) {
        total += integral(thicknessMetres, widthMetres, low, high);
        low = high;
      }
    }
    return total + integral(thicknessMetres, widthMetres, low, Math.max(low, fromKelvin));
  }

  /** The cooling curve from 0 s, one moment every {@code stepKelvin}. */
  public List<Moment> curve(
      double thicknessMetres,
      double widthMetres,
      double fromKelvin,
      double toKelvin,
      double stepKelvin) {
    int steps = Math.max(1, (int) Math.ceil((fromKelvin - toKelvin) / stepKelvin));
    List<Moment> curve = new ArrayList<>();
    double seconds = 0;
    double kelvin = fromKelvin;
    curve.add(new Moment(seconds, kelvin));
    for (int i = 1; i <= steps; i++) {
      double next = fromKelvin + (toKelvin - fromKelvin) * i / steps;
      seconds += seconds(thicknessMetres, widthMetres, kelvin, next);
      kelvin = next;
      curve.add(new Moment(seconds, kelvin));
    }
    return List.copyOf(curve);
  }

  /** Simpson's rule over 1/rate, in steps of at most 1 K because c rises tenfold near 735 C. */
  private double integral(double thickness, double width, double low, double high) {
    int steps = 1 + (int) (high - low);
    double h = (high - low) / steps;
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      double a = low + i * h;
      sum +=
          (1 / kelvinPerSecond(thickness, width, a)
                  + 4 / kelvinPerSecond(thickness, width, a + h / 2)
                  + 1 / kelvinPerSecond(thickness, width, a + h))
              * (h / 6);
    }
    return sum;
  }
}
