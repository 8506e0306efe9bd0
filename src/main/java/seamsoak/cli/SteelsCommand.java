package seamsoak.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import seamsoak.report.JsonReport;
import seamsoak.report.SteelText;
import seamsoak.single.SteelReport;
import seamsoak.source.Source;
import seamsoak.source.SourceTable;
import seamsoak.steel.Steel;
import seamsoak.trace.Trace;

/** The table of steels, or one of them. */
@Command(
    name = "steels",
    description = "The table of steels; one steel with its temperatures, limits and sources.",
    synopsisHeading = "%nUsage: ",
    customSynopsis = Commands.PROGRAM + " steels [GRADE] [OPTIONS]",
    footer = {
      "%nExamples:",
      "  " + Commands.PROGRAM + " steels",
      "  " + Commands.PROGRAM + " steels 1084",
      "  " + Commands.PROGRAM + " steels \"C0.84 Mn0.75 Si0.22\" --units us%n"
    })
final class SteelsCommand implements Callable<Integer> {
  @ParentCommand private Root root;
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "GRADE",
      completionCandidates = SteelNames.class,
      arity = "0..1",
      description = "A grade, or an analysis written out in quotes.")
  private String grade;

  @Override
  public Integer call() {
    Steels steels = root.steels();
    SteelText text = new SteelText(root.units());
    if (grade == null) {
      List<Steel> all = steels.table().steels();
      Trace trace = root.trace(t -> t.ofSteels(all));
      root.print(() -> JsonReport.steels(all, trace), () -> text.list(all), trace);
      return Commands.ANSWERED;
    }
    Steel steel = steels.named(grade, spec);
    SteelReport report = SteelReport.of(root.correlations(), steel);
    Trace trace = root.trace(t -> t.ofSteel(steel, report));
    SourceTable sources = SourceTable.load(root.data());
    root.print(
        () -> JsonReport.steel(report, trace),
        () ->
            text.told(
                report,
                key ->
                    trace.entries().isEmpty()
                        ? sources.find(key).map(Source::citation)
                        : Optional.empty()),
        trace);
    return Commands.ANSWERED;
  }
}
