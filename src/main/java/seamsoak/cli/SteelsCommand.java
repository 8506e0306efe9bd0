package seamsoak.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import seamsoak.advice.SteelReport;
import seamsoak.property.Correlations;
import seamsoak.report.JsonReport;
import seamsoak.report.SteelText;
import seamsoak.source.Source;
import seamsoak.source.SourceTable;

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
      arity = "0..1",
      description = "A grade, or an analysis written out in quotes.")
  private String grade;

  @Override
  public Integer call() {
    Steels steels = root.steels();
    SteelText text = new SteelText(root.units());
    if (grade == null) {
      List<seamsoak.steel.Steel> all = steels.table().steels();
      root.print(root.json() ? JsonReport.steels(all) : text.list(all), List.of());
      return Commands.ANSWERED;
    }
    SteelReport report = SteelReport.of(Correlations.load(root.data()), steels.named(grade, spec));
    SourceTable sources = SourceTable.load(root.data());
    root.print(
        root.json()
            ? JsonReport.steel(report)
            : text.page(report, key -> sources.find(key).map(Source::citation)),
        report.exceeded());
    return Commands.ANSWERED;
  }
}
