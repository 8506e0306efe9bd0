package seamsoak.page.fire;

import java.util.List;
import java.util.Locale;
import seamsoak.face.FaceSize;
import seamsoak.face.SeamDots;
import seamsoak.plan.FaceAdvice;
import seamsoak.unit.UnitSystem;
import seamsoak.words.SeamWords;
import seamsoak.words.face.FaceWords;

/**
 * What is shown beside a test etch.
 *
 * @param desk id of the billet's desk
 * @param name of the billet
 * @param file by which what is entered names the billet
 * @param id for what is entered
 * @param unit of lengths without one
 * @param etch what may be looked at; null where nothing can be yet
 * @param computed the face that the photograph is laid beside; null where none can be drawn
 * @param why there is none; blank where there is one
 */
public record EtchView(
    String desk,
    String name,
    String file,
    String id,
    String unit,
    FireView.Etch etch,
    Computed computed,
    String why) {
  /** Pixels of the picture: a photograph's detail, and still soon drawn. */
  private static final int ACROSS = 1280;

  private static final int UP = 960;

  /**
   * A picture of the face.
   *
   * @param source what marks this picture among others of the billet
   * @param title which face, when, how etched
   * @param scale how much of it is shown
   * @param says what shows
   */
  public record Computed(
      String source,
      double acrossMm,
      double upMm,
      String title,
      String scale,
      String says,
      List<Seams> seams) {}

  /**
   * Seams in the picture.
   *
   * @param where as the file calls them
   * @param path dots on them, as drawings write them, in mm
   */
  public record Seams(String where, String path) {}

  /** What bare numbers are in. */
  public static String unit(UnitSystem units) {
    return units == UnitSystem.METRIC ? "mm" : "in";
  }

  /** How much of a face is shown, and how finely. */
  public static FaceSize size(FaceAdvice face) {
    return FaceSize.of(face.field(), 0, ACROSS, UP);
  }

  /**
   * A face as it is shown here.
   *
   * @param source what marks its picture among others of the billet
   */
  public static Computed computed(FaceAdvice face, String source, UnitSystem units) {
    FaceSize size = size(face);
    FaceWords words = new FaceWords(units);
    return new Computed(
        source,
        size.acrossMm(),
        size.upMm(),
        FaceWords.title(face),
        words.scale(size),
        words.shows(face),
        SeamDots.of(face.field(), size).stream()
            .map(d -> new Seams(SeamWords.name(d.joints()), path(d)))
            .toList());
  }

  private static String path(SeamDots seams) {
    StringBuilder path = new StringBuilder();
    seams
        .dots()
        .forEach(
            d -> path.append(String.format(Locale.ROOT, "M%.1f %.1fh0", d.across(), d.down())));
    return path.toString();
  }
}
