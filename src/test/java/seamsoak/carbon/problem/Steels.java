package seamsoak.carbon.problem;

import static seamsoak.support.Analyses.CORRELATIONS;

import java.util.List;
import java.util.stream.Stream;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Surroundings;
import seamsoak.data.DataFolder;
import seamsoak.steel.SteelTable;
import seamsoak.support.Analyses;

/** The nominal steels as metals for the engine, and the fire that they meet. */
public final class Steels {
  /**
   * Activity under scale with 1 atm of CO, and the steel's k_c (Birks and Jackson; from memory).
   */
  public static final Surroundings FIRE =
      new Surroundings(
          t -> Math.exp(CORRELATIONS.phases().scaledSurface().lnActivity(t, 1)),
          t -> 57.1e-6 * Math.exp(-21720 / t));

  private Steels() {}

  /** A steel of the list. */
  public static Metal metal(String name) {
    return Metal.of(CORRELATIONS, name, Analyses.named(name), 1);
  }

  /** Every steel of the packed table, then what the list has beyond it, mild iron to nickel. */
  public static List<Metal> all() {
    SteelTable table = SteelTable.load(DataFolder.packed());
    Stream<Metal> packed =
        table.steels().stream().map(s -> Metal.of(CORRELATIONS, s.id(), s.analysis(), 1));
    Stream<Metal> beyond =
        Analyses.names().stream().filter(n -> table.find(n).isEmpty()).map(Steels::metal);
    return Stream.concat(packed, beyond).toList();
  }

  /** A steel by its analysis. */
  public static Metal of(String analysis) {
    return Metal.of(CORRELATIONS, analysis, Analyses.of(analysis), 1);
  }
}
