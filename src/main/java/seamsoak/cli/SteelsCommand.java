package seamsoak.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import seamsoak.report.JsonReport;
import seamsoak.report.SteelText;
import seamsoak.single.SteelReport;
import seamsoak.source.Source;
import seamsoak.source.SourceTable;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;
import seamsoak.trace.Trace;

/** The table of steels, or one of them. */
@Command(
    description = "The table of steels; one steel with its temperatures, limits and sources.",
    customSynopsis = "steels [GRADE] [OPTIONS]",
    footer = {"steels", "steels 1084", "steels \"C0.84 Mn0.75 Si0.22\" --units us"})
final class SteelsCommand extends Subcommand {

  @Parameters(
      paramLabel = "GRADE",
      completionCandidates = SteelNames.class,
      arity = "0..1",
      description = "A grade, or an analysis written out in quotes.")
  private String grade;

  @Override
  public Integer call() {
    SteelTable steels = root.steels();
    SteelText text = new SteelText(root.units());
    if (grade == null) {
      List<Steel> all = steels.steels();
      Trace trace = root.trace(t -> t.ofSteels(all));
      return root.print(() -> JsonReport.steels(all, trace), () -> text.list(all), trace);
    }
    Steel steel = steel(grade);
    SteelReport report = SteelReport.of(root.correlations(), steel);
    Trace trace = root.trace(t -> t.ofSteel(steel, report));
    SourceTable sources = SourceTable.load(root.data());
    return root.print(
        () -> JsonReport.steel(report, trace),
        () ->
            text.told(
                report,
                key ->
                    trace.entries().isEmpty()
                        ? sources.find(key).map(Source::citation)
                        : Optional.empty()),
        trace);
  }
}
