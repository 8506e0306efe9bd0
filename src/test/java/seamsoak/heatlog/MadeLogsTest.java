package seamsoak.heatlog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.data.DataFolder;
import seamsoak.data.ForeignText;
import seamsoak.property.Correlations;
import seamsoak.steel.SteelTable;
import seamsoak.unit.TimeSpan;

/** Each made log is read as what really happened, or asks what nobody can know from it. */
class MadeLogsTest {
  private static final double PLANNED = 1100;

  private final CarbonRate rate =
      CarbonRate.of(
          new Shop(Correlations.load(DataFolder.packed()), Assumptions.USUAL, Resolution.FINE)
              .metal(SteelTable.load(DataFolder.packed()).find("1084").orElseThrow()));

  static List<MadeLog> logs() {
    return MadeLogs.all();
  }

  @ParameterizedTest
  @MethodSource("logs")
  void isReadAsItWasOrAsks(MadeLog log) {
    ForeignText text = ForeignText.of("made.csv", log.bytes());
    LogReading first = LogReader.read(text, LogAnswers.NONE);
    if (!log.asks().isEmpty()) {
      LogReading.Asks asks = assertInstanceOf(LogReading.Asks.class, first);
      assertEquals(
          log.asks(),
          asks.questions().stream()
              .map(q -> q.answer().name().toLowerCase().replace('_', '-'))
              .collect(Collectors.toSet()));
    }
    LogReading reading =
        log.asks().isEmpty() ? first : LogReader.read(text, answers(log.answers()));
    LogReading.Read read = assertInstanceOf(LogReading.Read.class, reading, reading.toString());
    double truth = log.course().worth(rate::at, PLANNED, 0, log.course().minutes());
    double[] t = read.readings().seconds();
    double[] c = read.readings().celsius();
    double sum = 0;
    for (int i = 1; i < t.length; i++) {
      sum += (t[i] - t[i - 1]) / 60 * rate.mean(c[i - 1], c[i]);
    }
    if (System.getProperty("tell") != null) {
      System.out.printf(
          "%-70s %9.3f %+.3f %% out %d gaps %d%n",
          log.name(),
          truth,
          100 * (sum / rate.at(PLANNED) / truth - 1),
          read.readings().leftOut().size(),
          read.readings().gaps().size());
    }
    assertEquals(truth, sum / rate.at(PLANNED), 0.005 * truth);
    assertTrue(truth > 5);
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
