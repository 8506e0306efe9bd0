package seamsoak.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.report.BilletAnswer;
import seamsoak.safety.Danger;
import seamsoak.safety.Stop;
import seamsoak.state.HeatRisk;
import seamsoak.support.Schedules;
import seamsoak.unit.UnitSystem;

/** Heats that burn, melt or do not weld are told, and the worst of them refused. */
class HeatsTest {
  private static Advice forged(String steels, String weld, String draw) {
    return Schedules.of(
        """
        { "stack": { "layers": 7, "steels": [%s], "thickness": "4 mm", "width": "40 mm",
            "length": "120 mm" },
          "steps": [
            { "do": "weld", "heats": [{ "at": "%s", "for": "5 min" }] },
            { "do": "draw", "thickness": "10 mm", "width": "40 mm",
              "heats": [{ "at": "%s", "for": "3 min" }] } ] }
        """
            .formatted(steels, weld, draw));
  }

  private static Advice plain(String weld, String draw) {
    return forged("\"1084\", \"75Ni8\"", weld, draw);
  }

  private static List<HeatRisk.Kind> kinds(Advice advice) {
    return advice.history().stream().flatMap(s -> s.heats().stream()).map(HeatRisk::kind).toList();
  }

  private static List<Class<?>> dangers(Advice advice) {
    return advice.hardStops().stream().map(Stop::danger).<Class<?>>map(Object::getClass).toList();
  }

  /** What steel melts at is not let pass, though the rest is answered. */
  @Test
  void meltingIsRefused() {
    Advice advice = plain("1550 C", "1400 C");
    assertEquals(List.of(Danger.Melts.class, Danger.Melts.class), dangers(advice));
    assertFalse(advice.goesAhead());
    assertFalse(advice.schedule().steps().isEmpty());
    for (String full :
        List.of(
            new BilletAnswer(advice, UnitSystem.METRIC).soak().full(),
            new BilletAnswer(advice, UnitSystem.METRIC).schedule().full(),
            new BilletAnswer(advice, UnitSystem.METRIC).plan().full())) {
      assertTrue(full.startsWith("Do not do this. step 1 weld: At 1550 C 1084 melts"), full);
      assertTrue(full.contains("step 2 draw: At 1400 C"), full);
    }
  }

  /** Common practice, no source: plain steel is welded at 1230 to 1260 C, nickel steel with it. */
  @ParameterizedTest
  @CsvSource({"1150 C", "1200 C", "2250 F"})
  void usualWeldsPassWithoutAWord(String weld) {
    assertEquals(List.of(), kinds(plain(weld, "1100 C")));
    assertEquals(List.of(), dangers(plain(weld, "1100 C")));
  }

  @ParameterizedTest
  @CsvSource({
    "2300 F, 1100 C, MAY_BURN",
    "2700 F, 1100 C, MELTS",
    "900 F, 1100 C, NO_WELD",
    "1900 F, 1100 C, COLD_TO_WELD",
    "1200 C, 900 F, COLD_TO_FORGE",
    "1200 C, 1200 C, ABOVE_FORGING"
  })
  void whatIsTheMatterIsTold(String weld, String draw, HeatRisk.Kind kind) {
    Advice advice = plain(weld, draw);
    assertEquals(List.of(kind), kinds(advice));
    boolean refused = kind == HeatRisk.Kind.MELTS || kind == HeatRisk.Kind.NO_WELD;
    assertEquals(refused, !advice.hardStops().isEmpty());
    boolean burns = kind == HeatRisk.Kind.MAY_BURN || kind == HeatRisk.Kind.MELTS;
    assertEquals(
        burns,
        advice.history().stream()
            .flatMap(s -> s.cautions().stream())
            .anyMatch(c -> c.id().equals("burning-heat")));
    String brief = new BilletAnswer(advice, UnitSystem.METRIC).soak().brief("");
    assertEquals(kind.isGrave() && !refused, brief.contains("may spoil it"), brief);
  }

  /**
   * What was done cannot be refused: it is told as done, with what it did and what to do now; what
   * is still planned so is refused as ever.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{}, { 'at': '1480 C', 'for': '5 min' } | false | 1480 C was above | likely burnt",
        "{ 'at': '1480 C', 'for': '5 min' } | false | 1480 C was above | cut back to sound metal",
        "{ 'at': '1270 C', 'for': '5 min' }, {}, {} | false | 1270 C was above | grain has grown",
        "{ 'at': '480 C', 'for': '5 min' }, { 'at': '480 C', 'for': '5 min' },"
            + " { 'at': '480 C', 'for': '5 min' } | false | 480 C was far below | weld them anew",
        "{} | true | At 1480 C 1084 melts | refused"
      })
  void whatWasDoneIsToldAsDone(String done, boolean refused, String was, String now) {
    String heats =
        refused
            ? "{ 'at': '1200 C', 'for': '5 min', 'done': [%s] }, { 'at': '1480 C', 'for': '5 min' }"
            : "{ 'at': '1200 C', 'for': '5 min', 'times': 3, 'done': [%s] }";
    Advice advice =
        Schedules.of(
            """
            { "stack": { "layers": 2, "steels": ["1084", "75Ni8"], "thickness": "12 mm",
                "width": "25 mm", "length": "200 mm" },
              "steps": [ { "do": "weld", "heats": [%s] } ] }
            """
                .formatted(heats.formatted(done))
                .replace('\'', '"'));
    assertEquals(refused, !advice.hardStops().isEmpty());
    String soak = new BilletAnswer(advice, UnitSystem.METRIC).soak().full();
    String said = soak.replaceAll("\\s+", " ");
    assertEquals(refused, said.startsWith("Do not do this."), said);
    assertTrue(said.contains(was) && said.contains(now), said);
  }

  /** A heat treatment at a forging heat is none. */
  @ParameterizedTest
  @CsvSource({
    "temper, 1150 C, NO_TEMPER",
    "relieve, 800 C, NO_TEMPER",
    "temper, 600 C,",
    "relieve, 680 C,",
    "refine, 1150 C, COARSENS",
    "normalize, 1100 C, COARSENS",
    "normalize, 925 C,",
    "anneal, 760 C,"
  })
  void aTreatmentFarTooHotIsTold(String kind, String at, HeatRisk.Kind risk) {
    Advice advice =
        Schedules.of(
            """
            { "stack": { "layers": 2, "steels": ["1084", "75Ni8"], "thickness": "12 mm",
                "width": "25 mm", "length": "200 mm" },
              "steps": [ { "do": "weld", "heats": [{ "at": "1200 C", "for": "5 min" }] },
                { "do": "%s", "heats": [{ "at": "%s", "for": "10 min" }] } ] }
            """
                .formatted(kind, at));
    assertEquals(risk == null ? List.of() : List.of(risk), kinds(advice));
  }

  /** 1095 burns sooner than 1084, and with iron for a neighbor later once it has lost carbon. */
  @Test
  void theCarbonByThenCounts() {
    double fresh = forged("\"1095\"", "1250 C", "1100 C").history().get(1).heats().get(0).limitC();
    assertEquals(1205, fresh, 5);
    Advice mixed =
        Schedules.of(
            """
            { "stack": { "layers": 15, "steels": ["1095", "1018"], "thickness": "1 mm",
                "width": "40 mm", "length": "120 mm" },
              "steps": [
                { "do": "weld", "heats": [{ "at": "1200 C", "for": "10 min", "times": 3 }] },
                { "do": "draw", "thickness": "10 mm", "width": "40 mm",
                  "heats": [{ "at": "1250 C", "for": "3 min" }] } ] }
            """);
    assertEquals(List.of(HeatRisk.Kind.ABOVE_FORGING), kinds(mixed));
  }
}
