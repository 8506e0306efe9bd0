package seamsoak.state;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Names by which the same seam is found again in another history of a billet. */
public final class SeamKeys {
  private final Map<SeamPlace, String> keys = new IdentityHashMap<>();

  public SeamKeys(List<SeamPlace> places) {
    Map<String, Integer> count = new HashMap<>();
    for (SeamPlace p : places) {
      String name = p.joints() + " " + p.line().kind() + " " + Math.round(1e6 * p.line().share());
      keys.put(p, name + " " + count.merge(name, 1, Integer::sum));
    }
  }

  public String of(SeamPlace place) {
    return keys.get(place);
  }

  public String of(SeamCrossing crossing) {
    return of(crossing.first()) + " x " + of(crossing.second());
  }

  /** By name, what is told of each seam and each crossing. */
  public Map<String, double[]> told(
      List<SeamCrossing> crossings,
      Function<SeamPlace, double[]> ofPlace,
      Function<SeamCrossing, double[]> ofCrossing) {
    Map<String, double[]> all = new HashMap<>();
    keys.keySet().forEach(p -> all.put(of(p), ofPlace.apply(p)));
    crossings.forEach(c -> all.put(of(c), ofCrossing.apply(c)));
    return all;
  }
}
