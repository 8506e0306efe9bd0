package seamsoak.data;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentSkipListMap;

/**
 * Where the tables come from: the ones packed into the program, or those of a folder of the user's
 * that stand in for the packed ones of the same name.
 */
public final class DataFolder {
  private static final String PACKED = "/alloy-data/";

  private final Optional<Path> folder;

  /**
   * What was read from the user's folder, by the tables' names; tables may be read side by side.
   */
  private final Map<String, String> read = new ConcurrentSkipListMap<>();

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

  /** The tables read so far that are not the packed ones: the text of each by its name. */
  public Map<String, String> read() {
    return Collections.unmodifiableMap(read);
  }

  /** Reads the CSV table of that name, such as {@code steels.csv}. */
  public CsvTable csv(String name) {
    Optional<Path> own =
        folder.map(f -> f.resolve(name)).filter(f -> Files.exists(f, LinkOption.NOFOLLOW_LINKS));
    String shown = own.map(Path::toString).orElse("alloy-data/" + name);
    if (own.isPresent()) {
      CsvTable table =
          CsvTable.read(shown, new ByteArrayInputStream(TextFile.bytes(shown, own.get())));
      read.put(name, table.content());
      return table;
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
