package seamsoak.billet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import seamsoak.billet.SectionLine.End;
import seamsoak.billet.SectionLine.Kind;
import seamsoak.carbon.SeamName;
import seamsoak.carbon.Strip;

/**
 * Pieces laid side by side, or on one another: their lines end to end. Where the row is the same
 * from both ends, half of it is kept.
 *
 * @param pieces the lines of the pieces in order
 * @param joins which seam they will make
 */
record Row(List<SectionLine> pieces, SeamName joins) {

  /** Pieces that are turned by turns: as they are, then turned, and so on. */
  static Row of(int count, SectionLine even, SectionLine odd, SeamName joins) {
    List<SectionLine> pieces = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      pieces.add(i % 2 == 0 ? even : odd);
    }
    return new Row(Collections.unmodifiableList(pieces), joins);
  }

  SectionLine line(Kind kind, Direction normal) {
    int n = pieces.size();
    boolean half = sameFromBothEnds();
    Map<SectionLine, Strip> wholes = new IdentityHashMap<>();
    List<Strip> parts = new ArrayList<>();
    int wholePieces = half ? n / 2 : n;
    for (SectionLine p : pieces.subList(0, wholePieces)) {
      parts.add(wholes.computeIfAbsent(p, SectionLine::whole));
    }
    if (half && n % 2 == 1) {
      parts.add(pieces.get(n / 2).strip());
    }
    End far = !half ? End.OUTSIDE : n % 2 == 0 ? End.GAP : End.MIRROR;
    return new SectionLine(kind, normal, 1, parts, End.OUTSIDE, far, joins);
  }

  private boolean sameFromBothEnds() {
    int n = pieces.size();
    for (int i = 0; i < n; i++) {
      if (!pieces.get(i).isHalf() || pieces.get(i) != pieces.get(n - 1 - i)) {
        return false;
      }
    }
    return true;
  }
}
