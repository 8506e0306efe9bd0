package seamsoak.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every refused way of writing a quantity, and what is said of it. */
class RefusedTest {
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
