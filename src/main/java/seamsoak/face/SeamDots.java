package seamsoak.face;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import seamsoak.carbon.SeamName;
import seamsoak.state.Joints;
import seamsoak.state.SeamPlace;

/**
 * Where seams lie in a picture of a face, as dots along them: so that one may be pointed at, and
 * shown. Those of layers too thin to be told apart have none.
 *
 * @param joints which
 * @param dots at least one
 */
public record SeamDots(Joints joints, List<Dot> dots) {
  /** A place in a picture, mm from its left and from its top. */
  public record Dot(double across, double down) {}

  /** So many along the longer side, unless there are too many seams. */
  private static final int ALONG = 60;

  /** More than that of all seams no browser need be sent. */
  private static final int MOST = 4000;

  /** Of layers, more than that tell nobody which is meant. */
  private static final int MOST_OF_LAYERS = 1000;

  /** How finely layers are looked for, mm. */
  private static final double STEP_MM = 0.05;

  /** Of each of the seams in a picture. */
  public static List<SeamDots> of(FaceField face, FaceSize size) {
    double apart = Math.max(size.acrossMm(), size.upMm()) / ALONG;
    Map<Joints, List<Dot>> layers = new LinkedHashMap<>();
    layers(face, size, apart, layers);
    boolean few = layers.values().stream().mapToInt(List::size).sum() <= MOST_OF_LAYERS;
    while (true) {
      Map<Joints, List<Dot>> all = new LinkedHashMap<>(few ? layers : Map.of());
      straight(face, size, apart, all);
      leaning(face, size, apart, all);
      if (all.values().stream().mapToInt(List::size).sum() <= MOST) {
        return all.entrySet().stream()
            .map(e -> new SeamDots(e.getKey(), List.copyOf(e.getValue())))
            .toList();
      }
      apart *= 2;
    }
  }

  /** Those that run from one side of the picture to the other. */
  private static void straight(
      FaceField face, FaceSize size, double apart, Map<Joints, List<Dot>> all) {
    face.seams()
        .upright()
        .forEach(
            (x, joints) -> {
              for (double y = apart / 2; y < size.upMm(); y += apart) {
                put(size, joints, size.acrossMm() / 2 + 1e3 * x, y, all);
              }
            });
    face.seams()
        .level()
        .forEach(
            (y, joints) -> {
              for (double x = apart / 2; x < size.acrossMm(); x += apart) {
                put(size, joints, x, size.upMm() / 2 - 1e3 * y, all);
              }
            });
  }

  /** Those from tile to tile, which the pieces of later restacks may hold at any place. */
  private static void leaning(
      FaceField face, FaceSize size, double apart, Map<Joints, List<Dot>> all) {
    if (!face.isPlan()) {
      return;
    }
    double half = 0.5e-3 * size.acrossMm();
    for (double y = apart / 2; y < size.upMm(); y += apart) {
      double down = y;
      double across = 1e-3 * (size.upMm() / 2 - y);
      face.seams()
          .across(-half, half, across, face.halfThicknessMetres())
          .forEach(
              (joints, places) ->
                  places.forEach(x -> put(size, joints, 1e3 * (x + half), down, all)));
    }
  }

  /** Those of layers, which lie flat in some pieces and on edge in others. */
  private static void layers(
      FaceField face, FaceSize size, double apart, Map<Joints, List<Dot>> all) {
    Map<Set<String>, Joints> bySteels = new LinkedHashMap<>();
    for (SeamPlace place : SeamPlace.of(face.piece())) {
      if (place.joints().made().kind() == SeamName.Kind.LAYERS) {
        bySteels.putIfAbsent(Set.copyOf(place.joints().steels()), place.joints());
      }
    }
    if (bySteels.isEmpty()) {
      return;
    }
    for (double x = apart / 2; x < size.acrossMm(); x += apart) {
      layers(face, size, new Dot(x, 0), false, bySteels, all);
    }
    for (double y = apart / 2; y < size.upMm(); y += apart) {
      layers(face, size, new Dot(0, y), true, bySteels, all);
    }
  }

  /** Where one layer comes after another on a straight way through the picture. */
  private static void layers(
      FaceField face,
      FaceSize size,
      Dot from,
      boolean rightward,
      Map<Set<String>, Joints> bySteels,
      Map<Joints, List<Dot>> all) {
    FaceField.Look look = face.new Look();
    int before = -1;
    for (double t = 0; t < (rightward ? size.acrossMm() : size.upMm()); t += STEP_MM) {
      double x = rightward ? t : from.across();
      double y = rightward ? from.down() : t;
      look.at(1e-3 * (x - size.acrossMm() / 2), 1e-3 * (size.upMm() / 2 - y));
      int here = look.ofStack();
      // what lies beside a layer in a piece beside it is no neighbor of its stack
      if (before >= 0 && Math.abs(here - before) == 1) {
        Set<String> steels = new TreeSet<>(List.of(face.nameOf(here), face.nameOf(before)));
        if (bySteels.containsKey(steels)) {
          put(
              size,
              bySteels.get(steels),
              x - (rightward ? STEP_MM / 2 : 0),
              y - (rightward ? 0 : STEP_MM / 2),
              all);
        }
      }
      before = here;
    }
  }

  private static void put(
      FaceSize size, Joints joints, double across, double down, Map<Joints, List<Dot>> all) {
    if (across >= 0 && across <= size.acrossMm() && down >= 0 && down <= size.upMm()) {
      all.computeIfAbsent(joints, j -> new ArrayList<>()).add(new Dot(across, down));
    }
  }
}
