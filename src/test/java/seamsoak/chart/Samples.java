package seamsoak.chart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import seamsoak.chart.figure.FaceFigure;
import seamsoak.chart.figure.FadingFigure;
import seamsoak.chart.figure.Figure;
import seamsoak.chart.figure.LogFigure;
import seamsoak.chart.figure.MatrixFigure;
import seamsoak.chart.figure.Pattern;
import seamsoak.chart.figure.ScheduleFigure;
import seamsoak.chart.figure.ScheduleFigure.Band;
import seamsoak.chart.figure.ScheduleFigure.Meaning;
import seamsoak.chart.figure.ScheduleFigure.Treatment;
import seamsoak.chart.figure.SeamFigure;
import seamsoak.chart.figure.SectionFigure;
import seamsoak.chart.figure.SoakFigure;
import seamsoak.chart.figure.TilePattern;
import seamsoak.chart.figure.Unit;
import seamsoak.face.FacePicture;
import seamsoak.face.FaceSize;
import seamsoak.pairing.PairMatrix;
import seamsoak.pairing.Rating;
import seamsoak.unit.UnitSystem;

/**
 * Figures like those of a mosaic billet, and the worst that an input can bring. Made-up numbers.
 */
final class Samples {
  static final String NASTY = "<b>&\"' name";
  static final String LONG =
      "A nine-patch chef's billet with a very long name that goes on about the winter in which it"
          + " was forged, the borrowed hammer, and Donaudampfschifffahrtsgesellschaftskapitän"
              .repeat(2);

  private Samples() {}

  static MatrixFigure matrix(String id, int names) {
    List<String> steels = new ArrayList<>();
    List<List<PairMatrix.Cell>> cells = new ArrayList<>();
    for (int i = 0; i < names; i++) {
      steels.add((i % 7 == 3 ? "90MnCrV" : "10") + i);
      List<PairMatrix.Cell> row = new ArrayList<>();
      for (int j = 0; j <= i; j++) {
        row.add(
            switch ((i + j) % 3) {
              case 0 -> pair(Rating.FITS, ".", "");
              case 1 -> pair(Rating.WATCH, "m", "martensite");
              default -> pair(Rating.CLASH, "O", "chromium oxide");
            });
      }
      cells.add(row);
    }
    return new MatrixFigure(
        id,
        "Which steels go together",
        "A third of them fit",
        "A triangle of made-up steels.",
        new PairMatrix(steels, cells));
  }

  private static PairMatrix.Cell pair(Rating rating, String letter, String title) {
    return new PairMatrix.Cell("a", "b", rating, title, title, letter);
  }

  private static MatrixFigure nastyMatrix() {
    PairMatrix.Cell alike = pair(Rating.FITS, ".", "");
    return new MatrixFigure(
        "matrix-nasty",
        NASTY,
        LONG,
        NASTY,
        new PairMatrix(
            List.of(NASTY, "C0.79 Mn0.48 Si0.25 Cr0.05 Ni0.03 Mo0.01"),
            List.of(List.of(alike), List.of(pair(Rating.CLASH, "X", LONG), alike))));
  }

  private static LogFigure heat(String id, String title, double kelvinOut) {
    ScheduleFigure.Corner cold = new ScheduleFigure.Corner(4, 20);
    ScheduleFigure.Corner hot = new ScheduleFigure.Corner(20, 1121);
    ScheduleFigure.Corner later = new ScheduleFigure.Corner(26, 1121 - kelvinOut);
    ScheduleFigure.Corner end = new ScheduleFigure.Corner(44, 900);
    return new LogFigure(
        id,
        title,
        "This heat was worth 22 min at 2050 F (1120 C), 19 min to 24 min.",
        "A made-up heat with a gap and a spike.",
        UnitSystem.BOTH,
        List.of(
            new LogFigure.Curve(
                "the air, as read", List.of(List.of(cold, hot), List.of(later, end))),
            new LogFigure.Curve("middle of the piece", List.of(List.of(cold, later, end)))),
        List.of(new ScheduleFigure.Corner(30, 1372), new ScheduleFigure.Corner(35, -200)),
        List.of(new LogFigure.Span(0, 4), new LogFigure.Span(20, 26)),
        List.of(new LogFigure.Level("austenite from", 725), new LogFigure.Level("planned", 1121)));
  }

  static Map<String, Figure> all() {
    Map<String, Figure> all = new LinkedHashMap<>();
    all.put("matrix", matrix("matrix", 8));
    all.put("matrix-large", matrix("matrix-large", 59));
    all.put("matrix-nasty", nastyMatrix());
    all.put("schedule", schedule("schedule", UnitSystem.BOTH));
    all.put("seam", seam("seam", UnitSystem.BOTH));
    all.put("soak", soak("soak", UnitSystem.BOTH));
    all.put("fading", fading("fading", UnitSystem.BOTH));
    all.put("section", section("section", UnitSystem.BOTH));
    all.put("schedule-faces", faces());
    all.put("face", face("face", "The face", 113, 37));
    all.put("face-nasty", face("face-nasty", NASTY + LONG, 28, 28));
    all.put("fading-us", fading("fading-us", UnitSystem.US));
    all.put("fading-nasty", nastyFading());
    all.put("section-metric", section("section-metric", UnitSystem.METRIC));
    all.put("section-nasty", nastySection());
    all.put("schedule-us", schedule("schedule-us", UnitSystem.US));
    all.put("seam-us", seam("seam-us", UnitSystem.US));
    all.put("soak-metric", soak("soak-metric", UnitSystem.METRIC));
    all.put("schedule-one", steps("schedule-one", 1));
    all.put("schedule-eight", steps("schedule-eight", 8));
    all.put("schedule-twenty", steps("schedule-twenty", 20));
    all.put("schedule-thirty", steps("schedule-thirty", 30));
    all.put("schedule-nasty", nastySchedule());
    all.put("seam-flat", flatSeam());
    all.put("seam-unlike", unlikeSeam());
    all.put("soak-one", oneOption());
    all.put("soak-none", noneClears());
    all.put("soak-nasty", nastySoak());
    all.put("heat", heat("heat", "A real heat of 1084", 50));
    all.put("heat-nasty", heat("heat-nasty", NASTY + LONG, 3));
    return all;
  }

  static Treatment step(String name, double celsius, double minutes, double rise, double cool) {
    List<ScheduleFigure.Corner> curve = new ArrayList<>();
    curve.add(new ScheduleFigure.Corner(100, 480));
    curve.add(new ScheduleFigure.Corner(100 + rise, celsius));
    curve.add(new ScheduleFigure.Corner(100 + rise + minutes, celsius));
    for (int i = 1; i <= 8; i++) {
      double temperature = 25 + (celsius - 25) * Math.pow((480 - 25) / (celsius - 25), i / 8.0);
      curve.add(new ScheduleFigure.Corner(100 + rise + minutes + cool * i / 8, temperature));
    }
    String detail =
        Unit.temperature(UnitSystem.BOTH, celsius, celsius)
            + ", "
            + Math.round(minutes)
            + " min, air";
    return new Treatment(name, detail, curve, List.of());
  }

  static List<Band> bands() {
    return List.of(
        new Band("Ac1 80CrV2", Meaning.CHANGE, 728, 748),
        new Band("Ac1 75Ni8", Meaning.CHANGE, 690, 712),
        new Band("Ac3 80CrV2", Meaning.CHANGE, 755, 780),
        new Band("Ac3 75Ni8", Meaning.CHANGE, 725, 750),
        new Band("forging limit", Meaning.LIMIT, 1150, 1150),
        new Band("black heat", Meaning.GUIDE, 480, 480));
  }

  static ScheduleFigure schedule(String id, UnitSystem units) {
    return new ScheduleFigure(
        id,
        "Mosaic billet of 80CrV2 and 75Ni8: heat-treatment schedule",
        "Soak 12 min, normalize once, refine three times",
        "Soak at 1120 C for 12 min; normalize at 860 C; refine at 830, 800 and 780 C, 5 min each.",
        units,
        List.of(
            step("soak", 1120, 12, 8, 6),
            step("normalize", 860, 10, 5, 4),
            step("refine 1", 830, 5, 4, 4),
            step("refine 2", 800, 5, 4, 4),
            step("refine 3", 780, 5, 4, 4)),
        bands());
  }

  static ScheduleFigure steps(String id, int count) {
    List<Treatment> steps = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      steps.add(step("step " + (i + 1), 1100 - 15 * i, i == 0 ? 600 : 5, 5, 4));
    }
    return new ScheduleFigure(
        id,
        "A schedule of " + count,
        "",
        "As many steps as " + count,
        UnitSystem.BOTH,
        steps,
        bands());
  }

  static ScheduleFigure nastySchedule() {
    List<Band> bands = new ArrayList<>();
    for (int i = 0; i < 14; i++) {
      bands.add(new Band(NASTY + " " + i + " and then more", Meaning.values()[i % 3], 760, 760));
    }
    return new ScheduleFigure(
        "schedule-nasty",
        LONG + NASTY,
        LONG,
        NASTY,
        UnitSystem.BOTH,
        List.of(
            new Treatment(NASTY, LONG, List.of(new ScheduleFigure.Corner(0, 900)), List.of()),
            step(LONG, 850, 5, 4, 4)),
        bands);
  }

  /** A long temper after short cycles, its face ahead of its core. */
  static ScheduleFigure faces() {
    List<Treatment> steps = new ArrayList<>();
    for (String name : List.of("normalize", "refine 1", "harden", "temper 1", "temper 2")) {
      double celsius = name.startsWith("temper") ? 200 : 830;
      List<ScheduleFigure.Corner> core =
          List.of(
              new ScheduleFigure.Corner(0, 20),
              new ScheduleFigure.Corner(8, celsius),
              new ScheduleFigure.Corner(name.startsWith("temper") ? 128 : 13, celsius),
              new ScheduleFigure.Corner(name.startsWith("temper") ? 160 : 16, 40));
      List<ScheduleFigure.Corner> face =
          core.stream()
              .map(
                  at ->
                      new ScheduleFigure.Corner(at.minutes(), Math.min(celsius, at.celsius() + 30)))
              .toList();
      steps.add(new Treatment(name, "1525 F (830 C), 5 min, still air", core, face));
    }
    return new ScheduleFigure(
        "schedule-faces", "Core and face", "", "Core and face", UnitSystem.BOTH, steps, bands());
  }

  static FadingFigure fading(String id, UnitSystem units) {
    List<FadingFigure.Column> steps = new ArrayList<>();
    for (String name : List.of("weld", "draw", "grind", "restack", "weld", "unjacket", "roll")) {
      steps.add(new FadingFigure.Column(Integer.toString(5 + steps.size()), name));
    }
    for (String name : List.of("soak", "normalize", "refine 1", "refine 2", "stress relief")) {
      steps.add(new FadingFigure.Column("", name));
    }
    return new FadingFigure(
        id,
        "How the lines fade",
        "No line shows at the end",
        "Two sets of seams.",
        units,
        steps,
        5,
        List.of(
            faded("restack joints (step 4)", 12, 0, 4), faded("tile joints (step 9)", 12, 4, 2.5)));
  }

  private static FadingFigure.Trail faded(String name, int steps, int made, double contrast) {
    List<FadingFigure.State> states = new ArrayList<>();
    for (int i = 0; i < steps; i++) {
      double left = contrast * Math.exp(-0.25 * (i - made));
      states.add(
          i < made
              ? new FadingFigure.State(OptionalDouble.empty(), OptionalDouble.empty(), false)
              : new FadingFigure.State(
                  OptionalDouble.of(left),
                  left > 1 ? OptionalDouble.of(0.5 + 0.3 * i) : OptionalDouble.empty(),
                  left > 1));
    }
    return new FadingFigure.Trail(name, states);
  }

  static FadingFigure nastyFading() {
    List<FadingFigure.Column> steps = new ArrayList<>();
    for (int i = 0; i < 45; i++) {
      steps.add(new FadingFigure.Column(i < 30 ? Integer.toString(i) : "", "normalize"));
    }
    return new FadingFigure(
        "fading-nasty",
        LONG + NASTY,
        NASTY,
        NASTY,
        UnitSystem.BOTH,
        steps,
        15,
        List.of(
            faded(LONG, 45, 0, 0.01),
            faded(NASTY, 45, 3, 0.01),
            faded("c", 45, 5, 0),
            faded("d", 45, 44, 0.01)));
  }

  private static FaceFigure face(String id, String name, int acrossMm, int upMm) {
    List<FaceFigure.Panel> panels = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      byte[] levels = new byte[acrossMm * upMm];
      for (int k = 0; k < levels.length; k++) {
        levels[k] = (byte) (k * (i + 1));
      }
      FaceSize size = new FaceSize(acrossMm, upMm, 1);
      panels.add(new FaceFigure.Panel(name + i, name + " shows.", new FacePicture(size, levels)));
    }
    return new FaceFigure(id, name, "", "Three times the same.", panels);
  }

  static SectionFigure section(String id, UnitSystem units) {
    Pattern bar = stripes(0.030, 0.020, 5);
    TilePattern tiles = new TilePattern(bar, Math.PI / 4, 3, 1, 1, 1);
    return new SectionFigure(
        id,
        "Sections of a bar",
        "From 0 stack to 3 tile",
        "A stack and tiles.",
        units,
        List.of(
            new SectionFigure.Panel(
                "0 stack",
                List.of("1.18 x 0.79 in (30.0 x 20.0 mm)"),
                List.of(new SectionFigure.View("", 30, 20, 0, 0, false, bar))),
            new SectionFigure.Panel(
                "3 tile",
                List.of("1.26 x 0.39 in (32.0 x 10.0 mm)", "tile faces at 45° to the face"),
                List.of(
                    new SectionFigure.View(
                        "from above", 40, 32, 0, 1, true, tiles.top(0.040, 0.030)),
                    new SectionFigure.View(
                        "cut lengthwise", 40, 10, 0, 1, true, tiles.side(0.040, 0.008))))),
        List.of("80CrV2", "75Ni8"),
        List.of(
            new SectionFigure.SeamsOf(1, "restack joints (step 1)"),
            new SectionFigure.SeamsOf(3, "tile joints (step 3)")),
        40);
  }

  private static Pattern stripes(double width, double thickness, int layers) {
    List<Pattern.Patch> patches = new ArrayList<>();
    double t = thickness / layers;
    for (int i = 0; i < layers; i++) {
      patches.add(
          new Pattern.Patch(
              i % 2,
              List.of(
                  new Pattern.Spot(0, i * t),
                  new Pattern.Spot(width, i * t),
                  new Pattern.Spot(width, (i + 1) * t),
                  new Pattern.Spot(0, (i + 1) * t))));
    }
    Pattern.Seam middle =
        new Pattern.Seam(
            1, new Pattern.Spot(0, thickness / 2), new Pattern.Spot(width, thickness / 2));
    return new Pattern(width, thickness, patches, List.of(middle));
  }

  static SectionFigure nastySection() {
    List<SectionFigure.Panel> panels = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      Pattern pattern = i % 2 == 0 ? null : stripes(0.2, 0.001 * (i + 1), 60);
      panels.add(
          new SectionFigure.Panel(
              i + " " + NASTY + LONG,
              List.of(LONG, NASTY, LONG),
              List.of(new SectionFigure.View("", 200, i + 1, 0, 0, false, pattern))));
    }
    List<SectionFigure.SeamsOf> seams = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      seams.add(new SectionFigure.SeamsOf(i, LONG));
    }
    return new SectionFigure(
        "section-nasty",
        NASTY,
        LONG,
        NASTY,
        UnitSystem.US,
        panels,
        List.of(NASTY, LONG, "c", "d", "e"),
        seams,
        200);
  }

  static SeamFigure.Curve dip(String label, double lowest, double even, double width) {
    List<SeamFigure.Sample> points = new ArrayList<>();
    for (int i = 0; i <= 60; i++) {
      double mm = 1.5 * i / 60;
      double carbon = even - (even - lowest) * Math.exp(-Math.pow(mm / width, 2));
      points.add(new SeamFigure.Sample(mm, carbon));
    }
    return new SeamFigure.Curve(label, points);
  }

  static SeamFigure seam(String id, UnitSystem units) {
    return new SeamFigure(
        id,
        "Carbon across a seam of the restack, 80CrV2 and 75Ni8",
        "The soak lifts the seam from 0.45 to 0.72 % carbon: no line shows",
        "Carbon at the seam is 0.45 % before, 0.72 % after the soak, 0.73 % after the schedule.",
        units,
        List.of(
            dip("before", 0.45, 0.80, 0.33),
            dip("after the soak", 0.72, 0.795, 0.62),
            dip("after the schedule", 0.732, 0.795, 0.66)),
        List.of(new SeamFigure.Level("even", 0.79), new SeamFigure.Level("shows below", 0.69)));
  }

  static SeamFigure flatSeam() {
    return new SeamFigure(
        "seam-flat",
        "A seam with nothing to see",
        "",
        "Carbon is 0.800 % everywhere.",
        UnitSystem.BOTH,
        List.of(
            dip("before", 0.7995, 0.80, 0.3),
            dip("after a soak with a name as long as a winter evening in the north", 0.8, 0.8, 1),
            dip("after", 0.8, 0.8, 1),
            dip(NASTY, 0.8, 0.8, 1)),
        List.of(new SeamFigure.Level("even", 0.80), new SeamFigure.Level("shows below", 0.70)));
  }

  static SeamFigure unlikeSeam() {
    List<SeamFigure.Sample> before = new ArrayList<>();
    List<SeamFigure.Sample> after = new ArrayList<>();
    for (int i = -50; i <= 50; i++) {
      double mm = i / 50.0;
      before.add(new SeamFigure.Sample(mm, i < 0 ? 1.25 : 0.05));
      after.add(new SeamFigure.Sample(mm, 0.7 - 0.2 * Math.tanh(mm * 3) + (i < 0 ? 0.08 : -0.05)));
    }
    return new SeamFigure(
        "seam-unlike",
        "Two unlike steels",
        "Carbon has crossed to half-way",
        "From 1.25 and 0.05 % to about 0.98 and 0.45 %.",
        UnitSystem.BOTH,
        List.of(new SeamFigure.Curve("start", before), new SeamFigure.Curve("after 1 h", after)),
        List.of());
  }

  static SoakFigure.Option option(double celsius, double minutes) {
    boolean day = minutes > 1440;
    return new SoakFigure.Option(
        celsius,
        day ? OptionalDouble.empty() : OptionalDouble.of(minutes),
        minutes / 1.5 > 1440 ? OptionalDouble.empty() : OptionalDouble.of(minutes / 1.5),
        minutes * 1.5 > 1440 ? OptionalDouble.empty() : OptionalDouble.of(minutes * 1.5),
        day
            ? OptionalDouble.empty()
            : OptionalDouble.of(90 * Math.exp(-10250 / (celsius + 273)) * Math.sqrt(minutes)),
        day ? OptionalDouble.empty() : OptionalDouble.of(9 - (celsius - 780) / 65));
  }

  static List<SoakFigure.Limit> limits() {
    return List.of(
        new SoakFigure.Limit("forging limit", 1150, false),
        new SoakFigure.Limit("burning line", 1215, false),
        new SoakFigure.Limit("refused", 1265, true));
  }

  static SoakFigure soak(String id, UnitSystem units) {
    List<SoakFigure.Option> options = new ArrayList<>();
    for (int celsius = 780; celsius <= 1180; celsius += 50) {
      double kelvin = celsius + 273.15;
      options.add(option(celsius, 8 * Math.exp(26000 * (1 / kelvin - 1 / 1373.15))));
    }
    return new SoakFigure(
        id,
        "Mosaic billet of 80CrV2 and 75Ni8: soak to clear the lines",
        "Soak at 2050 F (1120 C) for 6 min",
        "Six minutes clear the lines at 1120 C; 54 min would be needed at 980 C.",
        units,
        options,
        limits(),
        OptionalDouble.of(60),
        Optional.of(new SoakFigure.Pick(1120, 6.1, "2050 F (1120 C), 6 min (4 to 9)")));
  }

  static SoakFigure oneOption() {
    return new SoakFigure(
        "soak-one",
        "One temperature only",
        "",
        "Twelve minutes at 1100 C.",
        UnitSystem.BOTH,
        List.of(option(1100, 12)),
        List.of(),
        OptionalDouble.empty(),
        Optional.empty());
  }

  static SoakFigure noneClears() {
    return new SoakFigure(
        "soak-none",
        "Nothing clears within a day",
        "No soak clears the lines within 1 h",
        "Longer than a day at 780 and 830 C.",
        UnitSystem.BOTH,
        List.of(option(780, 9000), option(830, 2000)),
        limits(),
        OptionalDouble.of(60),
        Optional.empty());
  }

  static SoakFigure nastySoak() {
    return new SoakFigure(
        "soak-nasty",
        NASTY + LONG,
        LONG,
        NASTY,
        UnitSystem.BOTH,
        List.of(option(1000, 0), option(1001, 0.001), option(1050, 1e-9), option(1100, 5000)),
        List.of(
            new SoakFigure.Limit(NASTY, 1100, false),
            new SoakFigure.Limit(LONG, 1100, true),
            new SoakFigure.Limit("", 1101, true)),
        OptionalDouble.of(100000),
        Optional.of(new SoakFigure.Pick(1050, 0, LONG)));
  }
}
