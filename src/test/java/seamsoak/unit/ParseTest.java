package seamsoak.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every accepted and refused way of writing a quantity. Expected values follow from 1 in = 25.4 mm.
 */
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
  @ValueSource(strings = {"60", "60 HRB", "-1 HRC", "71 HRC", "hard", "60,5 HRC", "", "60 HRC 2"})
  void refusesHardnesses(String text) {
    assertThrows(IllegalArgumentException.class, () -> Hardness.parse(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"500", "500 C", "500 h", "500 C/d", "-5 C/h", "0 C/h", "1e9 C/h", "C/h"})
  void refusesRates(String text) {
    assertThrows(IllegalArgumentException.class, () -> HeatingRate.parse(text));
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
  @CsvSource({"15 C, 15", "27 F, 15", "15 K, 15", "-9 °F, -5", "0 F, 0"})
  void differencesAddNoOffset(String text, double kelvin) {
    assertEquals(kelvin, TemperatureDifference.parse(text).kelvin(), 1e-12);
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

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "38",
        "1/8",
        "in",
        "abc",
        "1,5 cm",
        "1,500 mm",
        "3/0 in",
        "1 5/4 in",
        "1/2/3 in",
        "1.5 1/2 in",
        "1.5/2 in",
        "3-4 mm",
        "--3 mm",
        "-3 mm",
        "-1/8 in",
        "NaN",
        "NaN mm",
        "Infinity mm",
        "1e999 mm",
        "1e3 mm",
        "0x10 mm",
        "5 kg",
        "5 C",
        "5 min",
        "5 mm long",
        "1 mil",
        "999999 m",
        "٣ mm",
        "38 mm\u0000",
        "\u001b[31m5 mm"
      })
  void refusedLengths(String text) {
    refused(Length::parse, text, "38 mm");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", "1500", "1500 °", "F", "hot", "1.150,5 C", "1100/1150 C", "1100-1150 C", "1200 mm",
        "1200 R", "NaN", "NaN C", "Infinity F", "1e999 C", "99999 F", "-500 C", "-1 K", "2150 F 5",
        "bright orange"
      })
  void refusedTemperatures(String text) {
    refused(Temperature::parse, text, "2150 F");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "15", "15 mm", "1,5 C", "NaN C", "1e999 F", "99999 C"})
  void refusedDifferences(String text) {
    refused(TemperatureDifference::parse, text, "27 F or 15 C");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "20",
        "1:20",
        "1:20:00",
        "1,5 h",
        "min",
        "-4 min",
        "10-15 min",
        "10/15 min",
        "20 min 1 h",
        "1 h 75 min",
        "1.5 h 20 min",
        "4 min 30",
        "1h5",
        "1 h and 20 min",
        "5 mm",
        "2 days",
        "NaN min",
        "Infinity h",
        "1e999 s",
        "99999999 h",
        "1 h -20 min",
        "1 h 1 h"
      })
  void refusedTimes(String text) {
    refused(TimeSpan::parse, text, "1 h 20 min");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", "45", "45 F", "0.8 rad", "1/2 deg", "-45 deg", "720 deg", "4,5 deg", "NaN deg"
      })
  void refusedAngles(String text) {
    refused(Angle::parse, text, "45 deg");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "0.1", "0,1 %", "-1 %", "101 %", "0.1 C", "NaN %", "1e999 %"})
  void refusedPercentages(String text) {
    refused(Percent::parse, text, "0.10 %");
  }

  /** One printable line of moderate length that shows what was found and what is accepted. */
  private static void refused(Function<String, ?> parse, String text, String form) {
    String said =
        assertThrows(IllegalArgumentException.class, () -> parse.apply(text)).getMessage();
    String found = text.replaceAll("\\p{Cntrl}", "?").strip();
    assertTrue(said.startsWith("'" + found + "' "), said);
    assertTrue(said.contains("; write a") && said.contains(form), said);
    assertTrue(said.length() < 220, said);
    assertFalse(said.matches("(?s).*\\p{Cntrl}.*"), said);
  }

  @Test
  void aMissingAndAWrongUnitAreToldApart() {
    assertEquals(
        "'38' has no unit; write a length such as 1-3/8 in, 3/8\", 0.040 in, 2 ft, 38 mm or 1.5 cm",
        assertThrows(IllegalArgumentException.class, () -> Length.parse("38")).getMessage());
    assertEquals(
        "'38 kg' has 'kg' where its unit should stand;"
            + " write a temperature such as 2150 F, 1500 °F, 1177 C or 1450 K",
        assertThrows(IllegalArgumentException.class, () -> Temperature.parse("38 kg"))
            .getMessage());
  }

  @Test
  void aVeryLongTextIsNotRepeated() {
    refusedAtOnce("9".repeat(1_000_000));
    refusedAtOnce("1 ".repeat(500_000) + "mm");
  }

  private static void refusedAtOnce(String text) {
    String said =
        assertThrows(IllegalArgumentException.class, () -> Length.parse(text)).getMessage();
    assertTrue(said.contains("is too long for a quantity") && said.length() < 220, said);
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

  @Test
  void noQuantityIsNotANumber() {
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThrows(IllegalArgumentException.class, () -> new Length(bad));
      assertThrows(IllegalArgumentException.class, () -> new Temperature(bad));
      assertThrows(IllegalArgumentException.class, () -> new TemperatureDifference(bad));
      assertThrows(IllegalArgumentException.class, () -> new TimeSpan(bad));
      assertThrows(IllegalArgumentException.class, () -> new Angle(bad));
      assertThrows(IllegalArgumentException.class, () -> new Percent(bad));
    }
    assertThrows(IllegalArgumentException.class, () -> Temperature.ofCelsius(-274));
  }
}
