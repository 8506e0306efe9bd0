package seamsoak.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import seamsoak.data.Fault;
import seamsoak.data.Place;
import seamsoak.page.Page;
import seamsoak.report.JsonReport;

/** The page in the smith's own browser. */
@Command(
    description = {
      "Opens a page in your browser on which billets are built, looked at, answered and kept. It is",
      "for this machine alone, and nothing of it leaves the machine. The link that is printed opens",
      "it once, within a minute. It ends by its own button, or by Ctrl-C here."
    },
    customSynopsis = "page [FILE] [--folder DIR] [--port N] [--no-browser]",
    footer = {
      "page",
      "page alloy-data/billets/mosaic.json",
      "page --folder my-billets --no-browser"
    })
final class PageCommand extends Subcommand {
  @Parameters(
      paramLabel = "FILE",
      arity = "0..1",
      description = "Billet file to begin with; one that is not there yet is begun.")
  private Path file;

  @Option(
      names = "--folder",
      paramLabel = "DIR",
      description = "Folder of the billets; that of FILE unless given, else the one you are in.")
  private Path folder;

  @Option(
      names = "--port",
      paramLabel = "N",
      description = "Port to listen at; any that is free unless given.")
  private OptionValues.Port port = new OptionValues.Port(0);

  @Option(names = "--no-browser", description = "Only print the link.")
  private boolean noBrowser;

  @Override
  public Integer call() throws InterruptedException {
    Page.Setting setting =
        new Page.Setting(
            root.data(),
            root.correlations(),
            root.steels(),
            folder(),
            Page.Setting.usualDrafts(),
            port.number(),
            root.colophon());
    try (Page page = Page.open(setting)) {
      if (file != null) {
        page.lay(file.getFileName().toString());
      }
      String link = page.link();
      root.out()
          .print(
              root.json()
                  ? JsonReport.page(page.address(), link)
                  : "The page: " + link + "\nThis opens once, within a minute. Ctrl-C ends it.\n");
      root.out().flush();
      if (!noBrowser) {
        BrowserOfUser.open(link);
      }
      page.await();
    }
    return Program.ANSWERED;
  }

  private Path folder() {
    Path parent = file == null ? null : file.toAbsolutePath().getParent();
    Path here = folder != null ? folder : parent == null ? Path.of("") : parent;
    if (!Files.isDirectory(here)) {
      throw new Fault(
          Place.of(here.toString()), "there is no such folder", "give one that is there");
    }
    return here.toAbsolutePath().normalize();
  }
}
