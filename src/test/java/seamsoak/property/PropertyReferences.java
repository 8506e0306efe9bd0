package seamsoak.property;

import java.util.HashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import seamsoak.data.DataFolder;
import seamsoak.reference.Inputs;

/** What this package computes, by the names of the reference folders. */
public final class PropertyReferences {
  private PropertyReferences() {}

  /** The properties by name. */
  public static Map<String, ToDoubleFunction<Inputs>> all() {
    Correlations k = Correlations.load(DataFolder.packed());
    Map<String, ToDoubleFunction<Inputs>> all = new HashMap<>();
    all.put("andrews1965-ae1", in -> k.andrewsAe1().celsius(in.composition()));
    all.put("grange1961-ae1", in -> k.grangeAe1().celsius(in.composition()));
    all.put("hougardy1984-ac1", in -> k.hougardyAc1().celsius(in.composition()));
    all.put("andrews1965-ae3", in -> k.andrewsAe3().celsius(in.composition()));
    all.put("andrews1965-ae3-shift", in -> k.andrewsAe3().alloyShiftCelsius(in.composition()));
    all.put(
        "lee-lee2007-accm-shift",
        in -> k.leeLeeAccm().alloyShiftCelsius(in.composition(), in.get("C")));
    return all;
  }
}
