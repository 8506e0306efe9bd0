package seamsoak.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import seamsoak.billet.Billet;
import seamsoak.data.Fault;
import seamsoak.data.Mistake;
import seamsoak.kiln.KilnAdvisor;
import seamsoak.kiln.KilnPlan;
import seamsoak.plan.PlanAdvisor;
import seamsoak.report.KilnJson;
import seamsoak.report.KilnText;
import seamsoak.safety.CautionTable;
import seamsoak.trace.Trace;

/** Several billets in one kiln. */
@Command(
    description = {
      "Several billets in one kiln: which steps of their schedules share a heat, in what order they",
      "are taken out, which do not go together, and why."
    },
    customSynopsis = "kiln BILLET BILLET... [OPTIONS]",
    footer = "kiln alloy-data/billets/mosaic.json alloy-data/billets/san-mai.json")
final class KilnCommand extends Subcommand {
  @Parameters(
      arity = "0..*",
      paramLabel = "BILLET",
      description = "Files that describe the billets, two to eight.")
  private List<Path> files = List.of();

  @Option(
      names = "--samples",
      paramLabel = "N",
      description =
          "Cases tried for how sure each billet's soak is; "
              + PlanAdvisor.USUAL_SAMPLES
              + " unless given, 0 is quickest.")
  private int samples = PlanAdvisor.USUAL_SAMPLES;

  @Override
  public Integer call() {
    if (files.size() < 2 || files.size() > KilnAdvisor.MOST) {
      throw wrong("give two billets' files or more, up to " + KilnAdvisor.MOST);
    }
    List<Billet> billets = read();
    PlanAdvisor advisor =
        new PlanAdvisor(root.correlations(), CautionTable.load(root.data()), samples);
    List<KilnAdvisor.Given> given = new ArrayList<>();
    try (ProgressLine progress = root.progress()) {
      for (int i = 0; i < billets.size(); i++) {
        Billet billet = billets.get(i);
        given.add(
            new KilnAdvisor.Given(
                files.get(i).toString(), billet, advisor.advise(billet, progress)));
      }
    }
    KilnPlan plan = KilnAdvisor.advise(root.correlations(), given);
    Trace trace = root.trace(t -> t.ofSchedules(given));
    root.print(
        () -> KilnJson.of(plan, trace),
        () -> new KilnText(plan, root.unitsFor(KilnAdvisor.units(given))).told(),
        trace);
    return plan.goesAhead() ? Program.ANSWERED : Program.DOES_NOT_GO_AHEAD;
  }

  /** All that is wrong with any of them at once. */
  private List<Billet> read() {
    List<Billet> billets = new ArrayList<>();
    List<Mistake> mistakes = new ArrayList<>();
    for (Path file : files) {
      try {
        billets.add(BilletFile.read(file, root));
      } catch (Fault fault) {
        mistakes.addAll(fault.mistakes());
      }
    }
    if (!mistakes.isEmpty()) {
      throw new Fault(mistakes);
    }
    return billets;
  }
}
