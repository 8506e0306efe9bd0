package seamsoak.heatlog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.billet.LoggedCurve.Tip;
import seamsoak.data.ForeignText;
import seamsoak.unit.TimeSpan;

/** Each made log is read as what really happened, or asks what nobody can know from it. */
class MadeLogsTest {
  private static final double PLANNED = 1100;
  private static final double CLOSE = 0.005;

  private final Heats heats = new Heats();

  static List<MadeLog> logs() {
    return MadeLogs.all();
  }

  @Test
  void thereAreEnoughOfThem() {
    assertTrue(logs().size() >= 25);
  }

  @ParameterizedTest
  @MethodSource("logs")
  void asksWhatTheLogDoesNotSayAndNothingElse(MadeLog log) {
    LogReading first = LogReader.read(text(log), LogAnswers.NONE);
    Set<String> asked =
        first instanceof LogReading.Asks asks
            ? asks.questions().stream().map(MadeLogsTest::option).collect(Collectors.toSet())
            : Set.of();
    assertEquals(log.asks(), asked);
  }

  private static String option(LogQuestion question) {
    return question.answer().name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What the log says is worth what really happened, in the few points that a billet keeps too. */
  @ParameterizedTest
  @MethodSource("logs")
  void isWorthWhatReallyHappened(MadeLog log) {
    LogReading.Read read =
        assertInstanceOf(LogReading.Read.class, LogReader.read(text(log), answers(log.answers())));
    TrueHeat truth = log.course();
    double worth = truth.worth(heats.rate()::at, PLANNED, 0, truth.minutes());
    RealHeat heat = heats.of(read, heats.query(Tip.STEEL, PLANNED));
    assertTrue(worth > 5);
    assertEquals(worth, heat.credit().minutes(), CLOSE * worth);
    assertTrue(heat.credit().low() < worth && worth < heat.credit().high());
  }

  private static ForeignText text(MadeLog log) {
    return ForeignText.of("made.csv", log.bytes());
  }

  private static LogAnswers answers(Map<String, String> told) {
    return new LogAnswers(
        Optional.ofNullable(told.get("column")),
        Optional.ofNullable(told.get("unit")).map(u -> Scale.CELSIUS),
        Optional.ofNullable(told.get("time-unit")).map(u -> TimeUnit.MINUTES),
        Optional.ofNullable(told.get("interval")).map(i -> TimeSpan.parse(i).seconds()),
        Optional.empty());
  }
}
