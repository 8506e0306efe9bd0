package seamsoak.heatlog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.data.Fault;
import seamsoak.data.ForeignText;

/** What a log as a whole says, what it leaves open, and what is none. */
class LogReaderTest {
  private static LogReading read(String text, LogAnswers answers) {
    return LogReader.read(
        ForeignText.of("log.csv", text.getBytes(StandardCharsets.UTF_8)), answers);
  }

  private static LogReading read(String text) {
    return read(text, LogAnswers.NONE);
  }

  private static String rows(int count, IntFunction<String> row) {
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < count; i++) {
      rows.append(row.apply(i)).append('\n');
    }
    return rows.toString();
  }

  private static String clock(int seconds) {
    return String.format(
        Locale.ROOT, "%02d:%02d:%02d", 14 + seconds / 3600, seconds / 60 % 60, seconds % 60);
  }

  private static String fault(String text) {
    return assertThrows(Fault.class, () -> read(text)).getMessage();
  }

  @Test
  void theSetPointAloneIsNoReading() {
    String log = "Time,Setpoint (°C)\n" + rows(50, i -> clock(10 * i) + ",1121");
    assertTrue(fault(log).contains("set point"));
  }

  @Test
  void theSetPointIsNotToBeChosen() {
    String log =
        "Time,SP (°C),T1 (°C),T2 (°C)\n" + rows(50, i -> clock(10 * i) + ",1121,1101,1102");
    LogReading.Asks asks = assertInstanceOf(LogReading.Asks.class, read(log, column("SP (°C)")));
    LogQuestion.WhichColumn which =
        assertInstanceOf(LogQuestion.WhichColumn.class, asks.questions().get(0));
    assertEquals(Optional.of("SP (°C)"), which.told());
    assertEquals(2, which.channels().size());
  }

  @ParameterizedTest
  @CsvSource({"T2 (°C), 1102", "t2, 1102", "4, 1102", "T1, 1101"})
  void aColumnIsChosenByNameOrNumber(String told, double celsius) {
    String log =
        "Time,SP (°C),T1 (°C),T2 (°C)\n" + rows(50, i -> clock(10 * i) + ",1121,1101,1102");
    LogReading.Read read = assertInstanceOf(LogReading.Read.class, read(log, column(told)));
    assertEquals(celsius, read.readings().celsius()[7]);
  }

  private static LogAnswers column(String name) {
    return new LogAnswers(
        Optional.of(name), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** Cut in the middle, every reading would have another column's decimals. */
  @Test
  void aDecimalCommaAmongCommasIsAFault() {
    String log = "Time,Temp (°C)\n" + rows(50, i -> clock(10 * i) + ",1121," + i % 10);
    assertTrue(fault(log).contains("the head has 2 names"));
  }

  @Test
  void timeThatRunsBackwardIsAFault() {
    String log =
        "Time,Temp (°C)\n"
            + rows(50, i -> clock(10 * i + 3600) + ",1121")
            + rows(50, i -> clock(10 * i) + ",1121");
    assertTrue(fault(log).contains("log.csv:52: its time runs backward"));
  }

  /** An hour from summer to winter, or a clock that somebody set. */
  @Test
  void aClockSetBackASecondIsNone() {
    String log =
        "Time,Temp (°C)\n"
            + rows(50, i -> clock(10 * i) + ",1121")
            + rows(50, i -> clock(10 * i + 489) + ",1121");
    assertEquals(979, assertInstanceOf(LogReading.Read.class, read(log)).readings().lastSeconds());
  }

  @Test
  void tooHotForItsUnitAsks() {
    String log = "Time,Temp (°C)\n" + rows(50, i -> clock(10 * i) + ",2050");
    LogReading.Asks asks = assertInstanceOf(LogReading.Asks.class, read(log));
    LogQuestion.WhichScale scale =
        assertInstanceOf(LogQuestion.WhichScale.class, asks.questions().get(0));
    assertTrue(scale.scales().contains(Scale.FAHRENHEIT));
    assertTrue(!scale.scales().contains(Scale.CELSIUS));
  }

  /** Zones A to F are not all in Celsius or Fahrenheit. */
  @Test
  void aLetterOfAZoneIsNoUnit() {
    String log = "Time,Zone A,Zone C,Zone F\n" + rows(50, i -> clock(10 * i) + ",1101,1102,1103");
    LogReading.Asks asks = assertInstanceOf(LogReading.Asks.class, read(log, column("Zone C")));
    assertEquals(LogQuestion.Answer.UNIT, asks.questions().get(0).answer());
  }

  /** The couple's type looks like the unit. */
  @Test
  void aTypeInBracketsIsNoUnit() {
    String log = "Time,T1 (K)\n" + rows(50, i -> clock(10 * i) + "," + (300 + i));
    LogReading.Asks asks = assertInstanceOf(LogReading.Asks.class, read(log));
    LogQuestion.WhichScale scale =
        assertInstanceOf(LogQuestion.WhichScale.class, asks.questions().get(0));
    assertEquals(Set.of(Scale.CELSIUS, Scale.FAHRENHEIT, Scale.KELVIN), scale.scales());
  }

  @Test
  void thousandsOrDecimalsAsk() {
    String log = "Time;Temp (°C)\n" + rows(50, i -> clock(10 * i) + ";1.12" + i % 10);
    LogReading.Asks asks = assertInstanceOf(LogReading.Asks.class, read(log));
    assertInstanceOf(LogQuestion.WhichDecimals.class, asks.questions().get(0));
    LogReading.Read read =
        assertInstanceOf(
            LogReading.Read.class,
            read(
                log,
                new LogAnswers(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(DecimalMark.COMMA))));
    assertEquals(1121, read.readings().celsius()[1]);
  }

  @Test
  void aUnitBeforeTheHeadCounts() {
    String log = "Units: F\nTime,Temp\n" + rows(50, i -> clock(10 * i) + ",1121");
    assertEquals(
        605, assertInstanceOf(LogReading.Read.class, read(log)).readings().celsius()[0], 1e-9);
  }

  @Test
  void whatIsNoLogIsAFault() {
    fault("hello\nworld\n");
    fault("a,b\nc,d\n");
    fault("{ \"name\": \"a billet\" }");
    fault("Time,Temp (°C)\n14:03:07,1121\n");
    assertTrue(
        fault(
                "Time,Temp (°C)\n"
                    + rows(50, i -> clock(10 * i) + ",1121" + (i % 3 == 0 ? ",1,2" : "")))
            .contains("rows"));
  }

  /** A minute of which the log has only the end, whole ones, and one with a row missing. */
  @Test
  void rowsOfOneMinuteAreSpread() {
    String log =
        "Time,Temp (°C)\n14:03,1\n14:03,2\n"
            + "14:04,3\n14:04,4\n14:04,5\n14:04,6\n"
            + "14:05,7\n14:05,8\n14:05,9\n14:05,10\n"
            + "14:06,11\n14:06,12\n14:06,13\n14:06,14\n";
    double[] seconds = assertInstanceOf(LogReading.Read.class, read(log)).readings().seconds();
    for (int i = 0; i < seconds.length; i++) {
      assertEquals(15.0 * i, seconds[i], 1e-9);
    }
  }

  /** Neither am nor pm: noon and midnight are seen where 12 goes to 1. */
  @Test
  void aClockOfTwelveHoursGoesRound() {
    String log =
        "Time,Temp (°C)\n"
            + rows(
                1000,
                i ->
                    String.format(
                        Locale.ROOT,
                        "%02d:%02d:30,%d",
                        1 + (i / 60 + 10) % 12,
                        i % 60,
                        900 + i % 2));
    Readings readings = assertInstanceOf(LogReading.Read.class, read(log)).readings();
    assertEquals(999 * 60, readings.lastSeconds(), 1e-9);
  }

  @Test
  void aSteepRiseHidesNoSpike() {
    String log = "Time [s],T (°C)\n" + rows(60, i -> 10 * i + "," + (i == 30 ? 1000 : 20 + 15 * i));
    Readings readings = assertInstanceOf(LogReading.Read.class, read(log)).readings();
    assertEquals(1, readings.leftOut().size());
    assertEquals(300, readings.leftOut().get(0).seconds());
    assertEquals(Readings.Why.SPIKE, readings.leftOut().get(0).why());
  }

  /** A day of rows is few points, each reading within two kelvin and some of its line. */
  @Test
  void aCurveIsToldByFewPoints() {
    LogReading.Read read = Heats.log(100, 1, m -> 20 + 1100 * (1 - Math.exp(-m / 12)));
    LogCurve curve = LogCurve.of(read.readings());
    assertTrue(curve.points().size() < 40, curve.points().size() + " points");
    double most = 0;
    int k = 1;
    for (int i = 0; i < read.readings().seconds().length; i++) {
      double m = read.readings().seconds()[i] / 60;
      while (curve.points().get(k).minute() < m) {
        k++;
      }
      LogCurve.Point a = curve.points().get(k - 1);
      LogCurve.Point b = curve.points().get(k);
      double line =
          a.celsius() + (b.celsius() - a.celsius()) * (m - a.minute()) / (b.minute() - a.minute());
      most = Math.max(most, Math.abs(line - read.readings().celsius()[i]));
    }
    assertTrue(most < LogCurve.TOLERANCE_KELVIN, "off by " + most);
  }
}
