package seamsoak.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Exposure;
import seamsoak.billet.LoggedCurve.Tip;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.file.Names;
import seamsoak.chart.figure.RealHeatFigures;
import seamsoak.data.Fault;
import seamsoak.data.FileSet;
import seamsoak.data.ForeignText;
import seamsoak.heat.Section;
import seamsoak.heatlog.Couple;
import seamsoak.heatlog.DecimalMark;
import seamsoak.heatlog.HeatAdvisor;
import seamsoak.heatlog.HeatQuery;
import seamsoak.heatlog.LogAnswers;
import seamsoak.heatlog.LogQuestion;
import seamsoak.heatlog.LogReader;
import seamsoak.heatlog.LogReading;
import seamsoak.heatlog.LogSettings;
import seamsoak.heatlog.RealHeat;
import seamsoak.heatlog.Scale;
import seamsoak.heatlog.TimeUnit;
import seamsoak.report.HeatText;
import seamsoak.report.JsonReport;
import seamsoak.steel.Steel;
import seamsoak.trace.Trace;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;
import seamsoak.words.HeatWords;

/** What a real heat was worth. */
@Command(
    description = {
      "A real heat from the log of a thermocouple: what it was worth in carbon, scale, skin",
      "and grain. What the log does not say is asked; an option answers it."
    },
    customSynopsis =
        "heat LOG.csv [--tip steel|surface|air] [--planned T] [--into BILLET] [OPTIONS]",
    footer = {
      "heat alloy-data/logs/forge.csv --tip steel --planned 2050F",
      "heat alloy-data/logs/kiln.csv --column Left --tip steel",
      "heat alloy-data/logs/forge.csv --tip steel --out charts"
    })
final class HeatCommand extends Subcommand {
  private static final Pattern FILES = Pattern.compile("heat\\.(svg|png)");
  private static final String USUAL_STEEL = "1084";

  @Parameters(paramLabel = "LOG.csv", description = "Table of any logger or kiln controller.")
  private Path log;

  @Option(
      names = "--column",
      paramLabel = "NAME",
      description = "Which of several temperatures is the piece's, by name or number.")
  private String column;

  @Option(
      names = "--unit",
      paramLabel = "C|F|K",
      description = "Unit of its temperatures, where it does not say.")
  private Scale unit;

  @Option(
      names = "--time-unit",
      paramLabel = "s|min|h",
      description = {"Unit of its times, where it does not say; of 14:03 that of the first part."})
  private TimeUnit timeUnit;

  @Option(
      names = "--interval",
      paramLabel = "TIME",
      description = "From one row to the next, where rows have no time.")
  private TimeSpan interval;

  @Option(
      names = "--decimal",
      paramLabel = "dot|comma",
      description = "Mark before decimals, where 1.121 could be either.")
  private DecimalMark decimal;

  @Option(
      names = "--tip",
      paramLabel = "steel|surface|air",
      completionCandidates = TipNames.class,
      description = "Where the tip was: in the piece, on it, or in the air of the kiln.")
  private Tip tip;

  @Option(
      names = "--couple",
      paramLabel = "COUPLE",
      description = "Type, class and past of the couple, such as \"K standard, used\".")
  private String couple;

  @Option(
      names = "--section",
      paramLabel = "A[,B]",
      description = "Thickness, or thickness and width, of a piece that lags behind the air.")
  private OptionValues.Layers section;

  @Option(
      names = "--loaded",
      paramLabel = "TIME",
      description = "When the piece went in, from the log's first row.")
  private String loaded;

  @Option(
      names = "--removed",
      paramLabel = "TIME",
      description = "When it came out, from the log's first row.")
  private String removed;

  @Option(
      names = "--planned",
      paramLabel = "T",
      description = "Temperature to count minutes at; the heat's own hold unless given.")
  private Temperature planned;

  @Option(
      names = "--steel",
      paramLabel = "STEEL",
      completionCandidates = SteelNames.class,
      description = "A grade, or an analysis in quotes; 1084 unless given.")
  private String steel;

  @Option(
      names = "--edge",
      paramLabel = "open|covered",
      completionCandidates = OptionValues.EdgeNames.class,
      description = "Face bare to the fire (unless given) or under flux, oil or paint.")
  private Exposure edge;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder to write the curve to, as heat.svg. Made when it is missing.")
  private Path out;

  @Mixin private IntoBillet into;

  @Mixin private ChartFiles charts;

  /** The places of a tip, for a shell to complete. */
  static final class TipNames implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Stream.of(Tip.values()).map(t -> t.name().toLowerCase(Locale.ROOT)).iterator();
    }
  }

  @Override
  public Integer call() {
    if (charts.png() && out == null) {
      throw wrong("--png needs --out DIR");
    }
    into.check(this::wrong);
    LogSettings settings = LogSettings.load(root.data());
    HeatQuery query = query(settings);
    ForeignText text = ForeignText.read(log.toString(), log);
    LogReading reading = LogReader.read(text, answers());
    List<LogQuestion> open = new ArrayList<>();
    if (reading instanceof LogReading.Asks asks) {
      open.addAll(asks.questions());
    }
    open.addAll(HeatAdvisor.open(query));
    if (!open.isEmpty()) {
      throw wrong(new HeatWords(root.units()).open(Fault.shown(log.toString()), open));
    }
    LogReading.Read read = (LogReading.Read) reading;
    within(query, read.readings().lastSeconds() / 60);
    Shop shop = new Shop(root.correlations(), Assumptions.USUAL, Resolution.FINE);
    HeatAdvisor advisor = new HeatAdvisor(shop, settings);
    query.plannedC().ifPresent(c -> checkPlan(c, advisor.startC(query)));
    RealHeat heat = advisor.of(read, query);
    List<String> names = new ArrayList<>(out == null ? List.of() : written(heat));
    if (into.asked()) {
      names.add(
          into.write(heat, Names.of(root.steels(), root.data()), charts.replaces(), this::wrong));
    }
    String files = names.isEmpty() ? "" : "\nWritten: " + String.join(",\n  ", names) + "\n";
    Trace trace = root.trace(t -> t.ofHeat(heat, settings));
    return root.print(
        () -> JsonReport.heat(heat, names, trace),
        () -> new HeatText(heat, root.units()).answer(),
        trace,
        files,
        files);
  }

  private LogAnswers answers() {
    return new LogAnswers(
        Optional.ofNullable(column),
        Optional.ofNullable(unit),
        Optional.ofNullable(timeUnit),
        Optional.ofNullable(interval).map(TimeSpan::seconds),
        Optional.ofNullable(decimal));
  }

  private HeatQuery query(LogSettings settings) {
    Steel of = steel(steel == null ? USUAL_STEEL : steel);
    return new HeatQuery(
        of,
        steel != null,
        Optional.ofNullable(planned).map(Temperature::celsius),
        Optional.ofNullable(tip),
        Optional.ofNullable(couple).map(c -> couple(c, settings)),
        Optional.ofNullable(section).map(s -> new Section(s.first().metres(), s.second().metres())),
        moment("--loaded", loaded),
        moment("--removed", removed),
        Optional.ofNullable(edge));
  }

  private Couple couple(String told, LogSettings settings) {
    return settings
        .find(told)
        .orElseThrow(
            () ->
                wrong(
                    "--couple: '"
                        + Fault.shown(told)
                        + "' is no thermocouple; write its type ("
                        + String.join(", ", settings.types())
                        + "), its class where known and its past, such as \"K standard, used\""));
  }

  private Optional<Double> moment(String option, String told) {
    if (told == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(TimeSpan.parse(told).minutes());
    } catch (IllegalArgumentException e) {
      throw wrong(option + ": " + e.getMessage());
    }
  }

  private void within(HeatQuery query, double lastMinute) {
    double from = query.loadedMinute().orElse(0.0);
    double to = query.removedMinute().orElse(lastMinute);
    if (from >= lastMinute) {
      throw wrong("--loaded is after the log's end, " + Math.round(lastMinute) + " min in");
    }
    if (to <= from) {
      throw wrong("--removed is not after the piece was in");
    }
  }

  private void checkPlan(double celsius, double startC) {
    if (celsius <= startC) {
      throw wrong(
          "--planned: below "
              + Temperature.ofCelsius(startC).format(root.units())
              + " carbon hardly moves; give the temperature of a soak or weld");
    }
  }

  private List<String> written(RealHeat heat) {
    FileSet files = new FileSet(out, FILES);
    charts.put(files, new RealHeatFigures(heat, root.units()).figure());
    charts.write(files);
    return files.paths().stream().map(Path::toString).toList();
  }
}
