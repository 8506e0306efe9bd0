package seamsoak.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import picocli.CommandLine.Option;
import seamsoak.billet.Step;
import seamsoak.billet.file.BilletReader;
import seamsoak.billet.file.Names;
import seamsoak.billet.file.WorkBook;
import seamsoak.data.UserFile;
import seamsoak.heatlog.CurveEntry;
import seamsoak.heatlog.RealHeat;

/** Where in a billet file a real heat is written. */
final class IntoBillet {
  @Option(
      names = "--into",
      paramLabel = "BILLET",
      description = "Billet file to write the heat into, as the one that was done.")
  private Path into;

  @Option(names = "--step", paramLabel = "N", description = "Which step of that file it was.")
  private Integer step;

  @Option(
      names = "--heat",
      paramLabel = "M",
      description = "Which heat of the step, from 1; needed where it has several.")
  private Integer heat;

  boolean asked() {
    return into != null;
  }

  /** What is wrong with the options by themselves. */
  void check(Function<String, RuntimeException> wrong) {
    if (into == null && (step != null || heat != null)) {
      throw wrong.apply("--step and --heat go with --into BILLET");
    }
    if (into != null && step == null) {
      throw wrong.apply("--into needs --step N");
    }
  }

  /** Writes it; the file's name. */
  String write(
      RealHeat real, Names names, boolean replace, Function<String, RuntimeException> wrong) {
    UserFile read = UserFile.read(into.toString(), into);
    List<Step> steps = BilletReader.read(into, read.text(), names).steps();
    if (step < 1 || step > steps.size()) {
      throw wrong.apply("--step: the file has " + steps.size() + " steps, from 1 on");
    }
    Step meant = steps.get(step - 1);
    if (meant.times() == 0) {
      throw wrong.apply("--step: " + meant.title() + " has no heats");
    }
    if (heat == null && meant.times() > 1) {
      throw wrong.apply("--heat M: " + meant.title() + " has " + meant.times() + " heats");
    }
    int number = heat == null ? 1 : heat;
    if (number < 1 || number > meant.times()) {
      throw wrong.apply("--heat: " + meant.title() + " has " + meant.times() + " heats, from 1 on");
    }
    WorkBook book = WorkBook.of(into.toString(), read.text());
    String title = meant.title() + ", heat " + number;
    if (book.hasHeat(meant, number) && !replace) {
      throw wrong.apply(title + " is recorded already; say --replace to write over it");
    }
    WorkBook written = book.logged(meant, number, CurveEntry.name(real), CurveEntry.of(real));
    if (written.text().equals(read.text())) {
      throw wrong.apply(title + " is recorded just so already; nothing was written");
    }
    BilletReader.read(into, written.text(), names);
    read.write(written.text(), title);
    return into.toString();
  }
}
