package seamsoak.property;

/**
 * Diffusivity of carbon in ferrite.
 *
 * <pre>D = 2e-6 exp(-10115/T) exp{0.5898 [1 + (2/pi) arctan(1.4985 - 15309/T)]}   m2/s</pre>
 *
 * T kelvin. Source: J. Agren, J. Phys. Chem. Solids 43 (1982) 421-430. Range: -40 to 912 C. Error:
 * within 3 % of Wert (1950) from 500 to 912 C; textbook pairs lie two to three times lower above
 * 700 C, so the band is half to once the value.
 */
public record Agren1982Ferrite(
    double prefactor, double activation, double bend, double bendOffset, double bendActivation) {
  public static Agren1982Ferrite of(Coefficients c) {
    return new Agren1982Ferrite(
        c.get("prefactor"),
        c.get("activation"),
        c.get("bend"),
        c.get("bend_offset"),
        c.get("bend_activation"));
  }

  /** D, m2/s. */
  public double squareMetresPerSecond(double kelvin) {
    return prefactor
        * Math.exp(-activation / kelvin)
        * Math.exp(bend * (1 + 2 / Math.PI * Math.atan(bendOffset - bendActivation / kelvin)));
  }
}
