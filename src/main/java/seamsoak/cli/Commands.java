package seamsoak.cli;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.data.Mistake;

/** Puts the commands together and turns what goes wrong in them into a sentence and a code. */
public final class Commands {
  /** So wide that no example is broken: they are there to be copied. */
  private static final int HELP_WIDTH = 100;

  private static final int MOST_TOLD = 100;

  /** Examples come before the options: they are what people read first. */
  private static final List<String> HELP_SECTIONS =
      List.of(
          UsageMessageSpec.SECTION_KEY_DESCRIPTION,
          UsageMessageSpec.SECTION_KEY_SYNOPSIS_HEADING,
          UsageMessageSpec.SECTION_KEY_SYNOPSIS,
          UsageMessageSpec.SECTION_KEY_FOOTER_HEADING,
          UsageMessageSpec.SECTION_KEY_FOOTER,
          UsageMessageSpec.SECTION_KEY_COMMAND_LIST_HEADING,
          UsageMessageSpec.SECTION_KEY_COMMAND_LIST,
          UsageMessageSpec.SECTION_KEY_PARAMETER_LIST_HEADING,
          UsageMessageSpec.SECTION_KEY_PARAMETER_LIST,
          UsageMessageSpec.SECTION_KEY_OPTION_LIST_HEADING,
          UsageMessageSpec.SECTION_KEY_OPTION_LIST,
          UsageMessageSpec.SECTION_KEY_EXIT_CODE_LIST_HEADING,
          UsageMessageSpec.SECTION_KEY_EXIT_CODE_LIST);

  private static final Map<String, Supplier<Callable<Integer>>> ALL = all();

  /** It tells of all others, so it cannot do without them. */
  private static final String COMPLETION = "completion";

  private static final List<String> NO_TABLES = List.of("-h", "--help", "--version");

  private Commands() {}

  /**
   * Runs one command line; never throws.
   *
   * @param terminal it was typed at
   */
  public static int run(Terminal terminal, PrintWriter out, PrintWriter err, String... args) {
    try {
      return line(terminal, out, err, args).execute(args);
    } catch (Error e) {
      return unexpected(e, err);
    }
  }

  /**
   * The commands, and where they can be told from the first word only the one that is meant: to
   * look through the options of all takes longer than most of the answers.
   */
  private static CommandLine line(
      Terminal terminal, PrintWriter out, PrintWriter err, String... args) {
    boolean one = args.length > 0 && ALL.containsKey(args[0]) && !args[0].equals(COMPLETION);
    CommandLine line = new CommandLine(new Root(packed(one, args), terminal));
    for (String name : one ? Set.of(args[0]) : ALL.keySet()) {
      line.addSubcommand(name, ALL.get(name).get());
    }
    line.setCommandName(Program.CALL);
    line.setOut(out);
    line.setErr(err);
    line.setUsageHelpWidth(HELP_WIDTH);
    line.setUsageHelpAutoWidth(false);
    line.setHelpSectionKeys(HELP_SECTIONS);
    line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    line.setExpandAtFiles(false);
    line.setParameterExceptionHandler(new Complaints());
    line.setExecutionExceptionHandler(failures());
    OptionValues.register(line);
    complete(line.getCommandSpec());
    line.getSubcommands().values().forEach(sub -> complete(sub.getCommandSpec()));
    return line;
  }

  /** The packed tables, begun while picocli looks through the options, where they will be used. */
  private static Optional<Tables> packed(boolean one, String... args) {
    boolean others = Stream.of(args).anyMatch(a -> a.startsWith("--data") || NO_TABLES.contains(a));
    return one && !others ? Optional.of(new Tables(DataFolder.packed()).begin()) : Optional.empty();
  }

  /** In the order that help shows them in. */
  private static Map<String, Supplier<Callable<Integer>>> all() {
    Map<String, Supplier<Callable<Integer>>> all = new LinkedHashMap<>();
    all.put("page", PageCommand::new);
    all.put("check", CheckCommand::new);
    all.put("plan", PlanCommand::new);
    all.put("soak", SoakCommand::new);
    all.put("schedule", ScheduleCommand::new);
    all.put("kiln", KilnCommand::new);
    all.put("face", FaceCommand::new);
    all.put("record", RecordCommand::new);
    all.put("migrate", MigrateCommand::new);
    all.put("decarb", DecarbCommand::new);
    all.put("heat", HeatCommand::new);
    all.put("pair", PairCommand::new);
    all.put("pairs", PairsCommand::new);
    all.put("steels", SteelsCommand::new);
    all.put(COMPLETION, CompletionCommand::new);
    return all;
  }

  /** What is alike in all of them: a command says only what stands after the program's name. */
  private static void complete(CommandSpec spec) {
    UsageMessageSpec usage = spec.usageMessage();
    spec.version(Program.version());
    usage.synopsisHeading("%nUsage: ");
    usage.customSynopsis(called("", usage.customSynopsis()).toArray(String[]::new));
    usage.footerHeading("%nExamples:%n");
    Stream<String> gap = spec.parent() == null ? Stream.empty() : Stream.of("");
    usage.footer(Stream.concat(called("  ", usage.footer()), gap).toArray(String[]::new));
  }

  private static Stream<String> called(String indent, String... lines) {
    return Stream.of(lines).map(line -> indent + Program.CALL + " " + line);
  }

  private static IExecutionExceptionHandler failures() {
    return (e, line, parsed) -> {
      line.getOut().flush();
      if (e instanceof Fault fault) {
        tell(fault.mistakes(), line.getErr());
        return Program.WRONG_DATA;
      }
      return unexpected(e, line.getErr());
    };
  }

  /** One sentence to a line; beyond some dozens nobody reads on. */
  private static void tell(List<Mistake> mistakes, PrintWriter err) {
    for (Mistake mistake : mistakes.subList(0, Math.min(MOST_TOLD, mistakes.size()))) {
      String sentence = mistake.sentence();
      err.println(sentence + (sentence.endsWith("?") ? "" : "."));
    }
    if (mistakes.size() > MOST_TOLD) {
      err.println("And " + (mistakes.size() - MOST_TOLD) + " more; mend these first.");
    }
  }

  private static int unexpected(Throwable e, PrintWriter err) {
    err.println(
        "Something went wrong that should not have, please report it: "
            + e.getClass().getSimpleName()
            + (e.getMessage() == null ? "" : ": " + Fault.shown(e.getMessage()))
            + ".");
    if (System.getProperty("seamsoak.trace") != null) {
      e.printStackTrace(err);
    }
    return Program.BROKEN;
  }
}
