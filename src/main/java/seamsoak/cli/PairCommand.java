package seamsoak.cli;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import seamsoak.pairing.PairAdvice;
import seamsoak.pairing.PairAdvisor;
import seamsoak.pairing.PairLimits;
import seamsoak.pairing.Stock;
import seamsoak.report.JsonReport;
import seamsoak.report.PairText;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;
import seamsoak.trace.Trace;
import seamsoak.unit.Length;

/** Whether two steels belong together. */
@Command(
    description = "Whether two steels belong in one billet: fits, watch or clash, and why.",
    customSynopsis = "pair FIRST SECOND [--share A:B] [--layer A[,B]] [--section S] [OPTIONS]",
    footer = {
      "pair 1084 75Ni8",
      "pair O1 1084 --layer 0.060in --section 3/16in",
      "pair \"C0.79 Mn0.48 Si0.25\" 75Ni8 --share 60:40",
      "pair \"1084: C0.88 Mn0.70\" \"75Ni8: Ni1.8\" --json"
    })
final class PairCommand extends Subcommand {
  private static final double SHARE_TOLERANCE = 0.005;

  @Mixin private TwoSteels names;

  @Option(
      names = "--share",
      paramLabel = "A:B",
      description = "Parts of the first and the second steel in the stack, such as 60:40.")
  private OptionValues.Share share;

  @Option(
      names = "--layer",
      paramLabel = "A[,B]",
      description = "Thickness of each layer, or of the first and the second.")
  private OptionValues.Layers layers;

  @Option(
      names = "--section",
      paramLabel = "S",
      description = "Thickness of the piece when it is hardened; 3/16 in (5 mm) unless given.")
  private Length section;

  @Override
  public Integer call() {
    SteelTable steels = root.steels();
    Optional<Stock> stock =
        Stream.of(names.first, names.second)
            .flatMap(n -> stock(steels, n).stream())
            .sorted(Comparator.reverseOrder())
            .findFirst();
    PairLimits limits = PairLimits.load(root.data());
    PairAdvisor advisor = root.pairAdvisor(limits);
    if (stock.isPresent()) {
      return print(
          advisor.withStock(names.first.strip(), names.second.strip(), stock.get()), Trace.NONE);
    }
    Steel a = steel(names.first);
    Steel b = steel(names.second, a);
    PairAdvice advice = advisor.advise(a, b, asked());
    return print(
        advice, root.trace(t -> t.ofPair(Stream.of(a, b).distinct().toList(), advice, limits)));
  }

  /** A word such as scrap, where no steel has that name. */
  private Optional<Stock> stock(SteelTable steels, String name) {
    return Stock.named(name).filter(s -> steels.find(name).isEmpty());
  }

  private int print(PairAdvice advice, Trace trace) {
    return root.print(
        () -> JsonReport.pair(advice, trace),
        () -> new PairText(advice, root.units()).told(),
        trace);
  }

  private PairAdvisor.Asked asked() {
    if (layers != null && share != null) {
      double a = layers.first().metres();
      double b = layers.second().metres();
      if (a != b && Math.abs(a / (a + b) - share.ofFirst()) > SHARE_TOLERANCE) {
        throw wrong("--share and the two layers of --layer disagree; give one of them");
      }
    }
    return new PairAdvisor.Asked(
        layers == null ? OptionalDouble.empty() : OptionalDouble.of(layers.first().metres()),
        layers == null ? OptionalDouble.empty() : OptionalDouble.of(layers.second().metres()),
        share == null ? OptionalDouble.empty() : OptionalDouble.of(share.ofFirst()),
        section == null ? OptionalDouble.empty() : OptionalDouble.of(section.metres()));
  }
}
