package seamsoak.state;

import java.util.ArrayList;
import java.util.List;
import seamsoak.billet.SectionLine;
import seamsoak.carbon.Sight;

/**
 * Where seams of two directions cross. Carbon there is the product of both over the core's: within
 * 0.007 wt% of a solution in two dimensions once the layers are even.
 */
public record SeamCrossing(SeamPlace first, SeamPlace second) {

  /** All that a shown face has. */
  public static List<SeamCrossing> of(List<SeamPlace> places) {
    List<SeamPlace> shown =
        places.stream()
            .filter(p -> p.line().kind() != SectionLine.Kind.LAYERS && p.sight().isPresent())
            .toList();
    List<SeamCrossing> all = new ArrayList<>();
    for (SeamPlace second : shown) {
      for (SeamPlace first : shown) {
        boolean layers = first.isOfLayers() && second.isOfLayers();
        if (isAcross(second) && !isAcross(first) && !layers) {
          all.add(new SeamCrossing(first, second));
        }
      }
    }
    return List.copyOf(all);
  }

  private static boolean isAcross(SeamPlace place) {
    return place.line().kind() == SectionLine.Kind.WIDTH;
  }

  /** K in an etch. */
  public double contrast(Etch etch) {
    return contrast(etch, first.sight().orElseThrow(), second.sight().orElseThrow());
  }

  /** With the two seams as they have become. */
  public double contrast(Etch etch, Sight one, Sight other) {
    return etch.crossing(first.carbon().steel(), one, other, second.corePct());
  }

  /** Carbon where they cross, in the steel of the first, wt%. */
  double seamPct() {
    double core = second.corePct();
    return core > 0 ? first.carbon().seamPct() * second.carbon().seamPct() / core : 0;
  }
}
