package seamsoak.schedule;

import java.util.List;
import seamsoak.billet.Blade;
import seamsoak.billet.Workpiece;
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
    Blade blade = course.billet().blade();
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

  static Course groundAndEtched(Course course) {
    return new BenchWork(new BenchWork(course).grind()).testEtch();
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
                to.allowanceMetres() - MARGIN_METRES,
                jacketed(piece),
                to.tooThick()),
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
