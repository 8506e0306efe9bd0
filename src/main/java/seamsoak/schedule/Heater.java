package seamsoak.schedule;

import java.util.Locale;

/** Where a step is done. */
public enum Heater {
  KILN,
  FORGE,
  SALT,
  /** A household oven, for want of a kiln. */
  OVEN,
  /** No heat is put in. */
  BENCH;

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
