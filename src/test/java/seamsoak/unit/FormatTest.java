package seamsoak.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class FormatTest {
  private static final int CASES = 20_000;

  @ParameterizedTest
  @CsvSource({
    "1150 C, 2100 F, 1150 C, 2100 F (1150 C)",
    "1500 F, 1500 F, 815 C, 1500 F (815 C)",
    "20 C, 70 F, 20 C, 70 F (20 C)",
    "-80 C, -110 F, -80 C, -110 F (-80 C)",
    "-1 C, 30 F, 0 C, 30 F (0 C)",
  })
  void temperatures(String text, String us, String metric, String both) {
    all(Temperature.parse(text)::format, us, metric, both);
  }

  @ParameterizedTest
  @CsvSource({
    "15, 27 F, 15 C, 27 F (15 C)",
    "5.5, 10 F, 6 C, 10 F (6 C)",
    "-5, -9 F, -5 C, -9 F (-5 C)"
  })
  void differencesAddNoOffset(double kelvin, String us, String metric, String both) {
    all(new TemperatureDifference(kelvin)::format, us, metric, both);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1/16 in   | 1/16 in   | 1.59 mm",
        "1/32 in   | 0.031 in  | 0.79 mm",
        "3/32 in   | 3/32 in   | 2.38 mm",
        "1-3/8 in  | 1-3/8 in  | 34.9 mm",
        "3 in      | 3 in      | 76.2 mm",
        "0.040 in  | 0.040 in  | 1.02 mm",
        "24 mm     | 0.945 in  | 24 mm",
        "150 mm    | 5-29/32 in| 150 mm",
        "0.10 mm   | 0.0039 in | 0.1 mm",
        "12 um     | 0.0005 in | 0.012 mm",
        "0 mm      | 0 in      | 0 mm",
        "1 um      | 0 in      | 0.001 mm",
      })
  void lengths(String text, String us, String metric) {
    all(Length.parse(text)::format, us, metric, us + " (" + metric + ")");
  }

  /** At the steps of the rule: seconds below a minute, halves to 10 min, minutes to 2 h, hours. */
  @ParameterizedTest
  @CsvSource({
    "0.4, 0 min",
    "0.5, 1 s",
    "59.4, 59 s",
    "59.5, 1 min",
    "89, 1.5 min",
    "594, 10 min",
    "600, 10 min",
    "640, 11 min",
    "7169, 119 min",
    "7170, 2 h",
    "7260, 2 h 1 min",
    "86369, 23 h 59 min",
    "86400, 24 h",
    "88000, 24 h",
    "88300, 25 h",
    "-30, -30 s"
  })
  void timesAtTheirSteps(double seconds, String expected) {
    assertEquals(expected, new TimeSpan(seconds).format(UnitSystem.BOTH));
  }

  @ParameterizedTest
  @CsvSource({
    "49, 90 F per hour, 49 C per hour, 90 F (49 C) per hour",
    "20, 36 F per hour, 20 C per hour, 36 F (20 C) per hour",
    "50, 90 F per hour, 50 C per hour, 90 F (50 C) per hour",
    "552, 995 F per hour, 550 C per hour, 995 F (550 C) per hour"
  })
  void heatingRates(double kelvinPerHour, String us, String metric, String both) {
    all(new HeatingRate(kelvinPerHour)::format, us, metric, both);
  }

  @Test
  void conversionsByHand() {
    assertEquals(1.5, new TimeSpan(5400).hours());
    assertEquals(90, TimeSpan.ofMinutes(1.5).seconds());
    assertEquals(0.0254, Length.ofMillimetres(25.4).metres(), 1e-15);
    assertEquals(180, new HeatingRate(100).fahrenheitPerHour());
  }

  @Test
  void aNegativePositionKeepsItsSign() {
    assertEquals("-1/16 in (-1.59 mm)", new Length(-0.0254 / 16).format(UnitSystem.BOTH));
  }

  @ParameterizedTest
  @CsvSource({
    "0 s, 0 min",
    "20 s, 20 s",
    "59.7 s, 1 min",
    "90 s, 1.5 min",
    "4 min, 4 min",
    "9.8 min, 10 min",
    "61 min, 61 min",
    "119 min, 119 min",
    "119.7 min, 2 h",
    "130 min, 2 h 10 min",
    "23 h 59 min, 23 h 59 min",
    "1439.8 min, 24 h",
    "312 h 20 min, 312 h",
  })
  void times(String text, String shown) {
    all(TimeSpan.parse(text)::format, shown, shown, shown);
  }

  @ParameterizedTest
  @CsvSource({"0.10 %, 0.1 %", "50 %, 50 %"})
  void percentages(String text, String shown) {
    all(Percent.parse(text)::format, shown, shown, shown);
  }

  @ParameterizedTest
  @EnumSource(names = {"US", "METRIC"})
  void temperaturesComeBackWithinHalfAStep(UnitSystem units) {
    double degree = units == UnitSystem.US ? 1 / 1.8 : 1;
    roundTrip(
        100,
        2000,
        x -> new Temperature(x).format(units),
        s -> Temperature.parse(s).kelvin(),
        s -> 2.5 * degree);
  }

  @Test
  void inchesComeBackWithinHalfAStep() {
    roundTrip(
        1e-6,
        10,
        x -> new Length(x).format(UnitSystem.US),
        s -> Length.parse(s).metres(),
        s -> 0.0254 * (s.indexOf('.') < 0 ? 1 / 64.0 : halfLastDigit(s)));
  }

  @Test
  void millimetresComeBackWithinHalfAStep() {
    roundTrip(
        1e-6,
        10,
        x -> new Length(x).format(UnitSystem.METRIC),
        s -> Length.parse(s).metres(),
        s -> {
          double metres = Length.parse(s).metres();
          return metres < 1e-4 ? 0.5e-6 : metres < 1e-2 ? 5e-6 : metres < 0.1 ? 5e-5 : 5e-4;
        });
  }

  @Test
  void timesComeBackWithinHalfAStep() {
    roundTrip(
        0.01,
        2e6,
        x -> new TimeSpan(x).format(UnitSystem.BOTH),
        s -> TimeSpan.parse(s).seconds(),
        s -> {
          double seconds = TimeSpan.parse(s).seconds();
          return seconds < 60 ? 0.5 : seconds < 600 ? 15 : seconds < 86400 ? 30 : 1800;
        });
  }

  private static double halfLastDigit(String shown) {
    String number = shown.substring(0, shown.indexOf(' '));
    return 0.5 * Math.pow(10, -(number.length() - 1 - number.indexOf('.')));
  }

  /**
   * For random values, evenly spread in their logarithm: what is shown reads back within half the
   * displayed step, and a larger value never shows smaller.
   */
  private static void roundTrip(
      double low,
      double high,
      DoubleFunction<String> format,
      ToDoubleFunction<String> parse,
      ToDoubleFunction<String> halfStep) {
    long seed = System.nanoTime();
    SplittableRandom random = new SplittableRandom(seed);
    double[] values =
        DoubleStream.generate(() -> low * Math.pow(high / low, random.nextDouble()))
            .limit(CASES)
            .sorted()
            .toArray();
    double last = Double.NEGATIVE_INFINITY;
    for (double value : values) {
      String shown = format.apply(value);
      double read = parse.applyAsDouble(shown);
      String report = "seed " + seed + ": " + value + " shows as " + shown;
      double rounding = 1e-12 * value;
      assertTrue(Math.abs(read - value) <= halfStep.applyAsDouble(shown) + rounding, report);
      assertTrue(read >= last, report + ", less than the smaller one before it");
      last = read;
    }
  }

  private static void all(
      Function<UnitSystem, String> format, String us, String metric, String both) {
    assertEquals(us, format.apply(UnitSystem.US));
    assertEquals(metric, format.apply(UnitSystem.METRIC));
    assertEquals(both, format.apply(UnitSystem.BOTH));
  }
}
