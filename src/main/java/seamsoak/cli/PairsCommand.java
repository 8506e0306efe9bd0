package seamsoak.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import seamsoak.chart.figure.MatrixFigure;
import seamsoak.data.FileSet;
import seamsoak.pairing.PairCheck;
import seamsoak.pairing.PairLimits;
import seamsoak.pairing.PairList;
import seamsoak.pairing.PairTable;
import seamsoak.report.JsonReport;
import seamsoak.report.PairsText;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;
import seamsoak.trace.Trace;

/** Who fits whom. */
@Command(
    description =
        "Who fits whom: the pairings that smiths use or ask about, a list of grades, or all.",
    customSynopsis = "pairs [GRADES...] [--all] [--csv] [--out DIR] [--png] [OPTIONS]",
    footer = {
      "pairs",
      "pairs 1084 1095 75Ni8 O1 52100",
      "pairs --all --out charts --png",
      "pairs 1084 \"C0.79 Mn0.48\" 75Ni8 --csv"
    })
final class PairsCommand extends Subcommand {
  private static final int FEWEST = 2;
  private static final Pattern FILES = Pattern.compile("pairs\\.(svg|png)");

  @Mixin private ChartFiles charts;

  @Parameters(
      paramLabel = "GRADES",
      completionCandidates = SteelNames.class,
      arity = "0..*",
      description = "Two or more grades or analyses in quotes; none for the usual pairings.")
  private List<String> grades = List.of();

  @Option(names = "--all", description = "Every steel of the table with every other.")
  private boolean all;

  @Option(names = "--csv", description = "Answer with one line of CSV a pair.")
  private boolean csv;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder to write the matrix to, as pairs.svg. Made when it is missing.")
  private Path out;

  @Override
  public Integer call() {
    check();
    SteelTable steels = root.steels();
    List<Steel> named = grades.stream().map(this::steel).toList();
    List<Steel> wanted =
        all ? steels.grades() : named.stream().map(s -> s.amongst(named)).distinct().toList();
    PairTable practice = PairTable.load(root.data(), steels);
    PairCheck check = new PairCheck(root.correlations(), PairLimits.load(root.data()));
    PairList list;
    try (ProgressLine progress = root.progress()) {
      list =
          wanted.isEmpty()
              ? PairList.ofPractice(check, practice, steels, progress)
              : PairList.of(check, practice, wanted, progress);
    }
    List<String> names = out == null ? List.of() : written(list);
    Trace trace = root.trace(t -> t.ofPairs(list.steels(), check.limits()));
    PairsText text = new PairsText(list);
    String files = names.isEmpty() ? "" : "\nWritten: " + String.join(",\n  ", names) + "\n";
    if (csv) {
      root.out().print(text.csv());
      root.out().flush();
    } else {
      root.print(
          () -> JsonReport.pairs(list, names, trace),
          () -> wanted.isEmpty() ? text.pairs() : text.matrix(),
          trace,
          files,
          files);
    }
    return Program.ANSWERED;
  }

  private void check() {
    String wrong =
        all && !grades.isEmpty()
            ? "--all already means every grade; leave it out or leave out the grades"
            : grades.size() == FEWEST - 1
                ? "one grade makes no pair; give two or more"
                : charts.png() && out == null
                    ? "--png needs --out DIR"
                    : csv && root.json() ? "--csv or --json, not both" : "";
    if (!wrong.isEmpty()) {
      throw wrong(wrong);
    }
  }

  private List<String> written(PairList list) {
    FileSet files = new FileSet(out, FILES);
    charts.put(files, MatrixFigure.of(list.matrix()));
    charts.write(files);
    return files.paths().stream().map(Path::toString).toList();
  }
}
