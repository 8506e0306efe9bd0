package seamsoak.billet;

import seamsoak.carbon.Strip;

/**
 * Two faces that lie against each other and are not welded yet.
 *
 * @param name of the family they will make
 * @param kind of that family
 * @param step number of the step that laid them together
 * @param share of all pieces
 * @param normal square to the faces
 * @param first strip from one face inward
 * @param second strip from the other; the same object where the two are alike
 */
record Joint(
    String name,
    Family.Kind kind,
    int step,
    double share,
    Direction normal,
    Strip first,
    Strip second) {

  boolean alike() {
    return first == second;
  }

  Joint withStrips(Strip a, Strip b) {
    return new Joint(name, kind, step, share, normal, a, b);
  }

  /** The family after welding: a strip against its mirror image, or two unlike ones. */
  Family welded() {
    return new Family(
        name, kind, step, share, normal, alike() ? first.descaled() : first.weldedTo(second));
  }
}
