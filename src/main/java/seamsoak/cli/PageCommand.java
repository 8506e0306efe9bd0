package seamsoak.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import seamsoak.data.Fault;
import seamsoak.data.Place;
import seamsoak.page.Page;
import seamsoak.plan.PlanAdvisor;
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
            Page.Setting.usualState(),
            root.unitsAsked(),
            PlanAdvisor.USUAL_SAMPLES,
            port.number(),
            root.colophon());
    String billet = file == null ? "" : file.getFileName().toString();
    Optional<String> running =
        port.number() == 0 ? Page.linkOfRunning(setting, billet) : Optional.empty();
    if (running.isPresent()) {
      tell(running.get(), "It runs already: this opens it once more, within a minute.");
      return Program.ANSWERED;
    }
    try (Page page = Page.open(setting)) {
      // what was changed a moment ago is kept however the program is told to end
      Runtime.getRuntime().addShutdownHook(new Thread(page::close, "end of the page"));
      if (!billet.isEmpty()) {
        page.lay(billet);
      }
      tell(page.link(), "This opens once, within a minute. Ctrl-C ends it.");
      page.await();
    }
    return Program.ANSWERED;
  }

  private void tell(String link, String how) {
    root.out()
        .print(
            root.json()
                ? JsonReport.page(link.replaceFirst("(?<=[0-9]/).*", ""), link)
                : "The page: " + link + "\n" + how + "\n");
    root.out().flush();
    if (!noBrowser) {
      BrowserOfUser.open(link);
    }
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
