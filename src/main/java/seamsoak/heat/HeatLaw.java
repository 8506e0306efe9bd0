package seamsoak.heat;

/**
 * What a body does with heat, by temperature. Temperatures in K; all four functions belong
 * together.
 */
public interface HeatLaw {
  /** Heat held per volume, J/m3, from any fixed zero; rises with temperature. */
  double heat(double kelvin);

  /** The temperature at which that much heat is held, K. */
  double kelvin(double heat);

  /** Slope of heat by temperature, J/m3/K. */
  double capacity(double kelvin);

  /** Integral of the conductivity over temperature, W/m. */
  double potential(double kelvin);

  /** Its slope, the conductivity, W/m/K. */
  double conductivity(double kelvin);
}
