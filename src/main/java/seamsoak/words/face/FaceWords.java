package seamsoak.words.face;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import seamsoak.billet.Seen.Etched;
import seamsoak.billet.Step;
import seamsoak.face.EdgeLines;
import seamsoak.face.FaceSize;
import seamsoak.plan.FaceAdvice;
import seamsoak.state.CrossingReport;
import seamsoak.state.LineReport;
import seamsoak.unit.Length;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;
import seamsoak.words.SeamWords;

/** What a picture of a billet's face shows, for who reads and for who cannot see it. */
public record FaceWords(UnitSystem units) {
  /** What lightness means, and from where on it counts. */
  public static final String LEGEND =
      "Light is what the etch leaves white, dark what it blackens. A line shows to the eye from a"
          + " contrast of 1 on; fainter ones are drawn too, but no eye finds them at the bench. The"
          + " face is drawn ground below its skin and without a jacket, its sides as they are.";

  /** Which face, when, how etched. */
  public static String title(FaceAdvice face) {
    return (face.field().isPlan() ? "The face" : "The end of the bar")
        + " "
        + when(face)
        + ", "
        + etched(face.etched());
  }

  /** Such as {@code after step 15 roll}. */
  public static String when(FaceAdvice face) {
    return switch (face.moment()) {
      case BEFORE -> "after " + face.step().map(Step::title).orElse("the stack");
      case AFTER_SOAK -> "after the soak";
      case AFTER_SCHEDULE -> "at the end of the schedule";
    };
  }

  private static String etched(Etched state) {
    return switch (state) {
      case AS_COOLED -> "etched as it has cooled";
      case ANNEALED -> "etched after the anneal";
      case HARDENED -> "etched hardened and tempered";
    };
  }

  /** How much is shown, and what is seen there. */
  public List<String> said(FaceAdvice face) {
    FaceSize size = face.size();
    List<String> all = new ArrayList<>();
    all.add(
        title(face)
            + ": "
            + scale(size)
            + ", "
            + Amounts.number(size.mmPerPixel(), 2)
            + " mm to a pixel.");
    all.add(shows(face));
    return all;
  }

  /** Such as {@code 96 mm by 35 mm of it}. */
  public String scale(FaceSize size) {
    return length(size.acrossMm()) + " by " + length(size.upMm()) + " of it";
  }

  /** Which lines and knots show. */
  public String shows(FaceAdvice face) {
    List<String> showing =
        face.lines().stream()
            .filter(LineReport::visible)
            .map(l -> SeamWords.says(l.joints()))
            .distinct()
            .toList();
    String lines =
        showing.isEmpty()
            ? "No line shows."
            : "A line shows at the " + String.join(", at the ", showing) + ".";
    return lines
        + knot(face).map(c -> " A knot shows where " + SeamWords.cross(c) + ".").orElse("");
  }

  /** Which lines fall on the edge of the blade. */
  public List<String> edge(EdgeLines edge) {
    List<String> all = new ArrayList<>();
    all.add(
        edge.tipMm()
                .map(
                    tip ->
                        "Blade "
                            + length(edge.lengthMm())
                            + " long and "
                            + length(edge.widthMm())
                            + " wide, its tip "
                            + length(tip)
                            + " from the left end of the bar, its edge below (dashed)")
                .orElse("Blade " + length(edge.widthMm()) + " wide, its edge on the left (dashed)")
            + edge.steel().map(s -> "; the edge lies in " + s).orElse("")
            + ".");
    for (EdgeLines.Across a : edge.across()) {
      all.add(
          "The edge crosses "
              + SeamWords.says(a.joints())
              + " at "
              + a.atMm().stream().map(this::length).collect(Collectors.joining(", "))
              + " from the tip: "
              + shows(a.visible(), a.contrast())
              + ".");
    }
    for (EdgeLines.Along a : edge.along()) {
      all.add(
          (a.within()
                  ? "The edge runs in the line of "
                  : "Along the edge, " + length(a.offMm()) + " from it, run ")
              + SeamWords.says(a.joints())
              + ": "
              + shows(a.visible(), a.contrast())
              + ".");
    }
    return all;
  }

  private static String shows(boolean visible, double contrast) {
    return (visible ? "a line shows there, contrast " : "no line shows there, contrast ")
        + Amounts.number(contrast, 2);
  }

  private static Optional<CrossingReport> knot(FaceAdvice face) {
    return CrossingReport.brightest(face.crossings()).filter(CrossingReport::visible);
  }

  private String length(double mm) {
    return Length.ofMillimetres(mm).format(units);
  }

  /** Where nothing is drawn after a soak, since there is none. */
  public static String noSoak(boolean needed) {
    return needed
        ? "No soak clears the lines within what is allowed, so there is no face after it."
        : "No soak is needed, so the face after it is the face as it is.";
  }
}
