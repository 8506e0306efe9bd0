package seamsoak.state;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The lines of one name that show alike: turning some of the pieces splits a set of seams into
 * several that run in different ways.
 */
public record LineGroup(List<LineReport> lines) {
  public static List<LineGroup> of(List<LineReport> lines) {
    Map<List<Object>, List<LineReport>> groups = new LinkedHashMap<>();
    for (LineReport l : lines) {
      groups.computeIfAbsent(List.of(l.joints(), l.visible()), k -> new ArrayList<>()).add(l);
    }
    return groups.values().stream().map(LineGroup::new).toList();
  }

  public boolean visible() {
    return lines.get(0).visible();
  }

  public Joints joints() {
    return lines.get(0).joints();
  }

  /** What shows in each state of the one that shows most in the blade; none on the way. */
  public Optional<Shows> shows() {
    return lines.stream()
        .flatMap(l -> l.shows().stream())
        .max(Comparator.comparingDouble(s -> s.hardened().contrast()));
  }

  /** The share of the pieces in which they run this way, percent. */
  public double sharePct() {
    return lines.stream().mapToDouble(LineReport::sharePct).sum();
  }

  /** Carbon at the seam that lacks most, wt%. */
  public double seamPct() {
    return deepest().seamPct();
  }

  public double farPct() {
    return deepest().farPct();
  }

  private LineReport deepest() {
    return lines.stream().max(Comparator.comparingDouble(LineReport::missingPct)).orElseThrow();
  }

  public Optional<Double> contrast() {
    return lines.stream().flatMap(l -> l.contrast().stream()).max(Double::compare);
  }

  public Optional<Double> widestMm() {
    return lines.stream().flatMap(l -> l.widthMm().stream()).max(Double::compare);
  }

  /** The angle between the face and the seam whose line is widest there. */
  public Optional<Double> degreesToFace() {
    return lines.stream()
        .filter(l -> l.widthMm().filter(w -> w > 0).isPresent())
        .max(Comparator.comparing(l -> l.widthMm().get()))
        .map(l -> Math.toDegrees(Math.asin(Math.min(1, l.trueWidthMm() / l.widthMm().get()))));
  }
}
