package seamsoak.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import seamsoak.advice.PairList;
import seamsoak.advice.Trace;
import seamsoak.chart.Charts;
import seamsoak.chart.Figure;
import seamsoak.chart.PairFigures;
import seamsoak.data.WholeFile;
import seamsoak.pairing.PairCheck;
import seamsoak.pairing.PairLimits;
import seamsoak.pairing.PairTable;
import seamsoak.property.Correlations;
import seamsoak.report.JsonReport;
import seamsoak.report.PairsText;
import seamsoak.report.SourcesText;
import seamsoak.steel.Steel;

/** Who fits whom. */
@Command(
    name = "pairs",
    description =
        "Who fits whom: the pairings that smiths use or ask about, a list of grades, or all.",
    synopsisHeading = "%nUsage: ",
    customSynopsis =
        Commands.PROGRAM + " pairs [GRADES...] [--all] [--csv] [--out DIR] [--png] [OPTIONS]",
    footer = {
      "%nExamples:",
      "  " + Commands.PROGRAM + " pairs",
      "  " + Commands.PROGRAM + " pairs 1084 1095 75Ni8 O1 52100",
      "  " + Commands.PROGRAM + " pairs --all --out charts --png",
      "  " + Commands.PROGRAM + " pairs 1084 \"C0.79 Mn0.48\" 75Ni8 --csv%n"
    })
final class PairsCommand implements Callable<Integer> {
  private static final double DOTS = 2;
  private static final int FEWEST = 2;

  @ParentCommand private Root root;
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "GRADES",
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
      converter = Written.Name.class,
      description = "Folder to write the matrix to, as pairs.svg. Made when it is missing.")
  private Path out;

  @Option(names = "--png", description = "With --out: write it as PNG too.")
  private boolean png;

  @Override
  public Integer call() {
    check();
    Steels steels = root.steels();
    List<Steel> wanted =
        all
            ? steels.table().steels()
            : grades.stream().map(g -> steels.named(g, spec)).distinct().toList();
    PairTable practice = PairTable.load(root.data(), steels.table());
    PairCheck check =
        new PairCheck(
            Correlations.load(root.data()), PairLimits.load(root.data()), root.units());
    PairList list;
    try (ProgressLine progress = ProgressLine.on(root.err())) {
      list =
          wanted.isEmpty()
              ? PairList.ofPractice(check, practice, steels.table(), progress)
              : PairList.of(check, practice, wanted, progress);
    }
    Map<String, byte[]> files = out == null ? Map.of() : files(list);
    files.forEach((name, bytes) -> WholeFile.write(out.resolve(name), bytes));
    List<String> names = files.keySet().stream().map(f -> out.resolve(f).toString()).toList();
    Trace trace =
        root.trace(t -> t.ofPairs(steels.table().steels().stream()
            .filter(s -> list.matrix().steels().contains(s.id())).toList(), wanted));
    root.print(answer(list, names, trace, wanted.isEmpty()), List.of());
    return Commands.ANSWERED;
  }

  private void check() {
    String wrong =
        all && !grades.isEmpty()
            ? "--all already means every grade; leave it out or leave out the grades"
            : grades.size() == FEWEST - 1
                ? "one grade makes no pair; give two or more"
                : png && out == null
                    ? "--png needs --out DIR"
                    : csv && root.json() ? "--csv or --json, not both" : "";
    if (!wrong.isEmpty()) {
      throw new CommandLine.ParameterException(spec.commandLine(), wrong);
    }
  }

  private Map<String, byte[]> files(PairList list) {
    PlanCommand.folder(out);
    Figure figure = PairFigures.matrix(list.matrix());
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(figure.id() + ".svg", Charts.svg(figure));
    if (png) {
      files.put(figure.id() + ".png", Charts.png(figure, DOTS));
    }
    files.put("pairs.csv", new PairsText(list).csv().getBytes(StandardCharsets.UTF_8));
    return files;
  }

  private String answer(PairList list, List<String> files, Trace trace, boolean usual) {
    if (root.json()) {
      return JsonReport.pairs(list, files, trace);
    }
    PairsText text = new PairsText(list);
    if (csv) {
      return text.csv();
    }
    String written = files.isEmpty() ? "" : "\nWritten: " + String.join(",\n  ", files) + "\n";
    return (usual ? text.pairs() : text.matrix()) + new SourcesText(trace).page() + written;
  }
}
