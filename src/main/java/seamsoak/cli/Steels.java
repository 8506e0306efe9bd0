package seamsoak.cli;

import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;

/** The steels as the command line names them. */
record Steels(SteelTable table) {
  static Steels load(DataFolder data) {
    return new Steels(SteelTable.load(data));
  }

  /** Another one; what is the same metal as the first goes by the first one's name. */
  Steel named(String name, CommandSpec command, Steel first) {
    Steel second = named(name, command);
    return second.isSame(first) ? first : second;
  }

  /** A grade of the table or an analysis written out; a wrong command line for anything else. */
  Steel named(String name, CommandSpec command) {
    Optional<Steel> found;
    try {
      found = table.find(name);
    } catch (IllegalArgumentException e) {
      throw new CommandLine.ParameterException(command.commandLine(), e.getMessage());
    }
    return found.orElseThrow(
        () ->
            new CommandLine.ParameterException(
                command.commandLine(),
                "there is no steel '"
                    + Fault.shown(name)
                    + "'; "
                    + table
                        .nearest(name)
                        .map(near -> "did you mean '" + near + "'?")
                        .orElse("give one of the table or an analysis such as \"C0.84 Mn0.75\"")));
  }
}
