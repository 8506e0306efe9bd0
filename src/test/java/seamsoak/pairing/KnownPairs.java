package seamsoak.pairing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import seamsoak.data.DataFolder;
import seamsoak.property.Correlations;
import seamsoak.steel.SteelTable;

/** The packed tables, ready to check pairs. */
final class KnownPairs {
  static final PairSetting USUAL = setting(3);

  final SteelTable table = SteelTable.load(DataFolder.packed());
  final PairCheck check =
      new PairCheck(Correlations.load(DataFolder.packed()), PairLimits.load(DataFolder.packed()));

  static PairSetting setting(double layerMm) {
    return new PairSetting(layerMm / 1e3, layerMm / 1e3, 5e-3, OptionalDouble.empty(), false);
  }

  PairSteel steel(String name) {
    return check.steel(table.find(name).orElseThrow());
  }

  List<PairSteel> all() {
    return table.steels().stream().map(check::steel).toList();
  }

  PairResult of(String first, String second) {
    return of(first, second, USUAL);
  }

  PairResult of(String first, String second, PairSetting setting) {
    return check.of(steel(first), steel(second), setting);
  }

  Rating rating(String first, String second, CheckName check) {
    return finding(first, second, check).orElseThrow().rating();
  }

  Optional<Finding> finding(String first, String second, CheckName check) {
    return of(first, second).check(check);
  }
}
