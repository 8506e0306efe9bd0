package seamsoak.support;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import seamsoak.data.DataFolder;
import seamsoak.pairing.CheckName;
import seamsoak.pairing.Finding;
import seamsoak.pairing.PairCheck;
import seamsoak.pairing.PairLimits;
import seamsoak.pairing.PairResult;
import seamsoak.pairing.PairSetting;
import seamsoak.pairing.PairSteel;
import seamsoak.pairing.Rating;
import seamsoak.property.Correlations;
import seamsoak.steel.SteelTable;

/** The packed tables, ready to check pairs. */
public final class KnownPairs {
  public static final PairSetting USUAL = setting(3);

  final SteelTable table = SteelTable.load(DataFolder.packed());
  public final PairCheck check =
      new PairCheck(Correlations.load(DataFolder.packed()), PairLimits.load(DataFolder.packed()));

  public static PairSetting setting(double layerMm) {
    return new PairSetting(layerMm / 1e3, layerMm / 1e3, 5e-3, OptionalDouble.empty(), false);
  }

  public PairSteel steel(String name) {
    return check.steel(table.find(name).orElseThrow());
  }

  public List<PairSteel> all() {
    return table.steels().stream().map(check::steel).toList();
  }

  public PairResult of(String first, String second) {
    return of(first, second, USUAL);
  }

  public PairResult of(String first, String second, PairSetting setting) {
    return check.of(steel(first), steel(second), setting);
  }

  public Rating rating(String first, String second, CheckName check) {
    return finding(first, second, check).orElseThrow().rating();
  }

  public Optional<Finding> finding(String first, String second, CheckName check) {
    return of(first, second).check(check);
  }
}
