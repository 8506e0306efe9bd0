package seamsoak.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import seamsoak.advice.Advice;
import seamsoak.advice.PairAdvice;
import seamsoak.advice.PairAdvisor;
import seamsoak.advice.Trace;
import seamsoak.billet.Billet;
import seamsoak.chart.Charts;
import seamsoak.chart.Figure;
import seamsoak.chart.Figures;
import seamsoak.data.Fault;
import seamsoak.data.FileSet;
import seamsoak.data.Place;
import seamsoak.data.RunMark;
import seamsoak.pairing.PairLimits;
import seamsoak.pairing.PairTable;
import seamsoak.property.Correlations;
import seamsoak.report.CautionText;
import seamsoak.report.HtmlReport;
import seamsoak.report.JsonReport;
import seamsoak.report.PlanText;
import seamsoak.report.ProgramText;
import seamsoak.report.SourcesText;

/** Everything about a billet, with charts. */
@Command(
    name = "plan",
    description = "All of it: lines, soak, schedule, cautions, with charts written to a folder.",
    synopsisHeading = "%nUsage: ",
    customSynopsis = Commands.PROGRAM + " plan BILLET [--out DIR] [--png] [--replace] [OPTIONS]",
    footer = {
      "%nExamples:",
      "  " + Commands.PROGRAM + " plan alloy-data/billets/mosaic.json",
      "  " + Commands.PROGRAM + " plan alloy-data/billets/mosaic.json --out charts --png%n"
    })
final class PlanCommand implements Callable<Integer> {
  private static final double DOTS = 2;

  @ParentCommand private Root root;
  @Mixin private BilletFile billet;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      converter = Written.Name.class,
      description = "Folder to write to; charts unless given. Made when it is missing.")
  private Path out = Path.of("charts");

  @Option(names = "--png", description = "Write the charts as PNG too.")
  private boolean png;

  @Option(
      names = "--replace",
      description = "Write over files of those names that are not by this program.")
  private boolean replace;

  @Override
  public Integer call() {
    FileSet files = new FileSet(out);
    Advice advice = billet.advice(root);
    Billet read = billet.read(root);
    Trace rests = root.tracer().ofSchedule(read, advice);
    Trace trace = root.sources() ? rests : Trace.NONE;
    RunMark run = billet.mark(root);
    String text = new PlanText(advice, root.units()).page() + new SourcesText(trace).page();
    String cautions = new CautionText(advice).all();
    Map<Figure, byte[]> figures = new LinkedHashMap<>();
    for (Figure figure : new Figures(advice, root.units()).all(read)) {
      figures.put(figure, Charts.svg(figure));
      files.put(figure.id() + ".svg", figures.get(figure));
      if (png) {
        files.put(figure.id() + ".png", Charts.png(figure, DOTS));
      }
    }
    files.put(
        "report.html",
        new HtmlReport(advice, root.units(), figures, pairs(read, advice), rests, root.colophon())
            .bytes());
    if (!advice.schedule().program().isEmpty()) {
      files.put("kiln.csv", utf8(new ProgramText(advice, root.units()).csv(run.value())));
    }
    files.put("plan.txt", utf8(text + "\n" + cautions));
    files.put("advice.json", new byte[0]);
    List<String> names = files.paths().stream().map(Path::toString).toList();
    String json = JsonReport.plan(advice, run.value(), names, trace);
    files.put("advice.json", utf8(json));
    foreign(files);
    files.write(run);
    String written =
        "\nWritten: "
            + String.join(",\n  ", names)
            + "\n\nNext: open "
            + files.path("report.html")
            + "\n";
    return BilletFile.print(root, advice, root.json() ? json : text + written, cautions);
  }

  /** The pairings of the stack, in the section that it ends with. */
  private List<PairAdvice> pairs(Billet read, Advice advice) {
    PairAdvisor advisor =
        new PairAdvisor(
            Correlations.load(root.data()),
            PairLimits.load(root.data()),
            PairTable.load(root.data(), root.steels().table()),
            root.steels().table(),
            root.units());
    double end = advice.history().get(advice.history().size() - 1).thicknessMm();
    return advisor.ofStack(read.stack(), end / 1e3);
  }

  /** What somebody else has put there is not written over unless that is asked for. */
  private void foreign(FileSet files) {
    List<Path> strangers = files.strangers();
    if (!replace && !strangers.isEmpty()) {
      throw new Fault(
          Place.of(strangers.get(0).toString()),
          strangers.size() == 1
              ? "it was not written by this program"
              : "it and "
                  + (strangers.size() - 1)
                  + " more files to be written there are not by this program",
          "choose another folder, or say --replace to write over them");
    }
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
