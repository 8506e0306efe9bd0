package seamsoak.support;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.BilletWalk;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.billet.file.BilletReader;
import seamsoak.billet.file.Names;
import seamsoak.data.DataFolder;
import seamsoak.property.Correlations;
import seamsoak.steel.SteelTable;

/** Walks billets written out in tests. */
public final class Walks {
  public static final Correlations CORRELATIONS = Correlations.load(DataFolder.packed());
  public static final SteelTable STEELS = SteelTable.load(DataFolder.packed());

  public static final Names NAMES = Names.of(STEELS, DataFolder.packed());

  private Walks() {}

  /** The billet of a file's text. */
  public static Billet billet(String json) {
    try {
      Path file = Files.createTempFile("billet", ".json");
      try {
        Files.writeString(file, json);
        return BilletReader.read(file, NAMES);
      } finally {
        Files.delete(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One bar of a plain steel and what is done to it. */
  public static Billet bar(String steel, String size, String... steps) {
    String[] s = size.split(" x ");
    return billet(
        String.format(
            "{ \"stack\": { \"layers\": 1, \"steels\": [\"%s\"], \"thickness\": [\"%s\"],"
                + " \"width\": \"%s\", \"length\": \"%s\" }, \"steps\": [ %s ] }",
            steel, s[0], s[1], s[2], String.join(", ", steps)));
  }

  public static List<Stage> walk(Billet billet) {
    return walk(billet, Assumptions.USUAL);
  }

  public static List<Stage> walk(Billet billet, Assumptions assumptions) {
    return new BilletWalk(new Shop(CORRELATIONS, assumptions, Resolution.FINE)).walk(billet);
  }

  public static Stage last(List<Stage> stages) {
    return stages.get(stages.size() - 1);
  }
}
