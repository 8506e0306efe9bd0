package seamsoak.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import seamsoak.billet.Billet;
import seamsoak.billet.Seen.Etched;
import seamsoak.billet.file.BilletReader;
import seamsoak.billet.file.Names;
import seamsoak.plan.Advice;
import seamsoak.plan.FaceAdvice;
import seamsoak.plan.PlanAdvisor;
import seamsoak.safety.CautionTable;
import seamsoak.state.Progress;
import seamsoak.unit.UnitSystem;

/** The billet of a command and how thoroughly to look at it. */
final class BilletFile {
  static final String DESCRIPTION = "File that describes the billet and its steps.";

  @Parameters(paramLabel = "BILLET", description = DESCRIPTION)
  private Path file;

  @Option(
      names = "--samples",
      paramLabel = "N",
      description =
          "Cases tried: the same billet, a little different each time; "
              + PlanAdvisor.USUAL_SAMPLES
              + " unless given. More is"
              + " slower, 0 is quickest and leaves out how sure the answer is.")
  private int samples = PlanAdvisor.USUAL_SAMPLES;

  private Billet billet;

  /** Read once, however often it is asked for: the file may be a pipe, or change meanwhile. */
  Billet read(Root root) {
    if (billet == null) {
      billet = read(file, root);
    }
    return billet;
  }

  /** The word that stands for it, which may be a steel where a command takes two. */
  String word() {
    return file.toString();
  }

  static Billet read(Path file, Root root) {
    return BilletReader.read(file, Names.of(root.steels(), root.data()));
  }

  /** What its answers are told in. */
  UnitSystem units(Root root) {
    return root.unitsFor(read(root).units());
  }

  /** All of it. */
  Advice advice(Root root) {
    return advice(root, PlanAdvisor::advise);
  }

  /** As far as the soak, which is quicker. */
  Advice soak(Root root) {
    return advice(root, PlanAdvisor::soak);
  }

  /** Its face after a step. */
  FaceAdvice face(Root root, int step, Optional<Etched> etched) {
    return new PlanAdvisor(root.correlations(), CautionTable.load(root.data()), samples)
        .face(read(root), step, etched);
  }

  private interface Question {
    Advice of(PlanAdvisor advisor, Billet billet, Progress progress);
  }

  private Advice advice(Root root, Question question) {
    Billet billet = read(root);
    PlanAdvisor advisor =
        new PlanAdvisor(root.correlations(), CautionTable.load(root.data()), samples);
    try (ProgressLine progress = root.progress()) {
      return question.of(advisor, billet, progress);
    }
  }

  /** The exit code of an answer. */
  static int code(Advice advice) {
    return advice.goesAhead() ? Program.ANSWERED : Program.DOES_NOT_GO_AHEAD;
  }

  /** The command to give next for this billet; none for one that is refused. */
  String next(String command, Advice advice) {
    if (!advice.hardStops().isEmpty()) {
      return "";
    }
    String words = String.join(" ", Program.CALL, command, Program.quoted(file.toString()));
    return "\nNext: " + words + "\n";
  }
}
