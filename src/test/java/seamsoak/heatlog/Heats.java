package seamsoak.heatlog;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Exposure;
import seamsoak.billet.LoggedCurve.Tip;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.data.DataFolder;
import seamsoak.data.ForeignText;
import seamsoak.heat.Section;
import seamsoak.property.Correlations;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;

/** Heats of 1084 for tests, from logs or from a temperature by the minute. */
final class Heats {
  private final Shop shop =
      new Shop(Correlations.load(DataFolder.packed()), Assumptions.USUAL, Resolution.FINE);
  private final LogSettings settings = LogSettings.load(DataFolder.packed());
  private final Steel steel = SteelTable.load(DataFolder.packed()).find("1084").orElseThrow();

  CarbonRate rate() {
    return CarbonRate.of(shop.metal(steel));
  }

  LogSettings settings() {
    return settings;
  }

  HeatQuery query(Tip tip, double plannedC) {
    return new HeatQuery(
        steel,
        true,
        Optional.of(plannedC),
        Optional.of(tip),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(Exposure.OPEN));
  }

  HeatQuery inAir(double plannedC, double millimetres, double loadedMinute) {
    return new HeatQuery(
        steel,
        true,
        Optional.of(plannedC),
        Optional.of(Tip.AIR),
        Optional.empty(),
        Optional.of(Section.bar(millimetres / 1e3)),
        Optional.of(loadedMinute),
        Optional.empty(),
        Optional.of(Exposure.OPEN));
  }

  HeatQuery with(HeatQuery q, String couple) {
    return new HeatQuery(
        q.steel(),
        true,
        q.plannedC(),
        q.tip(),
        settings.find(couple),
        q.section(),
        q.loadedMinute(),
        q.removedMinute(),
        q.face());
  }

  HeatQuery between(HeatQuery q, double loaded, double removed) {
    return new HeatQuery(
        q.steel(),
        true,
        q.plannedC(),
        q.tip(),
        q.couple(),
        q.section(),
        Optional.of(loaded),
        Optional.of(removed),
        q.face());
  }

  RealHeat of(LogReading.Read read, HeatQuery query) {
    return new HeatAdvisor(shop, settings).of(read, query);
  }

  /** A log of one row every so many seconds. */
  static LogReading.Read log(double minutes, int seconds, DoubleUnaryOperator celsius) {
    StringBuilder text = new StringBuilder("Time [s],T [°C]\n");
    for (int s = 0; s <= 60 * minutes; s += seconds) {
      text.append(String.format(Locale.ROOT, "%d,%.2f%n", s, celsius.applyAsDouble(s / 60.0)));
    }
    return read(text.toString());
  }

  static LogReading.Read read(String text) {
    return (LogReading.Read)
        LogReader.read(
            ForeignText.of("log.csv", text.getBytes(StandardCharsets.UTF_8)), LogAnswers.NONE);
  }
}
