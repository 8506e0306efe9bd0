package seamsoak.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import seamsoak.plan.Advice;
import seamsoak.report.BilletAnswer;
import seamsoak.report.JsonReport;
import seamsoak.trace.Trace;

/** The soak that clears the lines. */
@Command(
    description = "The white lines as they are and the soak that clears them.",
    customSynopsis = "soak BILLET [OPTIONS]",
    footer = {
      "soak alloy-data/billets/mosaic.json",
      "soak alloy-data/billets/mosaic.json --samples 512 --json"
    })
final class SoakCommand extends Subcommand {
  @Mixin private BilletFile billet;

  @Override
  public Integer call() {
    Advice advice = billet.soak(root);
    Trace trace = root.trace(t -> t.ofSoak(billet.read(root), advice));
    String next = billet.next("schedule", advice);
    root.print(
        () -> JsonReport.soak(advice, trace),
        () -> new BilletAnswer(advice, billet.units(root)).soak(),
        trace,
        next,
        next);
    return BilletFile.code(advice);
  }
}
