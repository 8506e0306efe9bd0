package seamsoak.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import seamsoak.data.Fault;
import seamsoak.steel.Steel;

/** A command, with what all of them share. */
abstract class Subcommand implements Callable<Integer> {
  @ParentCommand Root root;
  @Spec CommandSpec spec;

  /** Another one; what is the same metal as the first goes by the first one's name. */
  Steel steel(String name, Steel first) {
    return steel(name).amongst(List.of(first));
  }

  /** A grade of the table or an analysis written out; a wrong command line for anything else. */
  Steel steel(String name) {
    Optional<Steel> found;
    try {
      found = root.steels().find(name);
    } catch (IllegalArgumentException e) {
      throw wrong(e.getMessage());
    }
    return found.orElseThrow(
        () ->
            wrong(
                "there is no steel '"
                    + Fault.shown(name)
                    + "'; "
                    + root.steels()
                        .nearest(name)
                        .map(near -> "did you mean '" + near + "'?")
                        .orElse("give one of the table or an analysis such as \"C0.84 Mn0.75\"")));
  }

  /** That the words of the command do not go together. */
  ParameterException wrong(String why) {
    return new ParameterException(spec.commandLine(), why);
  }
}
