package seamsoak.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
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

  /** The same that the demo command uses. */
  private static final String OPTIONS = "java.options";

  @ParentCommand private Root root;
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    root.out().println("#!/usr/bin/env bash");
    String jar = jar();
    String archive = jar.replaceFirst("[.]jar$", ".jsa");
    root.out()
        .printf(
            Locale.ROOT,
            "%s() { java %s -XX:SharedArchiveFile='%s' -jar '%s' \"$@\"; }%n",
            NAME,
            options(),
            archive,
            jar);
    root.out().println(AutoComplete.bash(NAME, spec.parent().commandLine()));
    root.out().flush();
    return Commands.ANSWERED;
  }

  private static String options() {
    try (InputStream in = CompletionCommand.class.getResourceAsStream(OPTIONS)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .collect(Collectors.joining(" "));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
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
