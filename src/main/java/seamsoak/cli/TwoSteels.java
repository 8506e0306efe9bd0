package seamsoak.cli;

import picocli.CommandLine.Parameters;

/** The two steels of a command. */
final class TwoSteels {
  @Parameters(
      index = "0",
      paramLabel = "FIRST",
      completionCandidates = SteelNames.class,
      description = "A grade, an analysis in quotes, or a grade with the analysis of its melt.")
  String first;

  @Parameters(
      index = "1",
      paramLabel = "SECOND",
      completionCandidates = SteelNames.class,
      description = "The other one.")
  String second;
}
