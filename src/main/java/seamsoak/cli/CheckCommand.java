package seamsoak.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import seamsoak.billet.Billet;
import seamsoak.data.Faults;
import seamsoak.pairing.PairAdvice;
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
    Optional<PairLimits> limits = check.map(c -> PairLimits.load(root.data()));
    List<PairAdvice> pairs =
        limits
            .map(root::pairAdvisor)
            .map(p -> p.ofStack(billet.orElseThrow().stack(), check.orElseThrow().history()))
            .orElse(List.of());
    Trace trace =
        limits.map(l -> root.trace(t -> t.ofCheck(billet.orElseThrow(), l))).orElse(Trace.NONE);
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

  private PlanAdvisor advisor() {
    return new PlanAdvisor(root.correlations(), CautionTable.load(root.data()), 0);
  }
}
