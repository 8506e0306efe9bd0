package seamsoak.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Exposure;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.property.Correlations;
import seamsoak.property.forging.Atmosphere;
import seamsoak.report.DecarbText;
import seamsoak.report.JsonReport;
import seamsoak.single.Decarburization;
import seamsoak.single.HeatRemark;
import seamsoak.steel.Steel;
import seamsoak.trace.Trace;

/** Skin and metal lost in one heat. */
@Command(
    description = "Skin and metal lost from the face of a thick piece in one heat.",
    customSynopsis =
        "decarb STEEL --at T --for TIME [--edge open|covered]"
            + " [--atmosphere still-air|moist-air|flame] [OPTIONS]",
    footer = {
      "decarb 1084 --at 2100F --for 10min",
      "decarb \"C0.85\" --at 1000C --for 60min --edge covered",
      "decarb 9260 --at 860C --for 40min --atmosphere still-air"
    })
final class DecarbCommand extends Subcommand {

  @Parameters(
      paramLabel = "STEEL",
      completionCandidates = SteelNames.class,
      description = "A grade, or an analysis in quotes.")
  private String steel;

  @Mixin private HoldOptions hold;

  @Option(
      names = "--edge",
      paramLabel = "open|covered",
      completionCandidates = OptionValues.EdgeNames.class,
      description = "Face bare to the fire (unless given) or under flux, oil or paint.")
  private Exposure edge = Exposure.OPEN;

  @Option(
      names = "--atmosphere",
      paramLabel = "still-air|moist-air|flame",
      completionCandidates = OptionValues.AtmosphereNames.class,
      description =
          "What it is held in; unless given, the band is for any. In a kiln's still air the scale"
              + " of steel with silicon or chromium keeps carbon in.")
  private Atmosphere atmosphere = Atmosphere.UNSTATED;

  @Override
  public Integer call() {
    Steel s = steel(steel);
    Correlations correlations = root.correlations();
    Decarburization skin =
        Decarburization.of(
            new Shop(correlations, Assumptions.USUAL, Resolution.FINE),
            s,
            hold.at.kelvin(),
            hold.time.seconds(),
            edge,
            atmosphere);
    Trace trace = root.trace(t -> t.ofDecarb(s, hold.at.celsius(), edge));
    List<HeatRemark> remarks = HeatRemark.of(correlations, hold.at.celsius(), s);
    return root.print(
        () -> JsonReport.decarb(skin, remarks, trace),
        () -> new DecarbText(skin, root.units()).answer(remarks),
        trace);
  }
}
