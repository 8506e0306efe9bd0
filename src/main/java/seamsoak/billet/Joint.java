package seamsoak.billet;

import seamsoak.carbon.Strip;

/**
 * Two faces that lie against each other and are not welded yet.
 *
 * @param name of the family they will make
 * @param kind of that family
 * @param step number of the step that laid them together
 * @param share of all pieces
 * @param planes how many such pairs of faces lie in the billet
 * @param normal square to the faces
 * @param first strip from one face inward
 * @param second strip from the other; the same object where the two are alike
 */
public record Joint(
    String name,
    Family.Kind kind,
    int step,
    double share,
    int planes,
    Direction normal,
    Strip first,
    Strip second) {

  boolean alike() {
    return first == second;
  }

  Joint withStrips(Strip a, Strip b) {
    return new Joint(name, kind, step, share, planes, normal, a, b);
  }

  /** What the billet loses in size when each pair of faces loses a thickness square to it. */
  Size shrink(Size size, double metres) {
    double all = planes * metres;
    if (normal.equals(Direction.WIDTH)) {
      return size.less(0, all / 2, 0);
    }
    return normal.length() == 0
        ? size.less(0, 0, all / 2)
        : size.less(all / 2 / normal.length(), 0, 0);
  }

  /** The family after welding: a strip against its mirror image, or two unlike ones. */
  Family welded() {
    return new Family(
        name, kind, step, share, normal, alike() ? first.descaled() : first.weldedTo(second), 0);
  }
}
