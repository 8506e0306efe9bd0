package seamsoak.support;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.billet.Billet;
import seamsoak.billet.file.BilletReader;
import seamsoak.billet.file.Names;
import seamsoak.data.DataFolder;
import seamsoak.data.Nearest;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.steel.Steel;

/** A handful of steels, so that reading a billet is tested without the table. */
public final class KnownSteels {
  private static final Map<String, Double> CARBON =
      Map.of("80CrV2", 0.8, "75Ni8", 0.75, "1084", 0.84, "1008", 0.08);

  private static final Names NAMES =
      Names.of(KnownSteels::find, n -> Nearest.to(n, CARBON.keySet()), DataFolder.packed());

  private KnownSteels() {}

  public static Billet read(Path file) {
    return BilletReader.read(file, NAMES);
  }

  private static Optional<Steel> find(String name) {
    if (name.startsWith("C0")) {
      if (!name.matches("C[0-9.]+")) {
        throw new IllegalArgumentException("'" + name + "' is not an analysis");
      }
      return Optional.of(steel(name, Double.parseDouble(name.substring(1))));
    }
    return Optional.ofNullable(CARBON.get(name)).map(carbon -> steel(name, carbon));
  }

  public static Steel steel(String id, double carbon) {
    return new Steel(id, id, List.of(), "plain carbon", Composition.of(Map.of(Element.C, carbon)));
  }
}
