package seamsoak.single;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import seamsoak.property.Correlations;
import seamsoak.property.forging.ForgingLimits;
import seamsoak.steel.Composition;
import seamsoak.steel.Steel;

/**
 * A heat outside what a steel stands or the estimate is made for.
 *
 * @param steel its name
 * @param what it does there
 * @param limitCelsius from where on it does
 * @param celsius the heat
 */
public record HeatRemark(String steel, What what, double limitCelsius, double celsius) {
  /** What a steel does at a heat. */
  public enum What {
    MELTS,
    BURNS,
    NO_AUSTENITE,
    /** Chromium binds the carbon that it is told to have. */
    BINDS_CARBON,
    /** Nobody knows: it is stock of unknown make, told as the likeliest that it may be. */
    UNKNOWN
  }

  /** All that there are of some steels, each once. */
  public static List<HeatRemark> of(Correlations correlations, double celsius, Steel... steels) {
    return Stream.of(steels)
        .distinct()
        .flatMap(s -> one(correlations, celsius, s).stream())
        .toList();
  }

  private static List<HeatRemark> one(Correlations correlations, double celsius, Steel steel) {
    Composition analysis = steel.analysis();
    ForgingLimits limits =
        correlations.forging().rule().limits(analysis, steel.heatTreatment().forgeStartC());
    double first = correlations.critical().ae1().estimate(analysis).low();
    List<HeatRemark> all = new ArrayList<>();
    if (steel.make().isPresent()) {
      all.add(new HeatRemark(steel.id(), What.UNKNOWN, celsius, celsius));
    }
    if (celsius > limits.solidusCelsius()) {
      all.add(new HeatRemark(steel.id(), What.MELTS, limits.solidusCelsius(), celsius));
    }
    if (celsius > limits.burningCelsius()) {
      all.add(new HeatRemark(steel.id(), What.BURNS, limits.burningCelsius(), celsius));
    }
    if (correlations.forging().rule().isStainless(analysis)) {
      all.add(new HeatRemark(steel.id(), What.BINDS_CARBON, celsius, celsius));
    }
    if (celsius < first && !correlations.lines(analysis).alwaysAustenite()) {
      all.add(new HeatRemark(steel.id(), What.NO_AUSTENITE, first, celsius));
    }
    return all;
  }
}
