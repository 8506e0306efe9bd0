package seamsoak.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;
import seamsoak.plan.Advice;
import seamsoak.report.BilletAnswer;
import seamsoak.report.JsonReport;
import seamsoak.trace.Trace;

/** The soak that clears the lines. */
@Command(
    name = "soak",
    description = "The white lines as they are and the soak that clears them.",
    synopsisHeading = "%nUsage: ",
    customSynopsis = Commands.PROGRAM + " soak BILLET [OPTIONS]",
    footer = {
      "%nExamples:",
      "  " + Commands.PROGRAM + " soak alloy-data/billets/mosaic.json",
      "  " + Commands.PROGRAM + " soak alloy-data/billets/mosaic.json --samples 512 --json%n"
    })
final class SoakCommand implements Callable<Integer> {
  @ParentCommand private Root root;
  @Mixin private BilletFile billet;

  @Override
  public Integer call() {
    Advice advice = billet.soak(root);
    Trace trace = root.trace(t -> t.ofSoak(billet.read(root), advice));
    String next = billet.next("schedule", advice);
    root.print(
        () -> JsonReport.soak(advice, trace),
        () -> new BilletAnswer(advice, root.units()).soak(),
        trace,
        next,
        next);
    return BilletFile.code(advice);
  }
}
