package seamsoak.kiln;

import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;
import seamsoak.property.hardening.HollomonJaffe1945;
import seamsoak.unit.Temperature;

/** The least minutes that a step is held, by the heat. */
sealed interface Hold {
  /** Minutes at that heat. */
  double minutes(double celsius);

  /** The same at any heat. */
  record Fixed(double minutes) implements Hold {
    @Override
    public double minutes(double celsius) {
      return minutes;
    }
  }

  /**
   * As a soak's options have it, the cooler ones longer.
   *
   * @param byCelsius at least one
   */
  record Soaking(NavigableMap<Double, Double> byCelsius) implements Hold {
    public Soaking {
      byCelsius = new TreeMap<>(byCelsius);
    }

    /** Of the next cooler option: a little longer than it need be. */
    @Override
    public double minutes(double celsius) {
      return (byCelsius.floorEntry(celsius) == null
              ? byCelsius.firstEntry()
              : byCelsius.floorEntry(celsius))
          .getValue();
    }
  }

  /**
   * What comes to the same as a heat held so long.
   *
   * @param law by which it does
   */
  record Same(HollomonJaffe1945 law, double celsius, double minutes) implements Hold {
    @Override
    public double minutes(double other) {
      return other == celsius ? minutes : 60 * law.hours(parameter(), kelvin(other));
    }

    /** The heat at which that many minutes come to the same, C. */
    double celsius(double most) {
      return law.kelvin(parameter(), most / 60) - Temperature.ZERO_CELSIUS;
    }

    private double parameter() {
      return law.parameter(kelvin(celsius), minutes / 60);
    }

    private static double kelvin(double celsius) {
      return celsius + Temperature.ZERO_CELSIUS;
    }
  }

  /** The most minutes at a heat; empty where more does no harm. */
  interface Most {
    Most ANY = (celsius, least) -> OptionalDouble.empty();

    OptionalDouble minutes(double celsius, double least);
  }
}
