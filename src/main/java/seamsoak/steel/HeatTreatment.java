package seamsoak.steel;

import java.util.Optional;
import java.util.OptionalDouble;

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
 * @param quench what to quench in, in words
 * @param temper range for tempering; of springs for spring grades, see the notes
 */
public record HeatTreatment(
    OptionalDouble forgeStartC,
    OptionalDouble forgeStopC,
    Optional<TemperatureRange> normalize,
    Optional<TemperatureRange> anneal,
    OptionalDouble annealRateCPerHour,
    Optional<TemperatureRange> harden,
    OptionalDouble leastSoakMinutes,
    Optional<String> quench,
    Optional<TemperatureRange> temper) {

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
          Optional.empty());
}
