package seamsoak.heat;

/**
 * What surrounds a piece: its temperature and how it trades heat with the face.
 *
 * <p>q = h (Ts - T) + e s (Ts^4 - T^4)
 *
 * <p>q in W/m2; T of the face, Ts of the surroundings in K; h in W/m2/K; e emissivity of both
 * together; s = 5.670e-8 W/m2/K4. EN 1991-1-2 writes heating so.
 *
 * @param around temperature of the surroundings
 * @param filmWattsPerSquareMetreKelvin film coefficient
 * @param emissivity 0 in a bath
 */
public record Environment(Course around, double filmWattsPerSquareMetreKelvin, double emissivity)
    implements FaceLaw {
  private static final double STEFAN_BOLTZMANN = 5.670374419e-8;

  /** Surroundings of one temperature. */
  public static Environment steady(
      double kelvin, double filmWattsPerSquareMetreKelvin, double emissivity) {
    return new Environment(Course.steady(kelvin), filmWattsPerSquareMetreKelvin, emissivity);
  }

  @Override
  public double into(double seconds, double kelvin) {
    double outside = around.kelvin(seconds);
    return filmWattsPerSquareMetreKelvin * (outside - kelvin)
        + emissivity * STEFAN_BOLTZMANN * (square(square(outside)) - square(square(kelvin)));
  }

  @Override
  public double slope(double seconds, double kelvin) {
    return -filmWattsPerSquareMetreKelvin
        - 4 * emissivity * STEFAN_BOLTZMANN * square(kelvin) * kelvin;
  }

  private static double square(double x) {
    return x * x;
  }
}
