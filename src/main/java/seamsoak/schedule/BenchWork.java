package seamsoak.schedule;

import java.util.List;
import seamsoak.billet.Blade;
import seamsoak.billet.Size;
import seamsoak.billet.Workpiece;
import seamsoak.state.Skin;
import seamsoak.unit.Length;

/** Grinding to the blade's section, and the etch that shows whether the lines are gone. */
record BenchWork(Course course) {
  /** Thinner than this no blade is left to harden, m. */
  private static final double THINNEST_METRES = 0.5e-3;

  /** Ground off beyond the skin, m; judgement. */
  private static final double MARGIN_METRES = 0.1e-3;

  private static final double SAME_METRES = 1e-5;

  /**
   * The section to grind to.
   *
   * @param thicknessMetres of the blade
   * @param widthMetres of the blade
   * @param skin on the faces before
   * @param tooThin whether the billet is, for the thickness stated: soft skin would stay on
   * @param tooNarrow whether it is for the width stated
   */
  record Section(
      double thicknessMetres, double widthMetres, Skin skin, boolean tooThin, boolean tooNarrow) {}

  static Section section(Course course) {
    Blade blade = course.billet().blade();
    Workpiece piece = course.piece();
    Skin skin = course.skin();
    double thick = piece.size().thicknessMetres() - 2 * (skin.flats().offMetres() + MARGIN_METRES);
    double wide = piece.size().widthMetres() - 2 * (skin.sides().offMetres() + MARGIN_METRES);
    double wantedThick = blade.thickness().map(Length::metres).orElse(thick);
    double wantedWide = blade.width().map(Length::metres).orElse(wide);
    double thickness =
        Math.max(
            Math.min(THINNEST_METRES, piece.size().thicknessMetres() / 2),
            Math.min(wantedThick, thick));
    return new Section(
        thickness,
        Math.max(thickness, Math.min(wantedWide, wide)),
        skin,
        wantedThick > thick + SAME_METRES,
        wantedWide > wide + SAME_METRES);
  }

  /** The section of a piece that was ground already. */
  static Section asItIs(Course course) {
    Size size = course.piece().size();
    return new Section(
        size.thicknessMetres(),
        Math.max(size.thicknessMetres(), size.widthMetres()),
        course.skin(),
        false,
        false);
  }

  static Course groundAndEtched(Course course) {
    return etched(new BenchWork(course).grind());
  }

  static Course etched(Course course) {
    return new BenchWork(course).testEtch();
  }

  private Course grind() {
    Section to = section(course);
    Workpiece piece = course.piece();
    double depth = (piece.size().thicknessMetres() - to.thicknessMetres()) / 2;
    double width = Math.min(to.widthMetres(), piece.size().widthMetres());
    return course.ground(
        new ScheduleStep(
            StepName.only(StepKind.GRIND),
            Fire.NONE,
            List.of(),
            new Task.Grind(
                depth,
                to.thicknessMetres(),
                to.skin().sides().offMetres() + MARGIN_METRES,
                course.billet().blade().edge().map(Length::metres),
                to.skin(),
                to.tooThin()),
            List.of(Check.Look.BOTH_FACES_ALIKE, Check.Look.FILE_FINDS_SKIN)),
        piece.shaped(to.thicknessMetres(), width, course.shop().resolution()));
  }

  static boolean jacketed(Workpiece piece) {
    return piece.jacketMetres(piece.thickness()) > 0;
  }

  private Course testEtch() {
    return course.carry(
        new ScheduleStep(
            StepName.only(StepKind.TEST_ETCH),
            Fire.NONE,
            List.of(),
            new Task.TestEtch(),
            List.of(Check.Look.LIGHT_LINE, Check.Look.GRAY_BAND)));
  }
}
