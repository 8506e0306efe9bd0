package seamsoak.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.state.LineReport;
import seamsoak.words.SeamWords;

/**
 * The lines of one name that show alike: turning some of the pieces splits a set of seams into
 * several that run in different ways.
 */
record LineGroup(List<LineReport> lines) {
  private static final double ALL_PCT = 99.5;

  static List<LineGroup> of(List<LineReport> lines) {
    Map<List<Object>, List<LineReport>> groups = new LinkedHashMap<>();
    for (LineReport l : lines) {
      groups.computeIfAbsent(List.of(l.joints(), l.visible()), k -> new ArrayList<>()).add(l);
    }
    return groups.values().stream().map(LineGroup::new).toList();
  }

  boolean visible() {
    return lines.get(0).visible();
  }

  /** Its name, with the share of the pieces where not all run this way. */
  String name() {
    double share = lines.stream().mapToDouble(LineReport::sharePct).sum();
    String in =
        share > ALL_PCT
            ? ""
            : Math.abs(share - 50) < 0.5
                ? " (half the pieces)"
                : " (" + Math.round(share) + " % of the pieces)";
    return SeamWords.says(lines.get(0).joints()) + in;
  }

  /** Carbon at the seam that lacks most, wt%. */
  double seamPct() {
    return deepest().seamPct();
  }

  double farPct() {
    return deepest().farPct();
  }

  private LineReport deepest() {
    return lines.stream().max(Comparator.comparingDouble(LineReport::missingPct)).orElseThrow();
  }

  Optional<Double> contrast() {
    return lines.stream().flatMap(l -> l.contrast().stream()).max(Double::compare);
  }

  Optional<Double> widestMm() {
    return lines.stream().flatMap(l -> l.widthMm().stream()).max(Double::compare);
  }

  /** The angle between the face and the seam whose line is widest there. */
  Optional<Double> degreesToFace() {
    return lines.stream()
        .filter(l -> l.widthMm().filter(w -> w > 0).isPresent())
        .max(Comparator.comparing(l -> l.widthMm().get()))
        .map(l -> Math.toDegrees(Math.asin(Math.min(1, l.trueWidthMm() / l.widthMm().get()))));
  }
}
