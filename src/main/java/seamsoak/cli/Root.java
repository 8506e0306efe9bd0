package seamsoak.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import seamsoak.data.DataFolder;
import seamsoak.pairing.PairAdvisor;
import seamsoak.pairing.PairLimits;
import seamsoak.pairing.PairTable;
import seamsoak.property.Correlations;
import seamsoak.report.Answer;
import seamsoak.report.Colophon;
import seamsoak.report.SourcesText;
import seamsoak.source.SourceTable;
import seamsoak.steel.SteelTable;
import seamsoak.trace.Trace;
import seamsoak.trace.Tracer;
import seamsoak.unit.UnitSystem;

/** What all commands share: the options that go with each, and the two streams. */
@Command(
    description = {
      "Heat-treatment and thermal-cycle advisor for pattern-welded billets: carbon, white lines, soak.",
      "An estimate for a skilled person, not an order."
    },
    customSynopsis = "COMMAND [OPTIONS]",
    footer = {
      "plan alloy-data/billets/mosaic.json",
      "migrate 1095 1018 --layer 1mm --at 1100C --for 20min",
      "steels 15N20"
    },
    commandListHeading = "%nCommands, each with its own --help:%n",
    optionListHeading = "%nOptions of every command:%n",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:answered; nothing to clear is an answer",
      "1:something went wrong that should not have",
      "2:wrong command line",
      "3:data or billet cannot be read, a step cannot be done, or a file cannot be written",
      "4:answered, but no soak clears the lines or a danger stands in the way"
    })
final class Root implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(
      names = "--units",
      paramLabel = "us|metric|both",
      scope = ScopeType.INHERIT,
      completionCandidates = OptionValues.UnitNames.class,
      description = {
        "Units to show; those of the billet unless given, both where it names none.",
        "JSON is always metric."
      })
  private UnitSystem units;

  @Option(names = "--json", scope = ScopeType.INHERIT, description = "Answer with one JSON object.")
  private boolean json;

  @Option(
      names = "--sources",
      scope = ScopeType.INHERIT,
      description = {
        "Tell below the answer what each number rests on: source, standing,",
        "range, error, and which ranges were exceeded."
      })
  private boolean sources;

  @Option(
      names = "--data",
      paramLabel = "DIR",
      scope = ScopeType.INHERIT,
      description = "Folder whose tables stand in for the packed ones of the same name.")
  private Path data;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      scope = ScopeType.INHERIT,
      description = "Show this help.")
  private boolean help;

  @Option(
      names = "--version",
      versionHelp = true,
      scope = ScopeType.INHERIT,
      description = "Show the version.")
  private boolean version;

  @Option(
      names = "--full",
      scope = ScopeType.INHERIT,
      description = {
        "All of an answer; a terminal is shown the first screen of it unless",
        "that is asked for, a file or another program always gets it all."
      })
  private boolean full;

  private final Optional<Tables> packed;
  private final Terminal terminal;
  private Tables tables;

  /** The packed tables may be on their way before the options are looked through. */
  Root(Optional<Tables> packed, Terminal terminal) {
    this.packed = packed;
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws InterruptedException {
    if (terminal.watched()) {
      return ((PageCommand) spec.subcommands().get("page").getCommandSpec().userObject()).call();
    }
    out().println("Seamsoak: carbon and soaks for pattern-welded billets. See --help.");
    out().println("Example: " + Program.CALL + " plan alloy-data/billets/mosaic.json");
    return Program.ANSWERED;
  }

  UnitSystem units() {
    return unitsFor(Optional.empty());
  }

  /** Units that were asked for. */
  Optional<UnitSystem> unitsAsked() {
    return Optional.ofNullable(units);
  }

  /** Units for something that may be written in some of its own. */
  UnitSystem unitsFor(Optional<UnitSystem> own) {
    return units == null ? own.orElse(UnitSystem.BOTH) : units;
  }

  boolean json() {
    return json;
  }

  DataFolder data() {
    return tables().folder();
  }

  private Tables tables() {
    if (tables == null) {
      tables =
          data == null
              ? packed.orElseGet(() -> new Tables(DataFolder.packed()).begin())
              : new Tables(DataFolder.over(data)).begin();
    }
    return tables;
  }

  Correlations correlations() {
    return tables().correlations();
  }

  SteelTable steels() {
    return tables().steels();
  }

  PairAdvisor pairAdvisor(PairLimits limits) {
    SteelTable table = steels();
    return new PairAdvisor(correlations(), limits, PairTable.load(data(), table), table);
  }

  /** What an answer rests on, if that is asked for. */
  Trace trace(Function<Tracer, Trace> of) {
    return sources ? of.apply(tracer()) : Trace.NONE;
  }

  Tracer tracer() {
    return new Tracer(correlations(), steels(), SourceTable.load(data()));
  }

  boolean sources() {
    return sources;
  }

  /** Where the answer under way comes from. */
  Colophon colophon() {
    return new Colophon(
        Program.version(),
        data == null
            ? "The tables packed with it."
            : "Tables in " + data + " stand in for the packed ones of the same name.",
        Program.CALL
            + spec.commandLine().getParseResult().originalArgs().stream()
                .map(word -> " " + Program.quoted(word))
                .collect(Collectors.joining()));
  }

  PrintWriter out() {
    return spec.commandLine().getOut();
  }

  PrintWriter err() {
    return spec.commandLine().getErr();
  }

  Terminal terminal() {
    return terminal;
  }

  /** A line about a long computation. */
  ProgressLine progress() {
    return ProgressLine.on(err(), terminal.watched());
  }

  /** Prints an answer. */
  int print(Supplier<String> asJson, Supplier<Answer> inWords, Trace trace) {
    return print(asJson, inWords, trace, "", "");
  }

  /**
   * Prints an answer: as JSON, all of it, or on a terminal what is read at once.
   *
   * @param below what stands below all of it
   * @param briefly what stands below that
   * @return the exit code of whatever has nothing to refuse
   */
  int print(
      Supplier<String> asJson,
      Supplier<Answer> inWords,
      Trace trace,
      String below,
      String briefly) {
    if (json) {
      out().print(asJson.get());
    } else {
      boolean brief = terminal.watched() && !full && !sources;
      String text =
          brief
              ? inWords.get().brief(briefly) + briefly
              : inWords.get().full() + new SourcesText(trace).page() + below;
      out().print(Colors.of(System.getenv(), terminal.watched()).answer(text));
    }
    out().flush();
    return Program.ANSWERED;
  }
}
