package seamsoak.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
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
    name = "schedule",
    description = "The whole treatment after the last weld, from the cool-down to the tempers.",
    synopsisHeading = "%nUsage: ",
    customSynopsis = Commands.PROGRAM + " schedule BILLET [--program FILE] [--replace] [OPTIONS]",
    footer = {
      "%nExamples:",
      "  " + Commands.PROGRAM + " schedule alloy-data/billets/mosaic.json",
      "  " + Commands.PROGRAM + " schedule alloy-data/billets/mosaic.json --program kiln.csv%n"
    })
final class ScheduleCommand implements Callable<Integer> {
  /** No other files go when the program is renewed. */
  private static final Pattern ALONE = Pattern.compile("");

  @ParentCommand private Root root;
  @Mixin private BilletFile billet;

  @Option(
      names = "--program",
      paramLabel = "FILE",
      converter = OptionValues.Name.class,
      description = "File to write the kiln's program to, as comma-separated columns.")
  private Path program;

  @Option(
      names = "--replace",
      description = "Write over a file of that name that is not by this program or was changed.")
  private boolean replace;

  @Override
  public Integer call() {
    if (program != null) {
      file(""); // what stands in the way is told before all is worked out
    }
    Advice advice = billet.advice(root);
    if (program != null && advice.hardStops().isEmpty()) {
      file(new ProgramText(advice, root.units()).csv()).write(Commands.version());
    } else if (program != null) {
      root.err().println(program + " is not written: this billet is refused.");
    }
    Trace trace = root.trace(t -> t.ofSchedule(billet.read(root), advice));
    String next = billet.next("plan", advice);
    root.print(
        () -> JsonReport.schedule(advice, trace),
        () -> new BilletAnswer(advice, root.units()).schedule(),
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
    if (!replace) {
      file.refuseStrangers();
    }
    return file;
  }
}
