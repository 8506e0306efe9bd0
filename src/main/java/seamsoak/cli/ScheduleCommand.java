package seamsoak.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import seamsoak.billet.Billet;
import seamsoak.billet.JustWelded;
import seamsoak.data.Fault;
import seamsoak.data.FileSet;
import seamsoak.data.Place;
import seamsoak.plan.Advice;
import seamsoak.plan.PlanAdvisor;
import seamsoak.report.BilletAnswer;
import seamsoak.report.JsonReport;
import seamsoak.report.ProgramText;
import seamsoak.safety.CautionTable;
import seamsoak.steel.Steel;
import seamsoak.trace.Trace;
import seamsoak.unit.Length;

/** The heat treatment after the last weld. */
@Command(
    description = {
      "The whole treatment after the last weld, from the cool-down to the tempers: of a billet, or of",
      "two steels in layers of which nothing else is known, without a soak."
    },
    customSynopsis =
        "schedule (BILLET [--program FILE] [--replace] | FIRST SECOND --layer A[,B] --section A)"
            + " [OPTIONS]",
    footer = {
      "schedule alloy-data/billets/mosaic.json",
      "schedule alloy-data/billets/mosaic.json --program kiln.csv",
      "schedule 1084 75Ni8 --layer 0.020in --section 1/4in"
    })
final class ScheduleCommand extends Subcommand {
  /** No other files go when the program is renewed. */
  private static final Pattern ALONE = Pattern.compile("");

  @Mixin private BilletFile billet;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "SECOND",
      completionCandidates = SteelNames.class,
      description = "The second steel, where the first word is a steel and not a file.")
  private String second;

  @Option(
      names = "--layer",
      paramLabel = "A[,B]",
      description = "Of two steels: thickness of each layer, or of the first and the second.")
  private OptionValues.Layers layers;

  @Option(
      names = "--section",
      paramLabel = "A",
      description = "Of two steels: thickness of the bar that is treated.")
  private Length section;

  @Option(
      names = "--program",
      paramLabel = "FILE",
      description = "File to write the kiln's program to, as comma-separated columns.")
  private Path program;

  @Mixin private Writing writing;

  @Override
  public Integer call() {
    if (second != null) {
      return steels();
    }
    if (layers != null || section != null) {
      throw wrong("--layer and --section go with two steels; a billet's file has its own");
    }
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

  private Integer steels() {
    if (layers == null || section == null) {
      throw wrong("two steels need --layer and --section, or give one billet's file");
    }
    if (program != null) {
      throw wrong("--program is of a billet; two steels alone give no kiln program");
    }
    Steel a = steel(billet.word());
    Steel b = steel(second, a);
    JustWelded taken =
        JustWelded.of(
            List.of(a, b), List.of(layers.first(), layers.second()), section, root.correlations());
    if (!taken.fits()) {
      throw wrong("--section is thinner than one layer of each steel");
    }
    if (taken.count() > JustWelded.MOST_LAYERS) {
      throw wrong(
          "--section holds "
              + taken.count()
              + " such layers, and "
              + JustWelded.MOST_LAYERS
              + " is the most; give thicker layers or a thinner bar");
    }
    Billet bar = taken.billet(root.units());
    PlanAdvisor advisor = new PlanAdvisor(root.correlations(), CautionTable.load(root.data()), 0);
    Advice advice;
    try (ProgressLine progress = root.progress()) {
      advice = advisor.treat(bar, progress);
    }
    Trace trace = root.trace(t -> t.ofSchedule(bar, advice));
    root.print(
        () -> JsonReport.treatment(advice, taken, trace),
        () -> new BilletAnswer(advice, root.units()).treatment(taken),
        trace);
    return advice.hardStops().isEmpty() ? Program.ANSWERED : Program.DOES_NOT_GO_AHEAD;
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
