package seamsoak.cli;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import seamsoak.pairing.PairAdvice;
import seamsoak.pairing.PairAdvisor;
import seamsoak.pairing.PairLimits;
import seamsoak.pairing.Stock;
import seamsoak.report.JsonReport;
import seamsoak.report.PairText;
import seamsoak.steel.Steel;
import seamsoak.trace.Trace;
import seamsoak.unit.Length;

/** Whether two steels belong together. */
@Command(
    name = "pair",
    description = "Whether two steels belong in one billet: fits, watch or clash, and why.",
    synopsisHeading = "%nUsage: ",
    customSynopsis =
        Commands.PROGRAM
            + " pair FIRST SECOND [--share A:B] [--layer A[,B]] [--section S] [OPTIONS]",
    footer = {
      "%nExamples:",
      "  " + Commands.PROGRAM + " pair 1084 75Ni8",
      "  " + Commands.PROGRAM + " pair O1 1084 --layer 0.060in --section 3/16in",
      "  " + Commands.PROGRAM + " pair \"C0.79 Mn0.48 Si0.25\" 75Ni8 --share 60:40",
      "  " + Commands.PROGRAM + " pair \"1084: C0.88 Mn0.70\" \"75Ni8: Ni1.8\" --json%n"
    })
final class PairCommand implements Callable<Integer> {
  private static final double SHARE_TOLERANCE = 0.005;

  @ParentCommand private Root root;
  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "FIRST",
      completionCandidates = SteelNames.class,
      description = "A grade, an analysis in quotes, or a grade with the analysis of its melt.")
  private String first;

  @Parameters(
      index = "1",
      paramLabel = "SECOND",
      completionCandidates = SteelNames.class,
      description = "The other one.")
  private String second;

  @Option(
      names = "--share",
      paramLabel = "A:B",
      converter = OptionValues.Share.class,
      description = "Parts of the first and the second steel in the stack, such as 60:40.")
  private Double share;

  @Option(
      names = "--layer",
      paramLabel = "A[,B]",
      converter = OptionValues.Layers.class,
      description = "Thickness of each layer, or of the first and the second.")
  private OptionValues.Pair layers;

  @Option(
      names = "--section",
      paramLabel = "S",
      converter = OptionValues.Thickness.class,
      description = "Thickness of the piece when it is hardened; 3/16 in (5 mm) unless given.")
  private Length section;

  @Override
  public Integer call() {
    Steels steels = root.steels();
    Optional<Stock> stock =
        Stream.of(first, second)
            .flatMap(n -> stock(steels, n).stream())
            .sorted(Comparator.reverseOrder())
            .findFirst();
    PairLimits limits = PairLimits.load(root.data());
    PairAdvisor advisor = root.pairAdvisor(limits);
    if (stock.isPresent()) {
      return print(advisor.withStock(first.strip(), second.strip(), stock.get()), Trace.NONE);
    }
    Steel a = steels.named(first, spec);
    Steel b = steels.named(second, spec, a);
    PairAdvice advice = advisor.advise(a, b, asked());
    return print(
        advice, root.trace(t -> t.ofPair(Stream.of(a, b).distinct().toList(), advice, limits)));
  }

  /** A word such as scrap, where no steel has that name. */
  private Optional<Stock> stock(Steels steels, String name) {
    return Stock.named(name).filter(s -> steels.table().find(name).isEmpty());
  }

  private int print(PairAdvice advice, Trace trace) {
    root.print(
        () -> JsonReport.pair(advice, trace),
        () -> new PairText(advice, root.units()).told(),
        trace);
    return Commands.ANSWERED;
  }

  private PairAdvisor.Asked asked() {
    if (layers != null && share != null) {
      double a = layers.first().metres();
      double b = layers.second().metres();
      if (a != b && Math.abs(a / (a + b) - share) > SHARE_TOLERANCE) {
        throw new CommandLine.ParameterException(
            spec.commandLine(), "--share and the two layers of --layer disagree; give one of them");
      }
    }
    return new PairAdvisor.Asked(
        layers == null ? OptionalDouble.empty() : OptionalDouble.of(layers.first().metres()),
        layers == null ? OptionalDouble.empty() : OptionalDouble.of(layers.second().metres()),
        share == null ? OptionalDouble.empty() : OptionalDouble.of(share),
        section == null ? OptionalDouble.empty() : OptionalDouble.of(section.metres()));
  }
}
