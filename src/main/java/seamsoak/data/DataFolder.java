package seamsoak.data;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Where the tables come from: the ones packed into the program, or those of a folder of the user's
 * that stand in for the packed ones of the same name.
 */
public final class DataFolder {
  private static final String PACKED = "/alloy-data/";

  private final Optional<Path> folder;

  private DataFolder(Optional<Path> folder) {
    this.folder = folder;
  }

  /** The tables packed into the program. */
  public static DataFolder packed() {
    return new DataFolder(Optional.empty());
  }

  /** A folder whose tables take precedence over the packed ones. */
  public static DataFolder over(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw new Fault(
          Place.of(folder.toString()), "no such folder", "--data takes a folder of tables");
    }
    return new DataFolder(Optional.of(folder));
  }

  /** Whether the table of that name is the packed one. */
  public boolean isPacked(String name) {
    return own(name).isEmpty();
  }

  private Optional<Path> own(String name) {
    return folder.map(f -> f.resolve(name)).filter(f -> Files.exists(f, LinkOption.NOFOLLOW_LINKS));
  }

  /** Reads the text of that name, such as {@code BILLET.md}. */
  public String text(String name) {
    Optional<Path> own = own(name);
    String shown = own.map(Path::toString).orElse("alloy-data/" + name);
    if (own.isPresent()) {
      return TextFile.read(shown, own.get());
    }
    try (InputStream in = DataFolder.class.getResourceAsStream(PACKED + name)) {
      return TextFile.text(shown, TextFile.bytes(shown, in));
    } catch (IOException e) {
      throw new Fault(Place.of(shown), "cannot be read (" + e.getMessage() + ")", "give a file");
    }
  }

  /** Reads the CSV table of that name, such as {@code steels.csv}. */
  public CsvTable csv(String name) {
    Optional<Path> own = own(name);
    String shown = own.map(Path::toString).orElse("alloy-data/" + name);
    if (own.isPresent()) {
      return CsvTable.read(shown, new ByteArrayInputStream(TextFile.bytes(shown, own.get())));
    }
    try (InputStream in = DataFolder.class.getResourceAsStream(PACKED + name)) {
      if (in == null) {
        throw new IllegalArgumentException("no packed table " + name);
      }
      return CsvTable.read(shown, in);
    } catch (IOException e) {
      throw new Fault(Place.of(shown), "cannot be read (" + e.getMessage() + ")", "give a file");
    }
  }
}
