package seamsoak.steel;

import java.util.Arrays;
import java.util.Optional;

/** The elements an analysis can name, with their atomic masses in g/mol (IUPAC 2021, abridged). */
public enum Element {
  C("C", 12.011),
  MN("Mn", 54.938),
  SI("Si", 28.085),
  CR("Cr", 51.996),
  NI("Ni", 58.693),
  MO("Mo", 95.95),
  V("V", 50.942),
  W("W", 183.84),
  P("P", 30.974),
  S("S", 32.06),
  CU("Cu", 63.546),
  AL("Al", 26.982);

  /** Atomic mass of iron, g/mol. */
  public static final double IRON_MASS = 55.845;

  private final String symbol;
  private final double mass;

  Element(String symbol, double mass) {
    this.symbol = symbol;
    this.mass = mass;
  }

  /** The element of that symbol, ignoring case. */
  public static Optional<Element> of(String symbol) {
    return Arrays.stream(values()).filter(e -> e.symbol.equalsIgnoreCase(symbol)).findFirst();
  }

  public String symbol() {
    return symbol;
  }

  /** Atomic mass, g/mol. */
  public double mass() {
    return mass;
  }
}
