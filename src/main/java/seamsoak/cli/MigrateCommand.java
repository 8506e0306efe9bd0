package seamsoak.cli;

import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.property.Correlations;
import seamsoak.report.JsonReport;
import seamsoak.report.MigrateText;
import seamsoak.single.HeatRemark;
import seamsoak.single.Migration;
import seamsoak.steel.Steel;
import seamsoak.trace.Trace;

/** Carbon across the seam of a stack. */
@Command(
    description =
        "Carbon across the seam of a stack that repeats two layers, held at one temperature.",
    customSynopsis = "migrate FIRST SECOND --layer A[,B] --at T --for TIME [OPTIONS]",
    footer = {
      "migrate 1095 1018 --layer 1mm --at 1100C --for 20min",
      "migrate 1084 75Ni8 --layer 0.040in,0.030in --at \"2100 F\" --for 1h",
      "migrate \"C0.9 Mn0.4\" 1018 --layer 2mm --at 1050C --for 2h --json"
    })
final class MigrateCommand extends Subcommand {

  @Mixin private TwoSteels names;

  @Option(
      names = "--layer",
      paramLabel = "A[,B]",
      required = true,
      description = "Thickness of each layer, or of the first and the second.")
  private OptionValues.Layers layers;

  @Mixin private HoldOptions hold;

  @Override
  public Integer call() {
    Steel a = steel(names.first);
    Steel b = steel(names.second, a);
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
    List<HeatRemark> remarks = HeatRemark.of(correlations, hold.at.celsius(), a, b);
    return root.print(
        () -> JsonReport.migrate(migration, remarks, trace),
        () -> new MigrateText(migration, root.units()).answer(remarks),
        trace);
  }
}
