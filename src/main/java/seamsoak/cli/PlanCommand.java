package seamsoak.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
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
import seamsoak.advice.Trace;
import seamsoak.billet.Billet;
import seamsoak.chart.Charts;
import seamsoak.chart.Figure;
import seamsoak.chart.Figures;
import seamsoak.data.Fault;
import seamsoak.data.Place;
import seamsoak.data.WholeFile;
import seamsoak.report.CautionText;
import seamsoak.report.HtmlReport;
import seamsoak.report.JsonReport;
import seamsoak.report.PlanText;
import seamsoak.report.SourcesText;

/** Everything about a billet, with charts. */
@Command(
    name = "plan",
    description = "All of it: lines, soak, schedule, cautions, with charts written to a folder.",
    synopsisHeading = "%nUsage: ",
    customSynopsis = Commands.PROGRAM + " plan BILLET [--out DIR] [--png] [OPTIONS]",
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

  @Override
  public Integer call() {
    if (Files.exists(out) && !Files.isDirectory(out)) {
      throw fault("it is a file, not a folder");
    }
    Advice advice = billet.advice(root);
    Billet read = billet.read(root);
    Trace rests = root.tracer().ofSchedule(read, advice);
    Trace trace = root.sources() ? rests : Trace.NONE;
    String text = new PlanText(advice, root.units()).page() + new SourcesText(trace).page();
    String cautions = new CautionText(advice).all();
    Map<String, byte[]> files = new LinkedHashMap<>();
    List<Figure> figures = new Figures(advice, root.units()).all(read);
    for (Figure figure : figures) {
      files.put(figure.id() + ".svg", Charts.svg(figure));
      if (png) {
        files.put(figure.id() + ".png", Charts.png(figure, DOTS));
      }
    }
    files.put(
        "report.html",
        new HtmlReport(advice, root.units(), figures, rests, root.colophon()).bytes());
    files.put("plan.txt", utf8(text + "\n" + cautions));
    files.put("advice.json", new byte[0]);
    List<String> names = files.keySet().stream().map(f -> out.resolve(f).toString()).toList();
    String json = JsonReport.plan(advice, names, trace);
    files.put("advice.json", utf8(json));
    write(files);
    String written = "\nWritten: " + String.join(",\n  ", names) + "\n";
    return BilletFile.print(root, advice, root.json() ? json : text + written, cautions);
  }

  private void write(Map<String, byte[]> files) {
    try {
      Files.createDirectories(out);
    } catch (IOException e) {
      throw fault("the folder cannot be made");
    }
    files.forEach((name, bytes) -> WholeFile.write(out.resolve(name), bytes));
  }

  private Fault fault(String found) {
    return new Fault(Place.of(out.toString()), found, "--out takes a folder to write to");
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
