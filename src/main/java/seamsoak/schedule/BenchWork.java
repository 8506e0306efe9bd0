package seamsoak.schedule;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import seamsoak.billet.Blade;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Edge;
import seamsoak.state.StageReport;
import seamsoak.unit.Length;

/** Grinding to the blade's section, and the etch that shows whether the lines are gone. */
record BenchWork(Course course) {
  /** Thinner than this no blade is left to harden, m. */
  private static final double THINNEST_METRES = 0.5e-3;

  /** Ground off beyond the skin, m; judgement. */
  private static final double MARGIN_METRES = 0.1e-3;

  /**
   * The section to grind to.
   *
   * @param thicknessMetres of the blade
   * @param widthMetres of the blade
   * @param allowanceMetres depth that has to come off each face, a margin included
   * @param tooThick whether the section stated leaves skin on it, or is not in the billet
   */
  record Section(
      double thicknessMetres, double widthMetres, double allowanceMetres, boolean tooThick) {}

  static Section section(Course course) {
    Blade blade = course.billet.blade();
    Workpiece piece = course.piece();
    double skin = StageReport.softMetres(piece) + MARGIN_METRES;
    double clean = piece.size().thicknessMetres() - 2 * skin;
    double wanted = blade.thickness().map(Length::metres).orElse(clean);
    double thick =
        Math.max(
            Math.min(THINNEST_METRES, piece.size().thicknessMetres() / 2), Math.min(wanted, clean));
    double width =
        Math.min(
            blade.width().map(Length::metres).orElse(Double.POSITIVE_INFINITY),
            Math.max(thick, piece.size().widthMetres() - 2 * skin));
    return new Section(thick, Math.max(thick, width), skin, wanted > clean + 1e-5);
  }

  void grind() {
    Section to = section(course);
    Workpiece piece = course.piece();
    double depth = (piece.size().thicknessMetres() - to.thicknessMetres()) / 2;
    double width = Math.min(to.widthMetres(), piece.size().widthMetres());
    course.grind(
        new ScheduleStep(
            "grind",
            Heater.BENCH,
            "Grind "
                + new Length(depth).format(course.units)
                + " off each face, to "
                + new Length(to.thicknessMetres()).format(course.units)
                + ", and profile the blade; leave the edge as thick as a coin",
            (jacketed(piece)
                    ? "the jacket and the skin short of carbon below it are "
                    : "the skin short of carbon is ")
                + new Length(to.allowanceMetres() - MARGIN_METRES).format(course.units)
                + " deep on each face, edges too, and would stay soft"
                + (to.tooThick()
                    ? "; the billet is too thin to leave the thickness that was asked for"
                    : ""),
            List.of(
                "measure both faces: as much off one as off the other",
                "a file bites alike all over; where it digs in, skin is left"),
            List.of(),
            Edge.SEALED,
            Set.of(),
            Optional.empty()),
        piece.shaped(to.thicknessMetres(), width, course.shop.resolution()));
  }

  static boolean jacketed(Workpiece piece) {
    return piece.jacketMetres(piece.thickness()) > 0;
  }

  void testEtch() {
    course.carry(
        new ScheduleStep(
            "test etch",
            Heater.BENCH,
            "Polish a flat to 220 grit or finer and etch it briefly in ferric chloride",
            "last chance to see what is left of the lines before hardening; after an anneal they show"
                + " most",
            List.of(
                "under a loupe: a light line is steel short of carbon; a black gap that holds"
                    + " etchant or catches a needle is an open seam",
                "a faint gray band may be pearlite: hardened steel tells better"),
            List.of(),
            Edge.SEALED,
            Set.of(),
            Optional.empty()),
        List.of());
  }
}
