package seamsoak.cli;

import picocli.CommandLine.Option;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;

/** The hold at one temperature that a command asks for. */
final class HoldOptions {
  @Option(
      names = "--at",
      paramLabel = "T",
      required = true,
      description = "Temperature, such as 2100F or 1150C.")
  Temperature at;

  @Option(
      names = "--for",
      paramLabel = "TIME",
      required = true,
      description = "Time, such as 20min, 1.5h or \"1 h 20 min\".")
  TimeSpan time;
}
