package seamsoak.schedule;

import java.util.Locale;

/** What a piece cools in. */
public sealed interface Coolant {
  /** What answers call it: a word, or the id of a quenchant. */
  String word();

  /** What is no quenchant. */
  enum Plain implements Coolant {
    AIR,
    KILN,
    DRY_ICE,
    NITROGEN;

    @Override
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /** A quenchant, by its id. */
  record Bath(String word) implements Coolant {}
}
