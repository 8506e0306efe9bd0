package seamsoak.cli;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.property.Correlations;
import seamsoak.report.JsonReport;
import seamsoak.report.MigrateText;
import seamsoak.single.Migration;
import seamsoak.steel.Steel;
import seamsoak.trace.Trace;

/** Carbon across the seam of a stack. */
@Command(
    name = "migrate",
    description =
        "Carbon across the seam of a stack that repeats two layers, held at one temperature.",
    synopsisHeading = "%nUsage: ",
    customSynopsis =
        Commands.PROGRAM + " migrate FIRST SECOND --layer A[,B] --at T --for TIME [OPTIONS]",
    footer = {
      "%nExamples:",
      "  " + Commands.PROGRAM + " migrate 1095 1018 --layer 1mm --at 1100C --for 20min",
      "  "
          + Commands.PROGRAM
          + " migrate 1084 75Ni8 --layer 0.040in,0.030in --at \"2100 F\" --for 1h",
      "  "
          + Commands.PROGRAM
          + " migrate \"C0.9 Mn0.4\" 1018 --layer 2mm --at 1050C --for 2h --json%n"
    })
final class MigrateCommand implements Callable<Integer> {
  @ParentCommand private Root root;
  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "FIRST",
      completionCandidates = SteelNames.class,
      description = "A grade, or an analysis in quotes.")
  private String first;

  @Parameters(
      index = "1",
      paramLabel = "SECOND",
      completionCandidates = SteelNames.class,
      description = "The other one.")
  private String second;

  @Option(
      names = "--layer",
      paramLabel = "A[,B]",
      required = true,
      converter = OptionValues.Layers.class,
      description = "Thickness of each layer, or of the first and the second.")
  private OptionValues.Pair layers;

  @Mixin private HoldOptions hold;

  @Override
  public Integer call() {
    Steels steels = root.steels();
    Steel a = steels.named(first, spec);
    Steel b = steels.named(second, spec, a);
    Correlations correlations = root.correlations();
    Migration migration =
        Migration.of(
            new Shop(correlations, Assumptions.USUAL, Resolution.FINE),
            a,
            b,
            layers.first().metres(),
            layers.second().metres(),
            hold.at.kelvin(),
            hold.time.seconds());
    Trace trace =
        root.trace(t -> t.ofMigration(Stream.of(a, b).distinct().toList(), hold.at.celsius()));
    List<String> remarks = new HeatRemarks(correlations, hold.at, root.unitsOfAnswer()).of(a, b);
    root.print(
        () -> JsonReport.migrate(migration, remarks, trace),
        () -> new MigrateText(migration, root.units()).answer(remarks),
        trace);
    return Commands.ANSWERED;
  }
}
