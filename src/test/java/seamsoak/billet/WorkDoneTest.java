package seamsoak.billet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.billet.HeatDone.Held;
import seamsoak.carbon.Strip;
import seamsoak.support.Walks;

/** What was done is walked as done, what was not as planned. */
class WorkDoneTest {
  private static final String SIZE = "20 mm x 30 mm x 100 mm";

  private static Billet bar(String... steps) {
    for (int i = 0; i < steps.length; i++) {
      steps[i] = steps[i].replace('\'', '"');
    }
    return Walks.bar("1084", SIZE, steps);
  }

  private static String draw(String heats, String done) {
    return "{ 'do': 'draw', 'thickness': '15 mm', 'width': '20 mm', 'heats': ["
        + heats
        + "]"
        + done
        + " }";
  }

  private static double[] carbon(Workpiece piece) {
    Strip strip = piece.thickness().strip();
    double[] all = new double[2 * strip.cells()];
    for (int i = 0; i < strip.cells(); i++) {
      all[2 * i] = strip.metres(i);
      all[2 * i + 1] = strip.percent(i);
    }
    return all;
  }

  private static void same(Billet one, Billet other) {
    List<Stage> a = Walks.walk(one);
    List<Stage> b = Walks.walk(other);
    assertEquals(a.size(), b.size());
    for (int i = 0; i < a.size(); i++) {
      assertEquals(a.get(i).piece().size(), b.get(i).piece().size());
      assertArrayEquals(carbon(a.get(i).piece()), carbon(b.get(i).piece()));
    }
  }

  @Test
  void heatsThatWereDoneOtherwiseCountAsTheyWere() {
    same(
        bar(
            draw(
                "{ 'at': '1150 C', 'for': '3 min', 'times': 3, 'done': ["
                    + "{ 'at': '1180 C', 'for': '7 min' }, {}, { 'at': '1100 C', 'for': '2 min' } ] }",
                "")),
        bar(
            draw(
                "{ 'at': '1180 C', 'for': '7 min' }, { 'at': '1150 C', 'for': '3 min' },"
                    + " { 'at': '1100 C', 'for': '2 min' }",
                "")));
  }

  @Test
  void stepsThatCameOutOtherwiseCountAsTheyDid() {
    same(
        bar(
            "{ 'do': 'grind', 'depth': '0.3 mm', 'done': { 'on': '2026-11-21', 'depth': '0.5 mm' } }",
            draw(
                "{ 'at': '1150 C', 'for': '3 min' }",
                ", 'done': { 'thickness': '15.5 mm', 'width': '20.2 mm' }")),
        bar(
            "{ 'do': 'grind', 'depth': '0.5 mm' }",
            "{ 'do': 'draw', 'thickness': '15.5 mm', 'width': '20.2 mm', 'heats':"
                + " [{ 'at': '1150 C', 'for': '3 min' }] }"));
  }

  @Test
  void theStepAsItWasMeantIsKept() {
    Step step =
        bar("{ 'do': 'grind', 'depth': '0.3 mm', 'done': { 'on': '2026-11-21', 'depth': '0.5 mm' } }")
            .steps()
            .get(0);
    assertEquals(0.5e-3, ((Step.Grind) step).depth().metres(), 1e-12);
    StepDone done = step.mark().done().orElseThrow();
    assertEquals(Optional.of(LocalDate.of(2026, 11, 21)), done.on());
    assertEquals(0.3e-3, ((Step.Grind) done.planned()).depth().metres(), 1e-12);
  }

  @Test
  void aHeatByItsCurveIsTheHeatThatTheCurveShows() {
    String curves =
        "\"curves\": { \"kiln 1\": { \"minutes\": [0, 5, 15], \"celsius\": [850, 1100, 1100] } },";
    String planned =
        "{ 'do': 'soak', 'heats': [{ 'at': '1050 C', 'for': '3 min'%s }] }".replace('\'', '"');
    Billet logged =
        Walks.billet(
            text(planned.formatted(", \"done\": [{ \"curve\": \"kiln 1\" }]"))
                .replaceFirst("\\{", "{" + curves));
    Billet held =
        Walks.billet(
            text(planned.replace("1050", "1100").replace("3 min", "10 min").formatted("")));
    same(logged, held);
  }

  private static String text(String step) {
    return "{ \"stack\": { \"layers\": 1, \"steels\": [\"1084\"], \"thickness\": \"20 mm\","
        + " \"width\": \"30 mm\", \"length\": \"100 mm\" }, \"steps\": ["
        + step
        + "] }";
  }

  /** What was not read is not credited: a gap is as cool as its cooler end. */
  @Test
  void aGapIsAsCoolAsItsCoolerEnd() {
    Billet gap =
        Walks.billet(
            text("{ \"do\": \"soak\", \"heats\": [{ \"at\": \"1050 C\", \"for\": \"3 min\", \"done\": [{"
                    + " \"curve\": \"a\" }] }] }")
                .replaceFirst(
                    "\\{",
                    "{ \"curves\": { \"a\": { \"loaded\": \"2 min\", \"out\": \"10 min\","
                        + " \"minutes\": [0, 4, 8, 12], \"celsius\": [900, 1100, 1000, 1000],"
                        + " \"gaps\": [[4, 8]] } },"));
    HeatDone.Logged how = (HeatDone.Logged) gap.steps().get(0).heats().get(0).done().get(0).how();
    List<double[]> read =
        how.curve().curve().segments().stream()
            .map(s -> new double[] {s.fromKelvin() - 273.15, s.toKelvin() - 273.15, s.seconds()})
            .toList();
    assertArrayEquals(new double[] {1000, 1100, 120}, read.get(0), 1e-9);
    assertArrayEquals(new double[] {1000, 1000, 240}, read.get(1), 1e-9);
    assertArrayEquals(new double[] {1000, 1000, 120}, read.get(2), 1e-9);
    assertEquals(3, read.size());
  }

  @ParameterizedTest
  @CsvSource({
    // done of the first, of the second heat, then: heats done, all of the step
    "'{}',        '',     1, false",
    "'{}, {}',    '',     2, false",
    "'',          '{}',   3, true",
    "'{}',        '{}',   3, true"
  })
  void nowIsAfterTheLastHeatThatWasDone(String first, String second, int heats, boolean whole) {
    Billet billet =
        bar(
            draw(
                "{ 'at': '1150 C', 'for': '3 min', 'times': 2, 'done': ["
                    + first
                    + "] },"
                    + "{ 'at': '1100 C', 'for': '2 min', 'done': ["
                    + second
                    + "] }",
                ""),
            "{ 'do': 'grind', 'depth': '0.3 mm' }");
    Now now = Now.of(billet.steps()).orElseThrow();
    assertEquals(billet.steps().get(0), now.step());
    assertEquals(heats, now.heats());
    assertEquals(whole, now.stepDone());
    assertEquals(heats, now.done(billet.steps()).size());
  }

  @Test
  void whatComesBeforeSomethingDoneCountsAsDone() {
    Billet billet =
        bar(
            draw("{ 'at': '1150 C', 'for': '3 min', 'times': 2 }", ""),
            "{ 'do': 'grind', 'depth': '0.3 mm', 'done': {} }",
            "{ 'do': 'cool', 'in': 'air' }");
    Now now = Now.of(billet.steps()).orElseThrow();
    assertEquals(2, now.step().mark().number());
    assertEquals(
        List.of(false, false, true),
        now.done(billet.steps()).stream().map(Now.Done::stated).toList());
  }

  @Test
  void withoutAnythingDoneThereIsNoNow() {
    assertEquals(
        Optional.empty(), Now.of(bar(draw("{ 'at': '1150 C', 'for': '3 min' }", "")).steps()));
  }

  /**
   * In the middle of a draw the bar is half drawn: as thick as a draw by half the strain leaves it.
   */
  @Test
  void theMetalIsToldWhereWorkStands() {
    Stage stage =
        Walks.last(
            Walks.walk(
                bar(draw("{ 'at': '1150 C', 'for': '3 min', 'times': 4, 'done': [{}, {}] }", ""))));
    double end = stage.piece().size().thicknessMetres();
    double now = stage.atNow().piece().size().thicknessMetres();
    assertEquals(15e-3, end, 1e-12);
    assertEquals(Math.sqrt(20e-3 * 15e-3), now, 0.2e-3);
    assertTrue(now > end);
  }

  /** Half done, half planned: the answer is that of a file whose first half is history. */
  @Test
  void doneAndHistoryAreTheSame() {
    String first =
        "{ 'at': '1150 C', 'for': '3 min', 'times': 4, 'done': [{ 'at': '1170 C', 'for': '5 min' }, {}] }";
    String plain =
        "{ 'at': '1170 C', 'for': '5 min' }, { 'at': '1150 C', 'for': '3 min', 'times': 3 }";
    String rest = "{ 'do': 'soak', 'heats': [{ 'at': '1050 C', 'for': '10 min' }] }";
    same(bar(draw(first, ""), rest), bar(draw(plain, ""), rest));
  }

  @Test
  void aTemperIsTooCoolToMoveCarbon() {
    Stage stage =
        Walks.last(
            Walks.walk(
                bar("{ 'do': 'temper', 'heats': [{ 'at': '200 C', 'for': '2 h', 'times': 2 }] }")));
    assertEquals(20e-3, stage.piece().size().thicknessMetres());
    assertEquals(0, stage.scaledMetres());
  }

  /** A fire cooler than dull heat is not come down to. */
  @Test
  void anAnnealBelowDullHeatIsCoolerThanDullHeatThroughout() {
    Stage anneal =
        Walks.last(
            Walks.walk(bar("{ 'do': 'anneal', 'heats': [{ 'at': '740 C', 'for': '60 min' }] }")));
    assertEquals(740 + 273.15, anneal.lastHeat().orElseThrow().peakKelvin(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    // turns over a length, radius, what is left of a distance: 1/sqrt(1 + slope^2)
    "1, 0.1,  0.0159154943091895, 0.70710678",
    "2, 0.1,  0.0159154943091895, 0.44721360",
    "6, 0.25, 0,                  1"
  })
  void aTwistBringsCloserWhatLiesOffTheMiddle(
      double turns, double over, double radius, double left) {
    Twist twist =
        (Twist)
            bar("{ 'do': 'twist', 'turns': "
                    + turns
                    + ", 'over': '"
                    + over
                    + " m', 'heats': [{ 'at': '1100 C', 'for': '3 min' }] }")
                .steps()
                .get(0);
    assertEquals(left, twist.shrinkAt(radius), 1e-8);
  }

  @Test
  void aTwistKeepsTheProfileOfTheSection() {
    String heats = "'heats': [{ 'at': '1100 C', 'for': '3 min', 'times': 2 }] }";
    List<Stage> twisted =
        Walks.walk(bar("{ 'do': 'twist', 'turns': 3, 'over': '100 mm', " + heats));
    Size before = twisted.get(0).piece().size();
    Stage after = Walks.last(twisted);
    assertEquals(
        before.thicknessMetres() - 2 * after.scaledMetres(),
        after.piece().size().thicknessMetres(),
        1e-12);
    assertEquals(1, after.remarks().size());
    assertTrue(after.remarks().get(0) instanceof Stage.Twisted);
  }

  @Test
  void whatWasWrittenDownIsKept() {
    HeatDone done =
        bar("{ 'do': 'soak', 'heats': [{ 'at': '1050 C', 'for': '10 min', 'done':"
                + " [{ 'on': '2026-11-20', 'at': '1060 C', 'for': '12 min' }] }] }")
            .steps()
            .get(0)
            .heats()
            .get(0)
            .done()
            .get(0);
    assertEquals(Optional.of(LocalDate.of(2026, 11, 20)), done.on());
    assertEquals(12, ((Held) done.how()).hold().minutes(), 1e-9);
  }
}
