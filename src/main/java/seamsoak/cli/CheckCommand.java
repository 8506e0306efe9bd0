package seamsoak.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import seamsoak.billet.Billet;
import seamsoak.data.Faults;
import seamsoak.pairing.PairAdvice;
import seamsoak.pairing.PairAdvisor;
import seamsoak.pairing.PairLimits;
import seamsoak.plan.BilletCheck;
import seamsoak.plan.PlanAdvisor;
import seamsoak.report.CheckJson;
import seamsoak.report.CheckText;
import seamsoak.safety.CautionTable;
import seamsoak.trace.Trace;

/** Whether a billet can be made as its file has it. */
@Command(
    description = {
      "All that is wrong with a billet file at once; or, when nothing is, the size after each step",
      "and what is assumed."
    },
    customSynopsis = "check BILLET [OPTIONS]",
    footer = {
      "check alloy-data/billets/mosaic.json",
      "check alloy-data/billets/san-mai.json --units us --json"
    })
final class CheckCommand extends Subcommand {
  @Parameters(paramLabel = "BILLET", description = BilletFile.DESCRIPTION)
  private Path file;

  @Override
  public Integer call() {
    Faults faults = new Faults();
    Optional<Billet> billet = faults.tried(() -> BilletFile.read(file, root));
    Optional<BilletCheck> check = billet.map(b -> advisor().check(b, faults));
    if (!root.json()) {
      faults.throwAny();
    }
    List<PairAdvice> pairs =
        check
            .map(c -> c.history().get(c.history().size() - 1).thicknessMm() / 1e3)
            .map(thick -> pairAdvisor().ofStack(billet.orElseThrow().stack(), thick))
            .orElse(List.of());
    Trace trace =
        billet
            .map(b -> root.trace(t -> t.ofCheck(b, PairLimits.load(root.data()))))
            .orElse(Trace.NONE);
    boolean refused = check.filter(c -> !c.hardStops().isEmpty()).isPresent();
    String next =
        refused
            ? ""
            : "\nNext: " + Program.CALL + " soak " + Program.quoted(file.toString()) + "\n";
    root.print(
        () -> CheckJson.of(faults.mistakes(), check, pairs, trace),
        () ->
            new CheckText(check.orElseThrow(), pairs, root.unitsFor(billet.orElseThrow().units()))
                .answer(),
        trace,
        next,
        next);
    if (!faults.mistakes().isEmpty()) {
      return Program.WRONG_DATA;
    }
    return refused ? Program.DOES_NOT_GO_AHEAD : Program.ANSWERED;
  }

  private PairAdvisor pairAdvisor() {
    return root.pairAdvisor(PairLimits.load(root.data()));
  }

  private PlanAdvisor advisor() {
    return new PlanAdvisor(root.correlations(), CautionTable.load(root.data()), 0);
  }
}
