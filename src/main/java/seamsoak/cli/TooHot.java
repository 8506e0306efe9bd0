package seamsoak.cli;

import java.util.ArrayList;
import java.util.List;
import seamsoak.advice.SteelReport;
import seamsoak.unit.Temperature;
import seamsoak.unit.UnitSystem;

/** Remarks on a heat that steels do not stand. */
final class TooHot {
  private TooHot() {}

  static List<String> remarks(List<SteelReport> steels, Temperature at, UnitSystem units) {
    List<String> all = new ArrayList<>();
    for (SteelReport s : steels) {
      limit(s.solidusC(), "begins to melt", s, at, units, all);
      limit(s.burningC(), "burns", s, at, units, all);
    }
    return all;
  }

  private static void limit(
      SteelReport.Quantity limit,
      String what,
      SteelReport steel,
      Temperature at,
      UnitSystem units,
      List<String> all) {
    if (at.celsius() > limit.value()) {
      all.add(
          steel.id()
              + " "
              + what
              + " at about "
              + Temperature.ofCelsius(limit.value()).format(units)
              + ": "
              + at.format(units)
              + " is above that.");
    }
  }
}
