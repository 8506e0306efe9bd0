package seamsoak.cli;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** A script by which bash and zsh complete commands, options and steels. */
@Command(
    name = "completion",
    description = {
      "A script for bash or zsh: a short name for this program, whose commands, options and",
      "steels the tab key completes from then on."
    },
    synopsisHeading = "%nUsage: ",
    customSynopsis = Commands.PROGRAM + " completion",
    footer = {
      "%nExamples:",
      "  " + Commands.PROGRAM + " completion",
      "%nTo have it in this shell: source <(" + Commands.PROGRAM + " completion)%n"
    })
final class CompletionCommand implements Callable<Integer> {
  private static final String NAME = "seamsoak";

  /**
   * A run is over before the optimizing compiler has earned what it costs: without it answers come
   * in two thirds of the time.
   */
  private static final String QUICK = "-XX:TieredStopAtLevel=1 -XX:+UseSerialGC";

  /**
   * What the build lays ready beside the jar; of another Java or jar, or not there, Java does
   * without, and the last option keeps it from saying so among the answers.
   */
  private static final String READY = " -XX:SharedArchiveFile='%s' -Xlog:disable";

  @ParentCommand private Root root;
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    root.out().println("#!/usr/bin/env bash");
    String jar = jar();
    String ready = String.format(Locale.ROOT, READY, jar.replaceFirst("[.]jar$", ".jsa"));
    root.out().println(NAME + "() { java " + QUICK + ready + " -jar '" + jar + "' \"$@\"; }");
    root.out().println(AutoComplete.bash(NAME, spec.parent().commandLine()));
    root.out().flush();
    return Commands.ANSWERED;
  }

  private static String jar() {
    try {
      return Path.of(
              CompletionCommand.class.getProtectionDomain().getCodeSource().getLocation().toURI())
          .toString()
          .replace("'", "'\\''");
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }
}
