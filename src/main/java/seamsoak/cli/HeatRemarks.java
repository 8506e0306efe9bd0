package seamsoak.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import seamsoak.property.Correlations;
import seamsoak.property.forging.ForgingLimits;
import seamsoak.steel.Composition;
import seamsoak.steel.Steel;
import seamsoak.unit.Temperature;
import seamsoak.unit.UnitSystem;

/** Remarks on a heat outside what a steel stands or the estimate is made for. */
record HeatRemarks(Correlations correlations, Temperature at, UnitSystem units) {
  List<String> of(Steel... steels) {
    return Stream.of(steels).distinct().flatMap(s -> one(s).stream()).toList();
  }

  private List<String> one(Steel steel) {
    Composition analysis = steel.analysis();
    ForgingLimits limits =
        correlations.forging().rule().limits(analysis, steel.heatTreatment().forgeStartC());
    List<String> all = new ArrayList<>();
    if (at.celsius() > limits.solidusCelsius()) {
      all.add(above(steel, "begins to melt", limits.solidusCelsius()));
    }
    if (at.celsius() > limits.burningCelsius()) {
      all.add(above(steel, "burns", limits.burningCelsius()));
    }
    if (at.celsius() < correlations.critical().ae1().estimate(analysis).low()) {
      all.add(
          steel.id()
              + " holds no austenite at "
              + at.format(units)
              + ", so it dissolves little carbon: the estimate is rough.");
    }
    return all;
  }

  private String above(Steel steel, String what, double celsius) {
    return steel.id()
        + " "
        + what
        + " at about "
        + Temperature.ofCelsius(celsius).format(units)
        + ": "
        + at.format(units)
        + " is above that.";
  }
}
