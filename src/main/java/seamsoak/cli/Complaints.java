package seamsoak.cli;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import seamsoak.data.Fault;
import seamsoak.data.Nearest;
import seamsoak.unit.Printable;

/** Says in one sentence what is wrong with a command line. */
final class Complaints implements IParameterExceptionHandler {
  @Override
  public int handleParseException(ParameterException e, String[] args) {
    CommandLine line = e.getCommandLine();
    String said = sentence(e, line.getCommandSpec());
    String end = said.endsWith("?") || said.endsWith(".") ? "" : ".";
    line.getOut().flush();
    line.getErr().println(said + end + " See " + word(line.getCommandSpec()) + "--help.");
    return Program.WRONG_COMMAND_LINE;
  }

  private static String sentence(ParameterException e, CommandSpec command) {
    if (e instanceof UnmatchedArgumentException unmatched) {
      return unmatched(unmatched.getUnmatched().get(0), command);
    }
    if (e instanceof MissingParameterException missing) {
      return word(command) + "needs " + names(missing.getMissing());
    }
    if (e instanceof OverwrittenOptionException twice) {
      return ((OptionSpec) twice.getOverwritten()).longestName() + " is given twice";
    }
    if (e.getArgSpec() instanceof OptionSpec flag && flag.arity().max() == 0) {
      return flag.longestName() + " takes no value";
    }
    String message = Printable.of(e.getMessage());
    return e.getArgSpec() == null
        ? message
        : message.replaceFirst("^Invalid value for [^:]*: ", name(e.getArgSpec()) + ": ");
  }

  private static String unmatched(String word, CommandSpec command) {
    String shown = Fault.shown(word);
    if (word.startsWith("-")) {
      Map<String, OptionSpec> options = command.optionsMap();
      return "there is no option " + shown + near(word.replaceFirst("=.*", ""), options.keySet());
    }
    Collection<String> commands = command.subcommands().keySet();
    if (!commands.isEmpty()) {
      return "there is no command '"
          + shown
          + "'"
          + (near(word, commands).isEmpty()
              ? "; the commands are " + String.join(", ", commands)
              : near(word, commands));
    }
    return "'"
        + shown
        + "' is one word too many; put quotes around a quantity or an analysis that has spaces";
  }

  private static String near(String word, Collection<String> known) {
    Optional<String> nearest = Nearest.to(word, known);
    return nearest.map(n -> "; did you mean " + n + "?").orElse("");
  }

  private static String names(List<ArgSpec> missing) {
    return missing.stream()
        .sorted(Comparator.comparing(ArgSpec::isOption))
        .map(arg -> arg.isOption() ? name(arg) + " " + arg.paramLabel() : name(arg))
        .collect(Collectors.joining(", "));
  }

  private static String name(ArgSpec arg) {
    return arg instanceof OptionSpec option ? option.longestName() : arg.paramLabel();
  }

  private static String word(CommandSpec command) {
    return command.parent() == null ? "" : command.name() + " ";
  }
}
