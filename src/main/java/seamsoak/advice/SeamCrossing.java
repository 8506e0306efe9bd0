package seamsoak.advice;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import seamsoak.billet.SectionLine;
import seamsoak.carbon.Contrast;
import seamsoak.carbon.Line;
import seamsoak.carbon.LineVisibility;
import seamsoak.carbon.Strip;

/**
 * Where seams of two directions cross. Carbon there is the product of both over the core's: within
 * 0.007 wt% of a solution in two dimensions once the layers are even.
 *
 * @param firstCorePct carbon far from the first seam, in its steel, wt%
 * @param secondCorePct the same of the second
 */
record SeamCrossing(SeamPlace first, SeamPlace second, double firstCorePct, double secondCorePct) {

  /** All that a shown face has. */
  static List<SeamCrossing> of(List<SeamPlace> places) {
    List<SeamPlace> shown =
        places.stream()
            .filter(p -> p.line().kind() != SectionLine.Kind.LAYERS && p.contrast().isPresent())
            .toList();
    Map<SectionLine, Double> cores = new IdentityHashMap<>();
    shown.forEach(p -> cores.computeIfAbsent(p.line(), SeamCrossing::corePct));
    List<SeamCrossing> all = new ArrayList<>();
    for (SeamPlace second : shown) {
      for (SeamPlace first : shown) {
        boolean layers = first.isOfLayers() && second.isOfLayers();
        if (isAcross(second) && !isAcross(first) && !layers) {
          all.add(
              new SeamCrossing(first, second, cores.get(first.line()), cores.get(second.line())));
        }
      }
    }
    return List.copyOf(all);
  }

  private static boolean isAcross(SeamPlace place) {
    return place.line().kind() == SectionLine.Kind.WIDTH;
  }

  private static double corePct(SectionLine line) {
    Strip strip = line.strip();
    return strip.planes().stream().mapToDouble(p -> Line.of(strip, p).farPct()).max().orElseThrow();
  }

  Contrast contrast() {
    return contrast(first.contrast().orElseThrow(), second.contrast().orElseThrow());
  }

  /** With the two seams as they have become. */
  Contrast contrast(Contrast one, Contrast other) {
    return one.crossing(other, secondCorePct);
  }

  boolean shows(LineVisibility visibility) {
    return contrast().over(visibility) >= 1;
  }

  /** Carbon where they cross, in the steel of the first, wt%. */
  double seamPct() {
    return first.carbon().seamPct() * second.carbon().seamPct() / secondCorePct;
  }
}
