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

  /**
   * A demo looked at by an eye to which half the carbon missing shows: the demos' own lines lie on
   * the border of what shows, so that a soak has little to clear.
   */
  public static Billet keenEyed(String name) {
    try {
      String text = Files.readString(path(name));
      return Walks.billet(
          text.replace("\"soak\": {", "\"visible\": { \"dip\": \"0.05 %\" }, \"soak\": {"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path path(String name) {
    return Path.of("alloy-data/billets/" + name + ".json");
  }
}
