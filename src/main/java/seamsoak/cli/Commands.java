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
import seamsoak.unit.Printable;

/** Puts the commands together and turns what goes wrong in them into a sentence and a code. */
final class Commands {
  /** How the program is called, for examples and for what to do next. */
  static final String PROGRAM = "java -jar target/seamsoak.jar";

  static final int ANSWERED = 0;
  static final int BROKEN = 1;
  static final int WRONG_COMMAND_LINE = 2;
  static final int WRONG_DATA = 3;
  static final int DOES_NOT_GO_AHEAD = 4;

  /** So wide that no example is broken: they are there to be copied. */
  private static final int HELP_WIDTH = 100;

  /** Examples come before the options: they are what people read first. */
  private static final List<String> HELP_SECTIONS =
      List.of(
          UsageMessageSpec.SECTION_KEY_DESCRIPTION,
          UsageMessageSpec.SECTION_KEY_SYNOPSIS_HEADING,
          UsageMessageSpec.SECTION_KEY_SYNOPSIS,
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
   * @param terminal whether somebody reads along
   */
  static int run(boolean terminal, PrintWriter out, PrintWriter err, String... args) {
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
      boolean terminal, PrintWriter out, PrintWriter err, String... args) {
    boolean one = args.length > 0 && ALL.containsKey(args[0]) && !args[0].equals(COMPLETION);
    CommandLine line = new CommandLine(new Root(packed(one, args), terminal));
    for (String name : one ? Set.of(args[0]) : ALL.keySet()) {
      line.addSubcommand(name, ALL.get(name).get());
    }
    line.setOut(out);
    line.setErr(err);
    line.setUsageHelpWidth(HELP_WIDTH);
    line.setUsageHelpAutoWidth(false);
    line.setHelpSectionKeys(HELP_SECTIONS);
    line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    line.setExpandAtFiles(false);
    line.setParameterExceptionHandler(new Complaints());
    line.setExecutionExceptionHandler(failures());
    version(line.getCommandSpec());
    line.getSubcommands().values().forEach(sub -> version(sub.getCommandSpec()));
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
    all.put("plan", PlanCommand::new);
    all.put("soak", SoakCommand::new);
    all.put("schedule", ScheduleCommand::new);
    all.put("migrate", MigrateCommand::new);
    all.put("decarb", DecarbCommand::new);
    all.put("pair", PairCommand::new);
    all.put("pairs", PairsCommand::new);
    all.put("steels", SteelsCommand::new);
    all.put(COMPLETION, CompletionCommand::new);
    return all;
  }

  private static void version(CommandSpec spec) {
    spec.version(version());
  }

  /** A word as a shell takes it. */
  static String quoted(String word) {
    String name = Printable.of(word);
    boolean plain = name.matches("[-\\w./\\\\:,=]+");
    // in single quotes a shell takes everything as it stands; cmd.exe knows only double ones
    boolean charged = name.matches(".*[\"$`!%^&|<>].*");
    return plain ? name : charged ? "'" + name.replace("'", "'\\''") + "'" : '"' + name + '"';
  }

  static String version() {
    String packed = Commands.class.getPackage().getImplementationVersion();
    return "seamsoak " + (packed == null ? "(unpacked)" : packed);
  }

  private static IExecutionExceptionHandler failures() {
    return (e, line, parsed) -> {
      line.getOut().flush();
      if (e instanceof Fault) {
        line.getErr().println(e.getMessage() + (e.getMessage().endsWith("?") ? "" : "."));
        return WRONG_DATA;
      }
      return unexpected(e, line.getErr());
    };
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
    return BROKEN;
  }
}
