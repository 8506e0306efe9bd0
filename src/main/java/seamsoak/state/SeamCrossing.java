package seamsoak.state;

import java.util.ArrayList;
import java.util.List;
import seamsoak.billet.SectionLine;
import seamsoak.carbon.Contrast;
import seamsoak.carbon.LineVisibility;

/**
 * Where seams of two directions cross. Carbon there is the product of both over the core's: within
 * 0.007 wt% of a solution in two dimensions once the layers are even.
 */
public record SeamCrossing(SeamPlace first, SeamPlace second) {

  /** All that a shown face has. */
  public static List<SeamCrossing> of(List<SeamPlace> places) {
    List<SeamPlace> shown =
        places.stream()
            .filter(p -> p.line().kind() != SectionLine.Kind.LAYERS && p.contrast().isPresent())
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

  public Contrast contrast() {
    return contrast(first.contrast().orElseThrow(), second.contrast().orElseThrow());
  }

  /** With the two seams as they have become. */
  public Contrast contrast(Contrast one, Contrast other) {
    return one.crossing(other, second.corePct());
  }

  public boolean shows(LineVisibility visibility) {
    return contrast().over(visibility) >= 1;
  }

  /** Carbon where they cross, in the steel of the first, wt%. */
  double seamPct() {
    double core = second.corePct();
    return core > 0 ? first.carbon().seamPct() * second.carbon().seamPct() / core : 0;
  }
}
