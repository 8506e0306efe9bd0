package seamsoak.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;
import seamsoak.advice.Advice;
import seamsoak.advice.Trace;
import seamsoak.report.CautionText;
import seamsoak.report.JsonReport;
import seamsoak.report.ScheduleText;
import seamsoak.report.SourcesText;

/** The heat treatment after the last weld. */
@Command(
    name = "schedule",
    description = "The heat treatment after the last weld: soak, normalize, refine.",
    synopsisHeading = "%nUsage: ",
    customSynopsis = Commands.PROGRAM + " schedule BILLET [OPTIONS]",
    footer = {
      "%nExamples:",
      "  " + Commands.PROGRAM + " schedule alloy-data/billets/mosaic.json",
      "  " + Commands.PROGRAM + " schedule alloy-data/billets/mosaic.json --units us%n"
    })
final class ScheduleCommand implements Callable<Integer> {
  @ParentCommand private Root root;
  @Mixin private BilletFile billet;

  @Override
  public Integer call() {
    Advice advice = billet.advice(root);
    Trace trace = root.trace(t -> t.ofSchedule(billet.read(root), advice));
    return BilletFile.print(
        root,
        advice,
        root.json()
            ? JsonReport.schedule(advice, trace)
            : new ScheduleText(advice, root.units()).page()
                + new SourcesText(trace).page()
                + billet.next("plan"),
        new CautionText(advice).schedule());
  }
}
