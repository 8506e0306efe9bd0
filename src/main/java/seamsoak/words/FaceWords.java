package seamsoak.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.billet.Seen.Etched;
import seamsoak.billet.Step;
import seamsoak.face.FaceSize;
import seamsoak.plan.FaceAdvice;
import seamsoak.state.CrossingReport;
import seamsoak.state.LineReport;
import seamsoak.unit.Length;
import seamsoak.unit.UnitSystem;

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

  /** All that is seen, in two or three sentences. */
  public List<String> said(FaceAdvice face) {
    FaceSize size = face.size();
    List<String> all = new ArrayList<>();
    all.add(
        title(face)
            + ": "
            + length(size.acrossMm())
            + " by "
            + length(size.upMm())
            + " of it, "
            + Amounts.number(size.mmPerPixel(), 2)
            + " mm to a pixel.");
    List<String> showing =
        face.lines().stream()
            .filter(LineReport::visible)
            .map(l -> SeamWords.says(l.joints()))
            .distinct()
            .toList();
    all.add(
        showing.isEmpty()
            ? "No line shows."
            : "A line shows at the " + String.join(", at the ", showing) + ".");
    knot(face).map(c -> "A knot shows where " + SeamWords.cross(c) + ".").ifPresent(all::add);
    return all;
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
