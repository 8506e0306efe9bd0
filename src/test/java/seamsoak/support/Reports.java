package seamsoak.support;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Reports written once for all the tests that look at them. */
public final class Reports {
  /** What must not be taken for markup, as a name. */
  public static final String NASTY = "<b>&\"'";

  private static final Path FOLDER = folder();

  private Reports() {}

  /** The demo's report. */
  public static synchronized Path mosaic() {
    return report("mosaic", "alloy-data/billets/mosaic.json");
  }

  /** A billet that must not be heated as written. */
  public static synchronized Path refused() {
    return report("refused", "alloy-data/billets/galvanized-jacket.json");
  }

  /** A billet and a steel whose names look like markup. */
  public static synchronized Path nasty() {
    Path data = FOLDER.resolve("data");
    Path billet = FOLDER.resolve("nasty.json");
    try {
      Files.createDirectories(data);
      try (Stream<Path> tables = Files.list(Path.of("alloy-data"))) {
        for (Path table : tables.filter(t -> t.toString().endsWith(".csv")).toList()) {
          Files.writeString(
              data.resolve(table.getFileName()),
              Files.readString(table).replaceAll("(?m)(^|,)75Ni8(?=,|$)", "$1\"<b>&\"\"'\""));
        }
      }
      Files.writeString(
          billet,
          Files.readString(Path.of("alloy-data/billets/mosaic.json"))
              .replace("Orchard knife, four-patch tiles", "<b>&\\\"'")
              .replace("\"75Ni8\"", "\"<b>&\\\"'\""));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return report("nasty", billet.toString(), "--data", data.toString());
  }

  private static Path report(String name, String billet, String... more) {
    Path out = FOLDER.resolve(name);
    Path report = out.resolve("report.html");
    if (!Files.exists(report)) {
      List<String> args =
          new ArrayList<>(List.of("plan", billet, "--samples", "2", "--out", out.toString()));
      args.addAll(List.of(more));
      Ran ran = Ran.run(args.toArray(String[]::new));
      if (!Files.exists(report)) {
        throw new AssertionError(ran.code() + ": " + ran.err());
      }
    }
    return report;
  }

  private static Path folder() {
    try {
      Path folder = Files.createTempDirectory("reports");
      Runtime.getRuntime().addShutdownHook(new Thread(() -> remove(folder)));
      return folder;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void remove(Path folder) {
    try (Stream<Path> all = Files.walk(folder)) {
      all.sorted((a, b) -> b.compareTo(a)).forEach(p -> p.toFile().delete());
    } catch (IOException e) {
      // the machine's own cleaning will do
    }
  }
}
