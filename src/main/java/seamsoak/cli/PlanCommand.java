package seamsoak.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import seamsoak.billet.Billet;
import seamsoak.chart.Charts;
import seamsoak.chart.figure.Drawn;
import seamsoak.chart.figure.Figure;
import seamsoak.chart.figure.Figures;
import seamsoak.data.FileSet;
import seamsoak.pairing.PairAdvice;
import seamsoak.pairing.PairLimits;
import seamsoak.plan.Advice;
import seamsoak.plan.OutlayAdvisor;
import seamsoak.report.Answer;
import seamsoak.report.BilletAnswer;
import seamsoak.report.HtmlReport;
import seamsoak.report.JsonReport;
import seamsoak.report.ProgramText;
import seamsoak.report.SourcesText;
import seamsoak.trace.Trace;

/** Everything about a billet, with charts. */
@Command(
    description = "All of it: lines, soak, schedule, cautions, with charts written to a folder.",
    customSynopsis = "plan BILLET [--out DIR] [--png] [--replace] [OPTIONS]",
    footer = {
      "plan alloy-data/billets/mosaic.json",
      "plan alloy-data/billets/mosaic.json --out charts --png"
    })
final class PlanCommand extends Subcommand {
  private static final Pattern FILES =
      Pattern.compile(
          "(" + Figures.IDS + ")\\.(svg|png)|report\\.html|kiln\\.csv|plan\\.txt|advice\\.json");

  private static final String PROGRAMS = "kiln.csv";

  /** Beside the charts; programs only where there are any. */
  private static final List<String> OWN =
      List.of("report.html", PROGRAMS, "plan.txt", "advice.json");

  /** Of a file whose place among the others is known before it is. */
  private static final byte[] TO_COME = {};

  @Mixin private BilletFile billet;
  @Mixin private ChartFiles charts;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder to write to; charts unless given. Made when it is missing.")
  private Path out = Path.of("charts");

  @Override
  public Integer call() {
    FileSet files = new FileSet(out, FILES);
    Advice advice = billet.advice(root);
    Figures figures = new Figures(advice, billet.units(root));
    // the face takes as long as all other charts, the numbers in words as long as one
    CompletableFuture<Optional<Figure>> face = CompletableFuture.supplyAsync(figures::face);
    Billet read = billet.read(root);
    Trace rests = root.tracer().ofSchedule(read, advice);
    Trace trace = root.sources() ? rests : Trace.NONE;
    List<PairAdvice> pairs = pairs(read, advice);
    Answer answer = new BilletAnswer(advice, billet.units(root)).plan();
    boolean programs = advice.hardStops().isEmpty() && !advice.schedule().program().isEmpty();
    List<Figure> others = figures.allButFace(read);
    Map<String, byte[]> byId = new HashMap<>();
    others.forEach(figure -> byId.put(figure.id(), Charts.svg(figure)));
    List<Figure> all = Figures.with(others, face.join());
    Stream.concat(
            charts.names(all).stream(), OWN.stream().filter(n -> programs || !n.equals(PROGRAMS)))
        .forEach(name -> files.put(name, TO_COME));
    List<String> names = files.paths().stream().map(Path::toString).toList();
    CompletableFuture<String> told =
        CompletableFuture.supplyAsync(() -> JsonReport.plan(advice, names, trace));
    List<Drawn> drawn = new ArrayList<>();
    for (Figure figure : all) {
      byte[] svg = byId.computeIfAbsent(figure.id(), id -> Charts.svg(figure));
      charts.put(files, figure, svg);
      drawn.add(new Drawn(figure, svg));
    }
    files.put(
        "report.html",
        new HtmlReport(
                advice,
                billet.units(root),
                drawn,
                pairs,
                advice.hardStops().isEmpty()
                    ? Optional.of(new OutlayAdvisor(root.correlations()).of(read, advice))
                    : Optional.empty(),
                rests,
                root.colophon())
            .bytes());
    if (programs) {
      files.put(PROGRAMS, utf8(new ProgramText(advice, billet.units(root)).csv()));
    }
    files.put("plan.txt", utf8(answer.full() + new SourcesText(trace).page()));
    String json = told.join();
    files.put("advice.json", utf8(json));
    charts.write(files);
    String next = "\nNext: open " + files.path("report.html") + "\n";
    root.print(
        () -> json,
        () -> answer,
        trace,
        "\nWritten: " + String.join(",\n  ", names) + "\n" + next,
        "\nWritten to "
            + out
            + ": report.html and "
            + (names.size() - 1)
            + " more files.\n"
            + next);
    return BilletFile.code(advice);
  }

  /** The pairings of the stack, in the section that it ends with. */
  private List<PairAdvice> pairs(Billet read, Advice advice) {
    return root.pairAdvisor(PairLimits.load(root.data())).ofStack(read.stack(), advice.history());
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
