package seamsoak.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import seamsoak.billet.Billet;
import seamsoak.billet.file.BilletReader;
import seamsoak.billet.file.Names;
import seamsoak.billet.file.Recorded;
import seamsoak.billet.file.ToRecord;
import seamsoak.billet.file.WorkBook;
import seamsoak.data.Fault;
import seamsoak.data.Mistake;
import seamsoak.data.UserFile;
import seamsoak.report.JsonReport;
import seamsoak.report.RecordText;
import seamsoak.trace.Trace;

/** What was done and seen, written into the billet file. */
@Command(
    description = {
      "Writes into a billet file what was done and what was seen; all else in it keeps its bytes,",
      "comments too. As it was before the first time it is kept beside, as BILLET.before; what was",
      "written goes to BILLET.undo, so that --undo can take it back. On a terminal it asks for what",
      "is left out, anywhere else that is as planned."
    },
    customSynopsis = "record BILLET [--step N] [--heat M] [--undo] [OPTIONS]",
    footer = {
      "record my-billet.json --step 1 --heat 2 --at 2270F --for 7min",
      "record my-billet.json --step 3 --set depth=0.020in --on 2026-11-21",
      "record my-billet.json --step 13 --seen \"tile: faint, 1/32 in\"",
      "record my-billet.json --undo"
    })
final class RecordCommand extends Subcommand {
  @Parameters(paramLabel = "BILLET", description = "File that describes the billet and its steps.")
  private Path file;

  @Mixin private RecordOptions options;

  @Option(
      names = "--undo",
      description = "Take back what was recorded last; refused when the file was changed since.")
  private boolean undo;

  @Override
  public Integer call() {
    if (undo && !options.areEmpty()) {
      throw wrong("--undo takes back what was recorded last; give nothing else with it");
    }
    if (options.sayEtch() && options.seen == null) {
      throw wrong("--etched and --with go with --seen");
    }
    UserFile read = UserFile.read(file.toString(), file);
    return undo ? takeBack(read) : write(read);
  }

  private int takeBack(UserFile read) {
    UserFile.Undone undone = read.undo();
    Billet billet = billet(undone.file().text());
    return root.print(
        () -> JsonReport.takenBack(undone.what(), billet.steps()),
        () ->
            new RecordText(billet.steps(), root.unitsFor(billet.units())).takenBack(undone.what()),
        Trace.NONE);
  }

  private int write(UserFile read) {
    Billet before = billet(read.text());
    WorkBook book = WorkBook.of(file.toString(), read.text());
    Optional<Questions> questions =
        Optional.of(root.terminal())
            .filter(Terminal::watched)
            .map(t -> new Questions(t, root.err(), () -> wrong("nothing was written")));
    ToRecord wanted =
        new RecordDialog(
                options,
                before.steps(),
                book,
                questions,
                this::wrong,
                w -> mistake(w.into(book)).map(Mistake::said))
            .wanted();
    if (wanted.isIn(book) && !options.replace) {
      throw wrong(wanted.title() + " is recorded already; say --replace to write over it");
    }
    WorkBook written = wanted.into(book);
    if (written.text().equals(book.text())) {
      throw wrong(wanted.title() + " is recorded just so already; nothing was written");
    }
    mistake(written)
        .ifPresent(
            m -> {
              throw wrong(RecordOptions.of(m.field()) + ": " + m.said());
            });
    Recorded recorded =
        Recorded.of(
            file,
            book,
            written,
            wanted.step().mark().number(),
            Names.of(root.steels(), root.data()),
            root.correlations());
    Billet after = recorded.billet();
    List<Mistake> later = recorded.later();
    read.write(written.text(), wanted.title());
    return root.print(
        () -> JsonReport.recorded(wanted, after.steps(), later),
        () ->
            new RecordText(after.steps(), root.unitsFor(after.units()))
                .recorded(
                    wanted,
                    before.steps(),
                    later.stream().map(m -> "Now " + m.said() + ".").toList()),
        Trace.NONE);
  }

  private Billet billet(String text) {
    return BilletReader.read(file, text, Names.of(root.steels(), root.data()));
  }

  /** What a reader would say of a file, if anything. */
  private Optional<Mistake> mistake(WorkBook book) {
    try {
      billet(book.text());
      return Optional.empty();
    } catch (Fault fault) {
      return Optional.of(fault.mistakes().get(0));
    }
  }
}
