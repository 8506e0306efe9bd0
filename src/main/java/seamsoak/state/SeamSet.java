package seamsoak.state;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * All seams that one step made, as tables and charts tell of them.
 *
 * @param step its number, 0 for the seams between like layers of the stack
 * @param name such as {@code restack 4}
 */
public record SeamSet(int step, String name) {
  /**
   * The sets in the order of their steps; when there are more than so many, those that show most at
   * last.
   */
  public static List<SeamSet> deepest(List<StageReport> history, int most) {
    Set<Integer> steps = new TreeSet<>();
    history.forEach(s -> s.lines().forEach(l -> steps.add(l.step())));
    List<LineReport> last = history.get(history.size() - 1).lines();
    return steps.stream()
        .map(step -> new SeamSet(step, name(step, history)))
        .sorted(Comparator.comparingDouble(s -> -s.contrast(last).orElse(0)))
        .limit(most)
        .sorted(Comparator.comparingInt(SeamSet::step))
        .toList();
  }

  private static String name(int step, List<StageReport> history) {
    return history.stream()
        .filter(s -> s.step() == step && step > 0)
        .map(s -> s.kind() + " " + step)
        .findFirst()
        .orElse("layers");
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
    return lines.stream().filter(l -> l.step() == step);
  }
}
