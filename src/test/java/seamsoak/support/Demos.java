package seamsoak.support;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import seamsoak.billet.Billet;
import seamsoak.billet.file.BilletReader;

/** The demo billets, as tests need them. */
public final class Demos {
  private Demos() {}

  /** A demo as it is. */
  public static Billet of(String name) {
    return BilletReader.read(path(name), Walks.NAMES);
  }

  /** The text of its file. */
  public static String text(String name) {
    try {
      return Files.readString(path(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path path(String name) {
    return Path.of("alloy-data/billets/" + name + ".json");
  }
}
