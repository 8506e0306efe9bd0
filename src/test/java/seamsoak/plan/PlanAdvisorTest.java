package seamsoak.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Edge;
import seamsoak.data.DataFolder;
import seamsoak.heat.HeatCurve;
import seamsoak.report.JsonReport;
import seamsoak.safety.CautionTable;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.ScheduleAdvisor;
import seamsoak.schedule.StepKind;
import seamsoak.soak.Clearing;
import seamsoak.soak.SoakAdvice.Recommended;
import seamsoak.soak.SoakAdvice.SoakOption;
import seamsoak.soak.SoakNote;
import seamsoak.soak.ToCome;
import seamsoak.state.CrossingReport;
import seamsoak.state.Etch;
import seamsoak.state.LineReport;
import seamsoak.state.Preform;
import seamsoak.state.Progress;
import seamsoak.state.StageReport;
import seamsoak.support.Demos;
import seamsoak.support.Seams;
import seamsoak.support.Walks;
import seamsoak.trace.Trace;
import seamsoak.unit.UnitSystem;
import seamsoak.words.SoakWords;

class PlanAdvisorTest {
  private static final Set<StepKind> CYCLES =
      Set.of(StepKind.SOAK, StepKind.NORMALIZE, StepKind.REFINE);

  private static final int SAMPLES = 24;
  private static Billet mosaic;
  private static Advice advice;

  @BeforeAll
  static void adviseTheDemo() {
    mosaic = Demos.of("mosaic");
    advice = advise(mosaic);
  }

  private static Advice advise(Billet billet) {
    CautionTable cautions = CautionTable.load(DataFolder.packed());
    return new PlanAdvisor(Walks.CORRELATIONS, cautions, SAMPLES).advise(billet, Progress.NONE);
  }

  /** All that is told of it. */
  private static String told(Advice advice) {
    return JsonReport.plan(advice, List.of(), Trace.NONE);
  }

  /** The likely case first, then all: each just as it is when it is asked for alone. */
  @Test
  void inStagesItIsTheSame() {
    CautionTable cautions = CautionTable.load(DataFolder.packed());
    List<Advice> likely = new ArrayList<>();
    Advice whole =
        new PlanAdvisor(Walks.CORRELATIONS, cautions, SAMPLES)
            .advise(mosaic, Progress.NONE, likely::add);
    assertEquals(told(advice), told(whole));
    Advice alone = new PlanAdvisor(Walks.CORRELATIONS, cautions, 0).advise(mosaic, Progress.NONE);
    assertEquals(1, likely.size());
    assertEquals(told(alone), told(likely.get(0)));
  }

  @Test
  void onlyTheTileSeamsOfTheDemoStillShow() {
    List<LineReport> showing = advice.soak().lines().stream().filter(LineReport::visible).toList();
    assertEquals(1, showing.size());
    assertEquals(11, showing.get(0).step());
  }

  /** A crossing lacks more than either seam and clears after both. */
  @Test
  void whereSeamsCrossIsDeepestAndClearsLast() {
    LineReport tiles =
        advice.soak().lines().stream().filter(l -> l.step() == 11).findFirst().orElseThrow();
    List<CrossingReport> knots =
        advice.soak().crossings().stream().filter(c -> c.first().equals(tiles.joints())).toList();
    assertEquals(2, knots.size(), "with both restacks");
    for (CrossingReport c : knots) {
      assertTrue(c.seamPct() < tiles.seamPct());
      assertTrue(c.minutes().orElseThrow() > tiles.minutes().orElseThrow());
    }
    assertTrue(advice.soak().advice().stream().anyMatch(n -> n instanceof SoakNote.LastToClear));
  }

  @Test
  void hotterNeverNeedsLonger() {
    List<SoakOption> options = advice.soak().options();
    assertTrue(options.size() > 30);
    for (int i = 1; i < options.size(); i++) {
      assertEquals(10, options.get(i).temperatureC() - options.get(i - 1).temperatureC(), 1e-9);
      double before = options.get(i - 1).minutes().orElse(Double.POSITIVE_INFINITY);
      assertTrue(options.get(i).minutes().orElse(Double.POSITIVE_INFINITY) <= before);
    }
  }

  @Test
  void theBandHoldsTheMiddle() {
    for (SoakOption o : advice.soak().options()) {
      if (o.minutes().isPresent()) {
        assertTrue(o.minutesLow().orElseThrow() <= o.minutes().get(), o.toString());
        assertTrue(
            o.minutesHigh().orElse(Double.POSITIVE_INFINITY) >= o.minutes().get(), o.toString());
        assertTrue(o.metalLossMm().orElseThrow() > 0);
        assertTrue(o.skinMm().orElseThrow() > 0);
      }
    }
  }

  @Test
  void theRecommendedSoakKeepsToTheLimitsAndReallyClears() {
    Recommended r = advice.soak().recommended().orElseThrow();
    assertTrue(r.temperatureC() <= advice.soak().highestForgingC());
    assertTrue(r.minutes() <= mosaic.soak().mostTaken().minutes());
    assertTrue(advice.goesAhead());
    Shop shop = new Shop(Walks.CORRELATIONS, Assumptions.USUAL, Resolution.FINE);
    Workpiece end = Walks.last(Walks.walk(mosaic)).piece();
    Etch blade = toCome(shop).finished().at(0.5);
    assertTrue(Clearing.of(end, blade, shop).anyShows());
    Workpiece after = soakedAndCycled(end, r.temperatureC(), r.minutes(), shop);
    assertFalse(Clearing.of(after, blade, shop).anyShows());
  }

  @Test
  void theMinutesOfAnOptionAreWhereTheLineGoes() {
    Shop shop = new Shop(Walks.CORRELATIONS, Assumptions.USUAL, Resolution.FINE);
    Workpiece end = Walks.last(Walks.walk(mosaic)).piece();
    SoakOption at1150 =
        advice.soak().options().stream()
            .filter(o -> o.temperatureC() == 1150)
            .findFirst()
            .orElseThrow();
    for (double part : new double[] {0.97, 1.03}) {
      Workpiece after = soakedAndCycled(end, 1150, part * at1150.minutes().orElseThrow(), shop);
      assertEquals(part < 1, Clearing.of(after, toCome(shop).finished().at(0.5), shop).anyShows());
    }
  }

  private static ToCome toCome(Shop shop) {
    return new ScheduleAdvisor(
            mosaic, shop, CautionTable.load(DataFolder.packed()), Walks.last(Walks.walk(mosaic)))
        .toCome();
  }

  private static Workpiece soakedAndCycled(
      Workpiece end, double celsius, double minutes, Shop shop) {
    List<HeatCurve> heats = new ArrayList<>();
    heats.add(HeatCurve.riseAndHold(Shop.DULL_KELVIN, celsius + 273.15, 300, minutes * 60));
    heats.addAll(toCome(shop).cycles());
    Workpiece piece = end;
    for (HeatCurve heat : heats) {
      piece = piece.heated(heat, Edge.SEALED, Edge.SEALED, shop.solver()).piece();
    }
    return piece;
  }

  @Test
  void twoRunsSayTheSame() {
    assertEquals(told(advice), told(advise(mosaic)));
  }

  @Test
  void theScheduleComesDownThroughTheCriticalRangeStepByStep() {
    ScheduleAdvice schedule = advice.schedule();
    assertEquals(
        List.of(
            "cool-down",
            "soak",
            "normalize",
            "refine 1",
            "refine 2",
            "anneal",
            "grind",
            "test etch",
            "stress relief",
            "harden",
            "temper 1",
            "temper 2"),
        schedule.steps().stream().map(s -> s.step().words()).toList());
    double upper =
        schedule.critical().stream().mapToDouble(c -> c.upperC().orElseThrow()).max().orElseThrow();
    double last = Double.POSITIVE_INFINITY;
    double end = 20;
    for (ScheduleAdvice.Segment s : schedule.segments()) {
      assertTrue(s.minutes() > 0, s.toString());
      if (s.kind() == ScheduleAdvice.Segment.Kind.HOLD && CYCLES.contains(s.step().kind())) {
        assertTrue(s.toC() > upper + 15, "all austenite: " + s);
        assertTrue(s.toC() < last, "cooler each time: " + s);
        assertTrue(s.task().isPresent());
        assertFalse(s.checks().isEmpty());
        last = s.toC();
      }
      boolean fresh = s.fromC() == 20 || s.step().kind() == StepKind.COOL_DOWN;
      assertTrue(fresh || Math.abs(s.fromC() - end) < 1e-6, "joined end to end: " + s);
      end = s.toC();
    }
    assertEquals(schedule.steps().size(), schedule.after().size());
    ScheduleAdvice.After cycled = after(schedule, "refine 2");
    assertEquals(0, cycled.linesVisible());
    assertTrue(
        cycled.grainAstm() > after(schedule, "soak").grainAstm() + 3, "finer than after the soak");
  }

  private static ScheduleAdvice.After after(ScheduleAdvice schedule, String step) {
    return schedule.after().stream()
        .filter(a -> a.step().words().equals(step))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void nothingToClearIsAnAnswer() {
    Advice none =
        advise(
            Walks.bar("1084", "10 mm x 30 mm x 100 mm", "{ \"do\": \"cool\", \"in\": \"air\" }"));
    assertEquals(0, none.soak().recommended().orElseThrow().minutes());
    assertEquals(Optional.of(100.0), none.soak().goneAlreadyPct());
    assertTrue(none.goesAhead());
    assertEquals("normalize", none.schedule().steps().get(0).step().words(), "it is cold already");
    assertEquals(Optional.empty(), none.seam());
  }

  @Test
  void whatNoAllowedSoakClearsIsSaidWithWhatWouldHelp() {
    Billet hasty =
        Walks.billet(
            """
            { "stack": { "layers": 1, "steels": ["1084"], "thickness": ["30 mm"],
                "width": "30 mm", "length": "200 mm" },
              "steps": [
                { "do": "draw", "thickness": "28 mm", "width": "28 mm",
                  "heats": [{ "at": "1150 C", "for": "20 min" }] },
                { "do": "grind", "depth": "0.1 mm" },
                { "do": "restack", "across": 2, "high": 1 },
                { "do": "weld", "heats": [{ "at": "1150 C", "for": "2 min" }], "faces": "open" } ],
              "soak": { "most": "5 min", "highest": "1000 C" } }
            """);
    Advice advice = advise(hasty);
    assertEquals(Optional.empty(), advice.soak().recommended());
    assertFalse(advice.goesAhead());
    assertTrue(advice.soak().withinLongestPct().orElseThrow() < 50);
    List<SoakNote> said = advice.soak().advice();
    assertTrue(said.get(0) instanceof SoakNote.NoneClears, said.get(0).toString());
    assertEquals(
        List.of(SoakNote.Measure.values()),
        said.stream()
            .filter(n -> n instanceof SoakNote.Remedy)
            .map(n -> ((SoakNote.Remedy) n).measure())
            .toList());
    List<String> words = said.stream().map(new SoakWords(UnitSystem.BOTH)::note).toList();
    assertTrue(words.get(0).startsWith("No soak within what is allowed"), words.get(0));
    assertTrue(words.stream().anyMatch(s -> s.contains("deeper before each closing")));
    assertTrue(words.stream().anyMatch(s -> s.contains("time in the fire")));
    assertTrue(words.stream().anyMatch(s -> s.contains("seven tenths of its thickness")));
  }

  @Test
  void aLineTooFineToBeCarbonIsToldApart() {
    Billet seen =
        Walks.billet(
            """
            { "stack": { "layers": 1, "steels": ["1084"], "thickness": ["25 mm"],
                "width": "25 mm", "length": "200 mm" },
              "steps": [
                { "do": "restack", "across": 2, "high": 1 },
                { "do": "weld", "heats": [{ "at": "1220 C", "for": "5 min", "times": 2 }],
                  "seen": { "seams": "restack", "line": "clear", "width": "0.1 mm" } } ] }
            """);
    assertTrue(advise(seen).soak().advice().stream().anyMatch(n -> n instanceof SoakNote.TooFine));
  }

  /** D x t since the weld: 5 min at 1220 C make no carbon line narrower than about 0.9 mm. */
  @Test
  void noCarbonLineIsNarrowerThanItsDiffusion() {
    Stage end =
        Walks.last(
            Walks.walk(
                Walks.bar(
                    "C0.8",
                    "60 mm x 60 mm x 200 mm",
                    "{ \"do\": \"restack\", \"across\": 2, \"high\": 1 }",
                    """
                    { "do": "weld", "heats": [{ "at": "1220 C", "for": "1 s", "rise": "1 s" },
                      { "at": "1220 C", "for": "5 min", "rise": "1 s" }] }
                    """)));
    double narrowest = Seams.deepest(end.piece(), 1).plane().narrowestMetres();
    assertEquals(0.97, narrowest * 1e3, 0.05);
  }

  @Test
  void aBarOfThePreformLeavesSquareCells() {
    Preform preform = advice.preform().orElseThrow();
    String steps =
        """
        { "do": "draw", "thickness": "%.4f mm", "width": "%.4f mm",
          "heats": [{ "at": "1100 C", "for": "1 min" }] },
        { "do": "tile", "angle": "45 deg", "slice": "15 mm", "kerf": "2 mm" },
        { "do": "weld", "heats": [{ "at": "1200 C", "for": "1 min" }] },
        { "do": "press", "thickness": "10 mm", "heats": [{ "at": "1100 C", "for": "1 min" }] },
        { "do": "draw", "thickness": "6 mm", "width": "40 mm",
          "heats": [{ "at": "1100 C", "for": "1 min" }] }
        """;
    Advice before =
        advise(
            Walks.bar(
                "1084",
                "35 mm x 35 mm x 300 mm",
                String.format(java.util.Locale.ROOT, steps, 28.0, 28.0)));
    Preform p = before.preform().orElseThrow();
    Advice after =
        advise(
            Walks.bar(
                "1084",
                "35 mm x 35 mm x 300 mm",
                String.format(java.util.Locale.ROOT, steps, p.thicknessMm(), p.widthMm())));
    StageReport end = after.history().get(after.history().size() - 1);
    assertTrue(Math.abs(p.aspectNow() - 1) > 0.2, "it was not square before");
    assertEquals(1, end.cellAspect(), 0.03);
    assertTrue(preform.tiles() > 0 && preform.barLengthMm() > 0);
  }
}
