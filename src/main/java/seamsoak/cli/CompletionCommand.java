package seamsoak.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.AutoComplete;
import picocli.CommandLine.Command;

/** A script by which bash and zsh complete commands, options and steels. */
@Command(
    description = {
      "A script for bash or zsh: a short name for this program, whose commands, options and",
      "steels the tab key completes from then on. To have it in this shell:",
      "source <(${ROOT-COMMAND-NAME} completion)"
    },
    customSynopsis = "completion",
    footer = "completion")
final class CompletionCommand extends Subcommand {
  /** The same that the demo command uses. */
  private static final String OPTIONS = "java.options";

  @Override
  public Integer call() {
    root.out().println("#!/usr/bin/env bash");
    if (!Program.BY_NAME) {
      shortName();
    }
    root.out().println(AutoComplete.bash(Program.NAME, spec.parent().commandLine()));
    root.out().flush();
    return Program.ANSWERED;
  }

  private void shortName() {
    String jar = jar();
    String archive = jar.replaceFirst("[.]jar$", ".jsa");
    root.out()
        .printf(
            Locale.ROOT,
            "%s() { java %s -XX:SharedArchiveFile='%s' -jar '%s' \"$@\"; }%n",
            Program.NAME,
            options(),
            archive,
            jar);
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
