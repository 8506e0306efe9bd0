package seamsoak.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import seamsoak.data.Fault;
import seamsoak.data.FileSet;
import seamsoak.data.Place;
import seamsoak.plan.Advice;
import seamsoak.report.BilletAnswer;
import seamsoak.report.JsonReport;
import seamsoak.report.ProgramText;
import seamsoak.trace.Trace;

/** The heat treatment after the last weld. */
@Command(
    description = "The whole treatment after the last weld, from the cool-down to the tempers.",
    customSynopsis = "schedule BILLET [--program FILE] [--replace] [OPTIONS]",
    footer = {
      "schedule alloy-data/billets/mosaic.json",
      "schedule alloy-data/billets/mosaic.json --program kiln.csv"
    })
final class ScheduleCommand extends Subcommand {
  /** No other files go when the program is renewed. */
  private static final Pattern ALONE = Pattern.compile("");

  @Mixin private BilletFile billet;

  @Option(
      names = "--program",
      paramLabel = "FILE",
      description = "File to write the kiln's program to, as comma-separated columns.")
  private Path program;

  @Mixin private Writing writing;

  @Override
  public Integer call() {
    if (program != null) {
      file(""); // what stands in the way is told before all is worked out
    }
    Advice advice = billet.advice(root);
    if (program != null && advice.hardStops().isEmpty()) {
      file(new ProgramText(advice, billet.units(root)).csv()).write(Program.version());
    } else if (program != null) {
      root.err().println(program + " is not written: this billet is refused.");
    }
    Trace trace = root.trace(t -> t.ofSchedule(billet.read(root), advice));
    String next = billet.next("plan", advice);
    root.print(
        () -> JsonReport.schedule(advice, trace),
        () -> new BilletAnswer(advice, billet.units(root)).schedule(),
        trace,
        next,
        next);
    return BilletFile.code(advice);
  }

  /** What somebody else has written, the billet's own file above all, is not written over. */
  private FileSet file(String csv) {
    Path folder = program.resolveSibling("");
    if (program.getFileName() == null || !Files.isDirectory(folder)) {
      throw new Fault(
          Place.of(program.toString()), "its folder does not exist", "choose another place for it");
    }
    FileSet file = new FileSet(folder, ALONE);
    file.put(program.getFileName().toString(), csv.getBytes(StandardCharsets.UTF_8));
    return writing.checked(file);
  }
}
