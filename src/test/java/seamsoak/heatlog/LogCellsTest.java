package seamsoak.heatlog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a single cell, a date or a name of a column says. */
class LogCellsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1121.4 | 1121.4",
        "-5 | -5",
        "+7.25 | 7.25",
        ".5 | 0.5",
        "25. | 25",
        "1,121.4 | 1121.4",
        "1,121 | 1121",
        "12,345,678 | 12345678",
        "1'121.4 | 1121.4",
        "1.1214e3 | 1121.4",
        "1121.4 °C | 1121.4",
        "45 % | 45",
        "0012 | 12"
      })
  void numbersWithADot(String cell, double value) {
    assertEquals(value, NumberText.parse(cell, DecimalMark.DOT), 1e-9);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"1121,4 | 1121.4", "1.121,4 | 1121.4", "1.121 | 1121", "0,5 | 0.5", "25,4 C | 25.4"})
  void numbersWithAComma(String cell, double value) {
    assertEquals(value, NumberText.parse(cell, DecimalMark.COMMA), 1e-9);
  }

  /** A date is no number, and thousands come in groups of three. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "28.11.2026",
        "1,12",
        "1,1213",
        "12,34,567",
        ",121",
        "1.2.3",
        "",
        "-",
        "OL",
        "1121 4",
        "0x1F",
        "1e99",
        "14:03",
        "----",
        "NaN",
        "12345678901234567890",
        "1,121,4"
      })
  void whatIsNoNumberWithADot(String cell) {
    assertTrue(Double.isNaN(NumberText.parse(cell, DecimalMark.DOT)), cell);
  }

  @ParameterizedTest
  @ValueSource(strings = {"28.11.2026", "1.12", "1,121.4", "1,2,3"})
  void whatIsNoNumberWithAComma(String cell) {
    assertTrue(Double.isNaN(NumberText.parse(cell, DecimalMark.COMMA)), cell);
  }

  @ParameterizedTest
  @CsvSource({
    "1121.4, DOT",
    "'1121,4', COMMA",
    "'1,121.4', DOT",
    "'1.121,4', COMMA",
    "0.125, DOT",
    "1.121, DOT_OR_THOUSANDS",
    "'1,121', COMMA_OR_THOUSANDS",
    "998, WHOLE",
    "1121, NONE",
    "OL, NONE",
    "'25,3', COMMA",
    "1121.400, DOT"
  })
  void whatACellSaysOfItsMark(String cell, NumberText.Evidence evidence) {
    assertEquals(evidence, NumberText.evidence(cell));
  }

  @ParameterizedTest
  @CsvSource({
    "14:03:07, '', 50587",
    "14:03, '', 50580",
    "2:03:07 PM, '', 50587",
    "12:00:00 am, '', 0",
    "12:30 p.m., '', 45000",
    "2026-11-20T14:03:07.5Z, 2026-11-20, 50587.5",
    "20.11.2026 14:03:07, 20.11.2026, 50587",
    "20-Nov-26 14:03:07, 20-Nov-26, 50587",
    "'Nov 20, 2026 14:03', 'Nov 20, 2026', 50580",
    "100:00:05, '', 360005"
  })
  void times(String cell, String date, double seconds) {
    ClockText clock = ClockText.parse(cell).orElseThrow();
    assertEquals(date, clock.date());
    assertEquals(seconds, clock.seconds(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        ":",
        "14:",
        "14:3",
        "14:63:00",
        "14:03:61",
        "13:00 pm",
        "0:30 am",
        "door: open",
        "14:03 x",
        "1:2:3",
        "1121.4",
        "1.121.400",
        "1121",
        "ab-cd-ef:00:00"
      })
  void noTimes(String cell) {
    assertEquals(Optional.empty(), ClockText.parse(cell));
  }

  @ParameterizedTest
  @CsvSource({"2026-11-20T14:03:07+01:00, 3600", "2026-11-20T14:03:07-0530, -19800"})
  void zones(String cell, int ahead) {
    assertEquals(ahead, ClockText.parse(cell).orElseThrow().offsetSeconds());
  }

  @ParameterizedTest
  @CsvSource({
    "2026-11-20, 2026-11-21, 1", "30.11.2026, 01.12.2026, 1", "11/12/26, 12/12/26, 1",
    "11/30/26, 12/01/26, 1", "31.12.2026, 01.01.2027, 1", "20-Nov-26, 21-Nov-26, 1",
    "2026-11-20, 2026-11-25, 5", "2026-11-20, 2026-11-19, 0"
  })
  void daysBetweenDates(String before, String after, long days) {
    assertEquals(days, DayCount.between(before, after));
  }

  @ParameterizedTest
  @CsvSource({
    "Temp (°C), CELSIUS", "temp_c, CELSIUS", "value_degC, CELSIUS", "T1 (type K) [K], KELVIN",
    "Kiln [°F], FAHRENHEIT", "Chamber deg F, FAHRENHEIT", "°C, CELSIUS", "T1 type K (°C), CELSIUS"
  })
  void scales(String name, Scale scale) {
    assertEquals(Optional.of(scale), HeadWords.scale(name));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"Temp", "T1 (type K)", "Zone 3", "Output %", "Time [s]", "Thermocouple K"})
  void noScales(String name) {
    assertEquals(Optional.empty(), HeadWords.scale(name));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"SP1 [C]", "Set point °C", "Setpoint", "Sollwert", "Target temp (F)", "SV"})
  void setPoints(String name) {
    assertTrue(HeadWords.isSetPoint(name));
  }

  @ParameterizedTest
  @ValueSource(strings = {"PV1 [C]", "Actual °C", "T1", "Spare TC", "Current temperature (C)"})
  void readings(String name) {
    assertTrue(!HeadWords.isSetPoint(name) && !HeadWords.isNoReading(name));
  }
}
