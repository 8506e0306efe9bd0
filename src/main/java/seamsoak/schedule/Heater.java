package seamsoak.schedule;

import java.util.Locale;

/** Where a step is done. */
enum Heater {
  KILN,
  FORGE,
  SALT,
  /** A household oven, for want of a kiln. */
  OVEN,
  /** No heat is put in. */
  BENCH;

  String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
