package seamsoak.steel;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * The published forging and heat-treatment figures of a grade. Whatever was not published is empty.
 *
 * @param forgeStartC highest heat to start forging from, degrees Celsius; not the welding heat
 * @param forgeStopC heat to stop forging at, degrees Celsius
 * @param normalize range for normalizing
 * @param anneal range for full or spheroidizing annealing
 * @param annealRateCPerHour fastest cooling that still anneals, degrees Celsius per hour
 * @param harden range for hardening
 * @param leastSoakMinutes hold before the quench, the least of what is printed ({@code 10-30})
 * @param quench what to quench in
 * @param temper range for tempering a blade or a tool
 * @param sheetTemper range of the sheet where that is not for blades but for springs or a test
 */
public record HeatTreatment(
    OptionalDouble forgeStartC,
    OptionalDouble forgeStopC,
    Optional<TemperatureRange> normalize,
    Optional<TemperatureRange> anneal,
    OptionalDouble annealRateCPerHour,
    Optional<TemperatureRange> harden,
    OptionalDouble leastSoakMinutes,
    Optional<SheetQuench> quench,
    Optional<TemperatureRange> temper,
    Optional<TemperatureRange> sheetTemper) {

  /** Nothing published. */
  public static final HeatTreatment NONE =
      new HeatTreatment(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /** The same in another quench. */
  HeatTreatment quenchedIn(SheetQuench other) {
    return new HeatTreatment(
        forgeStartC,
        forgeStopC,
        normalize,
        anneal,
        annealRateCPerHour,
        harden,
        leastSoakMinutes,
        Optional.of(other),
        temper,
        sheetTemper);
  }

  /** Both tempering ranges, that of a blade first. */
  public List<TemperatureRange> tempers() {
    return Stream.of(temper, sheetTemper).flatMap(Optional::stream).toList();
  }

  /** The tempering heat within them that is nearest to one, C; empty where none is published. */
  public Optional<Double> temperNear(double celsius) {
    return tempers().stream()
        .map(r -> Math.max(r.lowC(), Math.min(r.highC(), celsius)))
        .min(Comparator.comparingDouble(c -> Math.abs(c - celsius)));
  }
}
