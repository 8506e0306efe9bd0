package seamsoak.face;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.state.Joints;
import seamsoak.state.LineReport;

/**
 * The lines that fall on a blade's edge.
 *
 * @param tipMm from the left end of the bar to the tip; none in a bar's end
 * @param lengthMm of the blade
 * @param widthMm from spine to edge
 * @param steel of the layer that the edge lies in; none where it crosses several
 * @param across seams that the edge crosses
 * @param along seams that run along it
 */
public record EdgeLines(
    Optional<Double> tipMm,
    double lengthMm,
    double widthMm,
    Optional<String> steel,
    List<Across> across,
    List<Along> along) {

  /**
   * Seams that the edge crosses.
   *
   * @param joints which
   * @param atMm where, from the tip
   * @param contrast K of their line
   * @param visible whether it shows
   */
  public record Across(Joints joints, List<Double> atMm, double contrast, boolean visible) {}

  /**
   * Seams that run along the edge: the nearest of each kind.
   *
   * @param joints which
   * @param offMm how far from it
   * @param within whether the edge lies in the line, as wide as it is at half of its depth
   * @param contrast K of their line
   * @param visible whether it shows
   */
  public record Along(
      Joints joints, double offMm, boolean within, double contrast, boolean visible) {}

  /** Of a blade in a piece with those lines. */
  public static EdgeLines of(FaceField face, BladeOutline blade, List<LineReport> lines) {
    List<Across> across = new ArrayList<>();
    if (face.isPlan()) {
      crossed(face, blade)
          .forEach(
              (joints, at) ->
                  line(lines, joints)
                      .ifPresent(
                          l ->
                              across.add(
                                  new Across(joints, at, l.contrast().orElse(0.0), l.visible()))));
    }
    List<Along> along = new ArrayList<>();
    face.seams()
        .along(blade.edge())
        .forEach(
            (joints, off) ->
                line(lines, joints)
                    .ifPresent(
                        l ->
                            along.add(
                                new Along(
                                    joints,
                                    1e3 * off,
                                    2e3 * off < l.trueWidthMm(),
                                    l.contrast().orElse(0.0),
                                    l.visible()))));
    FaceField.Look look = face.new Look();
    look.inside(0, blade.edge(), 0);
    return new EdgeLines(
        face.isPlan()
            ? Optional.of(1e3 * (blade.tip() + face.acrossMetres() / 2))
            : Optional.empty(),
        1e3 * blade.along(),
        1e3 * blade.width(),
        face.isPlan() ? Optional.empty() : Optional.of(face.steels().get(look.steel()).name()),
        List.copyOf(across),
        List.copyOf(along));
  }

  private static Map<Joints, List<Double>> crossed(FaceField face, BladeOutline blade) {
    Map<Joints, List<Double>> all = new LinkedHashMap<>();
    face.seams()
        .across(blade.tip(), blade.tip() + blade.along(), blade.edge(), 0)
        .forEach(
            (joints, places) ->
                all.put(joints, places.stream().map(x -> 1e3 * (x - blade.tip())).toList()));
    return all;
  }

  /** That of them that shows most. */
  private static Optional<LineReport> line(List<LineReport> lines, Joints joints) {
    return lines.stream()
        .filter(l -> l.joints().equals(joints))
        .max((a, b) -> Double.compare(a.contrast().orElse(0.0), b.contrast().orElse(0.0)));
  }
}
