package seamsoak.cli;

import java.util.ArrayList;
import java.util.List;
import seamsoak.advice.SteelReport;
import seamsoak.unit.Temperature;
import seamsoak.unit.UnitSystem;

/** Remarks on a heat outside what a steel stands or the estimate is made for. */
final class HeatRemarks {
  private HeatRemarks() {}

  static List<String> remarks(List<SteelReport> steels, Temperature at, UnitSystem units) {
    List<String> all = new ArrayList<>();
    for (SteelReport s : steels) {
      limit(s.solidusC(), "begins to melt", s, at, units, all);
      limit(s.burningC(), "burns", s, at, units, all);
      if (at.celsius() < s.ac1C().low()) {
        all.add(
            s.id()
                + " holds no austenite at "
                + at.format(units)
                + ", so it dissolves little carbon: the estimate is rough.");
      }
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
