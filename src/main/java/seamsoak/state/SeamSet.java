package seamsoak.state;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import seamsoak.carbon.SeamName;

/**
 * All seams that one step made, as tables and charts tell of them.
 *
 * @param made by which one; those between layers are one set
 */
public record SeamSet(SeamName made) {
  /**
   * The sets in the order of their steps; when there are more than so many, those that show most at
   * last.
   */
  public static List<SeamSet> deepest(List<StageReport> history, int most) {
    Set<SeamName> made = new LinkedHashSet<>();
    history.forEach(s -> s.lines().forEach(l -> made.add(l.joints().made())));
    List<LineReport> last = history.get(history.size() - 1).lines();
    return made.stream()
        .sorted(Comparator.comparingInt(SeamName::step))
        .map(SeamSet::new)
        .sorted(Comparator.comparingDouble(s -> -s.contrast(last).orElse(0)))
        .limit(most)
        .sorted(Comparator.comparingInt(s -> s.made().step()))
        .toList();
  }

  /** Contrast of the one that shows most; none where they are not yet, or lie under the face. */
  public OptionalDouble contrast(List<LineReport> lines) {
    return own(lines).flatMap(l -> l.contrast().stream()).mapToDouble(k -> k).max();
  }

  /** Width of the widest line that shows on the face, mm. */
  public Optional<Double> widthMm(List<LineReport> lines) {
    return own(lines)
        .filter(LineReport::visible)
        .flatMap(l -> l.widthMm().stream())
        .max(Double::compare);
  }

  /** Whether a line shows at any of them. */
  public boolean shows(List<LineReport> lines) {
    return own(lines).anyMatch(LineReport::visible);
  }

  private Stream<LineReport> own(List<LineReport> lines) {
    return lines.stream().filter(l -> l.joints().made().equals(made));
  }
}
