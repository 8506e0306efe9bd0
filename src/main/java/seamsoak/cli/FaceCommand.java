package seamsoak.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import seamsoak.billet.Billet;
import seamsoak.billet.Seen.Etched;
import seamsoak.data.Fault;
import seamsoak.data.FileSet;
import seamsoak.data.Place;
import seamsoak.plan.Advice;
import seamsoak.plan.FaceAdvice;
import seamsoak.report.FaceTold;
import seamsoak.state.SeamProfile.Moment;
import seamsoak.trace.Trace;
import seamsoak.words.face.FaceWords;

/** The face as the etch shows it. */
@Command(
    description = {
      "The billet's face as an etch shows it, drawn to scale: pattern, white lines, knots where seams",
      "cross. Of a bar that is not cut into tiles, its end."
    },
    customSynopsis =
        "face BILLET --out FILE [--after STEP|soak|harden] [--etch as-cooled|annealed|hardened]"
            + " [--tip LENGTH] [--replace] [OPTIONS]",
    footer = {
      "face alloy-data/billets/mosaic.json --out face.png",
      "face alloy-data/billets/mosaic.json --out blade.png --after harden"
    })
final class FaceCommand extends Subcommand {
  /** No other files go when the picture is renewed. */
  private static final Pattern ALONE = Pattern.compile("");

  @Mixin private BilletFile billet;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      required = true,
      description = "File to write the picture to, as PNG.")
  private Path out;

  @Option(
      names = "--after",
      paramLabel = "STEP|soak|harden",
      completionCandidates = OptionValues.FaceTimes.class,
      description = {
        "Number of a step of the file; the soak to come; the end of the schedule.",
        "The file's last step unless given."
      })
  private OptionValues.FaceTime after;

  @Option(
      names = "--etch",
      paramLabel = "as-cooled|annealed|hardened",
      completionCandidates = OptionValues.EtchNames.class,
      description = "How it is etched; as it has cooled unless given, hardened at the end.")
  private Etched etched;

  @Option(
      names = "--tip",
      paramLabel = "LENGTH",
      description = {
        "Where the blade's tip lies, from the left end of the bar; the blade lies in the middle of it",
        "unless given. Its size stands in the billet's file."
      })
  private OptionValues.AlongBar tip;

  @Mixin private Writing writing;

  @Override
  public Integer call() {
    Billet read = billet.read(root);
    int steps = read.steps().size();
    if (after != null && after.step() > steps) {
      throw wrong("--after: the file has " + (steps == 1 ? "1 step" : steps + " steps"));
    }
    file(new byte[0]); // what stands in the way is told before all is worked out
    if (after == null || after.step() > 0) {
      int step = after == null ? steps : after.step();
      return drawn(billet.face(root, step, Optional.ofNullable(etched)), Optional.empty());
    }
    Advice advice = billet.advice(root);
    Optional<FaceAdvice> face = later(advice, after.moment());
    if (face.isEmpty()) {
      // what stands in its way is said as if it had been asked for as the billet is
      billet.face(root, steps, Optional.empty());
      root.err().println(FaceWords.noSoak(advice.soak().recommended().isEmpty()));
      return Program.DOES_NOT_GO_AHEAD;
    }
    drawn(
        Optional.ofNullable(etched).map(face.get()::etched).orElse(face.get()),
        Optional.of(advice));
    return advice.hardStops().isEmpty() ? Program.ANSWERED : Program.DOES_NOT_GO_AHEAD;
  }

  private static Optional<FaceAdvice> later(Advice advice, Moment moment) {
    return advice.faces().stream().filter(f -> f.moment() == moment).findFirst();
  }

  private int drawn(FaceAdvice asked, Optional<Advice> advice) {
    FaceAdvice face = tip == null ? asked : asked.at(tip.fromEnd());
    if (tip != null && !face.hasPlaceForTip()) {
      throw wrong("--tip is of a blade whose size the file states, in a bar of tiles");
    }
    if (tip != null && !face.holdsBlade()) {
      throw wrong("--tip: from there the bar is shorter than the blade; check tells its length");
    }
    FaceTold told = new FaceTold(face, billet.units(root));
    file(told.png()).write(Program.version());
    Trace trace = root.trace(t -> t.ofFace(billet.read(root), advice));
    String written = "\nWritten: " + out + "\n";
    return root.print(
        () -> told.json(out.toString(), trace), told::answer, trace, written, written);
  }

  private FileSet file(byte[] png) {
    Path folder = out.resolveSibling("");
    if (out.getFileName() == null || !Files.isDirectory(folder)) {
      throw new Fault(
          Place.of(out.toString()), "its folder does not exist", "choose another place for it");
    }
    FileSet file = new FileSet(folder, ALONE);
    file.put(out.getFileName().toString(), png);
    return writing.checked(file);
  }
}
