package seamsoak.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every accepted way of writing a quantity. Expected values follow from 1 in = 25.4 mm. */
class ParseTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "1/8 in       | 3.175",
        "3/8\"        | 9.525",
        "3/8 ”        | 9.525",
        "1 1/2 in     | 38.1",
        "1-1/2in      | 38.1",
        "1-3/8 in     | 34.925",
        "1 - 3/8 inch | 34.925",
        "1½ in        | 38.1",
        "⅜\"          | 9.525",
        "5/4 in.      | 31.75",
        "0.040 in     | 1.016",
        ".5\"         | 12.7",
        "2 inches     | 50.8",
        "2 ft         | 609.6",
        "2'           | 609.6",
        "1/2 foot     | 152.4",
        "38mm         | 38",
        "38 MM        | 38",
        "5. mm        | 5",
        "1/2 mm       | 0.5",
        "+3 mm        | 3",
        "1.5 cm       | 15",
        "0.25 m       | 250",
        "25 um        | 0.025",
        "25 µm        | 0.025",
        "25 μm        | 0.025",
        "0 mm         | 0",
      })
  void lengths(String text, double millimetres) {
    assertEquals(millimetres, Length.parse(text).millimetres(), 1e-12 * millimetres);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"60 HRC | 60", "58.5hrc | 58.5", "60 Rc | 60", "62 Rockwell C | 62", "0 HRC | 0"})
  void hardnesses(String text, double hrc) {
    assertEquals(hrc, Hardness.parse(text).hrc());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "500 C/h | 500",
        "900 F/h | 500",
        "900 °F per hour | 500",
        "10 C/min | 600",
        "18F/min | 600",
        "28 K/hr | 28",
      })
  void ratesAreDifferencesSoNo32IsAdded(String text, double kelvinPerHour) {
    assertEquals(kelvinPerHour, HeatingRate.parse(text).kelvinPerHour(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1500F            | 815.5555555555555",
        "1500 °F          | 815.5555555555555",
        "1500 ℉           | 815.5555555555555",
        "2150 F           | 1176.6666666666667",
        "2150 degrees F   | 1176.6666666666667",
        "815C             | 815",
        "815 ºC           | 815",
        "1150 degC        | 1150",
        "1150 deg C       | 1150",
        "1150 celsius     | 1150",
        "1323 K           | 1049.85",
        "1323.15 kelvin   | 1050",
        "-100 F           | -73.33333333333333",
        "−40 C            | -40",
        "32 F             | 0",
      })
  void temperatures(String text, double celsius) {
    assertEquals(celsius, Temperature.parse(text).celsius(), 1e-10);
  }

  @ParameterizedTest
  @CsvSource({
    "4 min, 240",
    "4min, 240",
    "4 minutes, 240",
    "1 h 20 min, 4800",
    "1h20min, 4800",
    "1h20, 4800",
    "1 h 20, 4800",
    "1h05, 3900",
    "1h20m, 4800",
    "1 hr. 20 min., 4800",
    "1 H 20 MIN, 4800",
    "90 s, 90",
    "4 min 30 s, 270",
    "1 h 0 min 5 s, 3605",
    "1 h 5.5 min, 3930",
    "312h, 1123200",
    "1.5 h, 5400",
    ".5 h, 1800",
    "0 min, 0",
  })
  void times(String text, double seconds) {
    assertEquals(seconds, TimeSpan.parse(text).seconds(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"45 deg, 45", "45°, 45", "45 º, 45", "22.5 degrees, 22.5"})
  void angles(String text, double degrees) {
    assertEquals(degrees, Angle.parse(text).degrees(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"0.10 %, 0.1", "50%, 50", "0.1 wt%, 0.1", "30 percent, 30"})
  void percentages(String text, double percent) {
    assertEquals(percent, Percent.parse(text).value(), 1e-15);
  }

  @Test
  void theMachinesLanguageChangesNothing() {
    Locale before = Locale.getDefault();
    try {
      for (Locale locale : new Locale[] {Locale.GERMANY, new Locale("tr", "TR")}) {
        Locale.setDefault(locale);
        assertEquals(38.1, Length.parse("1.5 IN").millimetres(), 1e-12);
        assertEquals(60, TimeSpan.parse("1 MIN").seconds());
        assertEquals("0.040 in (1.02 mm)", Length.parse("0.040 in").format(UnitSystem.BOTH));
      }
    } finally {
      Locale.setDefault(before);
    }
  }
}
