package seamsoak.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import seamsoak.billet.Billet;
import seamsoak.billet.BilletReader;
import seamsoak.data.RunMark;
import seamsoak.data.TextFile;
import seamsoak.plan.Advice;
import seamsoak.plan.PlanAdvisor;
import seamsoak.safety.CautionTable;
import seamsoak.state.Progress;
import seamsoak.unit.UnitSystem;

/** The billet of a command and how thoroughly to look at it. */
final class BilletFile {
  @Parameters(
      paramLabel = "BILLET",
      converter = Written.Name.class,
      description = "File that describes the billet and its steps.")
  private Path file;

  @Option(
      names = "--samples",
      paramLabel = "N",
      converter = Written.Samples.class,
      description =
          "Possible histories behind the bands; 128 unless given. More is slower, 0 is quickest and"
              + " leaves the bands out.")
  private int samples = 128;

  private String text;
  private Billet billet;

  /** Read once, however often it is asked for: the file may be a pipe, or change meanwhile. */
  Billet read(Root root) {
    if (billet == null) {
      text = TextFile.read(file.toString(), file);
      billet = BilletReader.read(file, text, root.steels().table());
    }
    return billet;
  }

  /** The mark of the run that answers for this billet, once it and the tables have been read. */
  RunMark mark(Root root) {
    List<String> inputs = new ArrayList<>(List.of(Commands.version(), text, "" + samples));
    inputs.addAll(root.inputs());
    return RunMark.of(inputs);
  }

  /**
   * All of it.
   *
   * @param told the units of its sentences
   */
  Advice advice(Root root, UnitSystem told) {
    return advice(root, told, PlanAdvisor::advise);
  }

  /** As far as the soak, which is quicker. */
  Advice soak(Root root) {
    return advice(root, root.unitsOfAnswer(), PlanAdvisor::soak);
  }

  private interface Asked {
    Advice of(PlanAdvisor advisor, Billet billet, Progress progress);
  }

  private Advice advice(Root root, UnitSystem told, Asked asked) {
    Billet billet = read(root);
    PlanAdvisor advisor =
        new PlanAdvisor(root.correlations(), CautionTable.load(root.data()), told, samples);
    try (ProgressLine progress = root.progress()) {
      return asked.of(advisor, billet, progress);
    }
  }

  /** The exit code of an answer. */
  static int code(Advice advice) {
    return advice.goesAhead() ? Commands.ANSWERED : Commands.DOES_NOT_GO_AHEAD;
  }

  /** The command to give next for this billet; none for one that is refused. */
  String next(String command, Advice advice) {
    if (!advice.hardStops().isEmpty()) {
      return "";
    }
    return "\nNext: "
        + Commands.PROGRAM
        + " "
        + command
        + " "
        + Commands.quoted(file.toString())
        + "\n";
  }
}
