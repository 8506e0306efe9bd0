package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import seamsoak.data.JsonValue;
import seamsoak.support.Ran;

/** What steels, migrate and decarb say. */
class SteelAnswerTest {
  @Test
  void theListNamesEverySteel() {
    Ran ran = Ran.run("steels", "--json");
    assertEquals(List.of("schema", "command", "steels"), ran.names(""));
    assertEquals(List.of("id", "designation", "category", "carbonPct"), ran.names("steels.0"));
    List<String> ids = ran.list("steels").stream().map(Object::toString).toList();
    assertEquals(ids.stream().distinct().count(), ids.size());
    assertEquals(1 + ids.size(), Ran.run("steels").out().lines().count());
  }

  @Test
  void oneSteelHasEachTemperatureWithItsBandAndSource() {
    Ran ran = Ran.run("steels", "15N20", "--json");
    assertEquals("75Ni8", ran.text("id"));
    for (String name : List.of("ac1C", "ac3OrAccmC", "msC", "solidusC", "highestForgingC")) {
      assertEquals(List.of("value", "low", "high", "source"), ran.names(name));
      assertTrue(ran.number(name + ".low") <= ran.number(name + ".value"), name);
      assertTrue(ran.number(name + ".value") <= ran.number(name + ".high"), name);
    }
    assertTrue(ran.names("analysisPct").containsAll(List.of("C", "Mn", "Ni")));
  }

  /** Nickel has no martensite and turns at no temperature: unknown, and why, not a number. */
  @Test
  void whatAMetalHasNotIsUnknownWithAReason() {
    Ran ran = Ran.run("steels", "Ni200", "--json");
    for (String name : List.of("ac1C", "ac3OrAccmC", "msC")) {
      assertTrue(ran.at(name) instanceof JsonValue.NullValue, name);
      assertFalse(ran.text("unknown." + name).isBlank(), name);
    }
    String page = Ran.run("steels", "Ni200").out();
    assertTrue(page.contains("Unknown (Ms): "), page);
    assertFalse(page.contains("-275"), page);
    assertFalse(page.contains("-460"), page);
  }

  /** Values at 0.8 wt%, 1050 C, worked out from the printed formulas by hand. */
  @Test
  void diffusivitiesStandSideBySideAndOneIsUsed() {
    Ran ran = Ran.run("steels", "C0.8", "--json");
    double agren = Double.NaN;
    double tibbetts = Double.NaN;
    int used = 0;
    for (JsonValue one : ran.list("diffusivities")) {
      Map<String, JsonValue.Member> d = ((JsonValue.ObjectValue) one).members();
      String name = ((JsonValue.TextValue) d.get("name").value()).text();
      double at1050 =
          ((JsonValue.NumberValue)
                  ((JsonValue.ObjectValue)
                          ((JsonValue.ListValue) d.get("at").value()).items().get(0))
                      .members()
                      .get("squareMetresPerSecond")
                      .value())
              .value();
      agren = name.startsWith("agren1986") ? at1050 : agren;
      tibbetts = name.startsWith("tibbetts") ? at1050 : tibbetts;
      used += d.get("used").value() instanceof JsonValue.TextValue ? 1 : 0;
    }
    // y = 0.037496; 4.53e-7 exp[-(1/1323.15 - 2.221e-4)(17767 - 26436 y)] [1 + y(1-y) 8339.9/T]
    assertEquals(7.1941e-11, agren, 0.0005e-11);
    // 0.47e-4 exp[-1.6 C - (37000 - 6600 C)/(1.987 T)]
    assertEquals(7.524e-11, tibbetts, 0.001e-11);
    assertEquals(2, used, "one in austenite, one in ferrite");
    String page = Ran.run("steels", "C0.8").out();
    assertTrue(page.contains("Speed of carbon (diffusivity) side by side"), page);
    assertTrue(Ran.run("steels", "C0.8", "--sources").out().contains("tibbetts1980"));
  }

  @Test
  void aHeatThatMeltsAndOneThatIsTooColdAreRemarkedOn() {
    Ran hot = Ran.run("decarb", "1084", "--at", "1500C", "--for", "1min");
    assertEquals(0, hot.code());
    assertTrue(hot.out().contains("Remarks\n  - 1084 begins to melt at about"), hot.out());
    Ran cold = Ran.run("decarb", "1084", "--at", "600C", "--for", "1min");
    assertTrue(cold.out().contains("holds no austenite"), cold.out());
    assertEquals("", hot.err() + cold.err());
    Ran json = Ran.run("decarb", "1084", "--at", "600C", "--for", "1min", "--json");
    assertEquals(1, json.list("remarks").size());
    Ran fine = Ran.run("decarb", "1084", "--at", "1000C", "--for", "1min");
    assertFalse(fine.out().contains("Remarks"), fine.out());
  }

  @Test
  void coveringTheFaceSavesMetalAndCarbon() {
    Ran open = Ran.run("decarb", "1084", "--at", "1100C", "--for", "20min", "--json");
    Ran covered =
        Ran.run("decarb", "1084", "--at", "1100C", "--for", "20min", "--edge", "covered", "--json");
    assertTrue(covered.number("metalLossMm") < open.number("metalLossMm"));
    assertTrue(covered.number("depthMm.to90Pct") < open.number("depthMm.to90Pct"));
    assertEquals("covered", covered.text("edge"));
  }

  @Test
  void aStackOfOneSteelIsEvenAlready() {
    Ran ran = Ran.run("migrate", "1084", "1084", "--layer", "1mm", "--at", "1100C", "--for", "1h");
    assertEquals(0, ran.code());
    assertTrue(ran.out().contains("hardly any carbon has moved"), ran.out());
    assertFalse(ran.out().contains("Nine tenths"), ran.out());
  }

  @Test
  void theProfileRunsFromOneMiddleToTheOther() {
    Ran ran =
        Ran.run(
            "migrate", "1095", "1018", "--layer", "2mm,1mm", "--at", "2012F", "--for", "1h",
            "--json");
    assertEquals(1100, ran.number("temperatureC"), 1e-3);
    int last = ran.list("profile").size() - 1;
    assertTrue(ran.number("profile.0.positionMm") < -0.9);
    assertTrue(ran.number("profile." + last + ".positionMm") > 0.45);
    assertEquals(2, ran.number("first.thicknessMm"), 1e-3);
    assertEquals(1, ran.number("second.thicknessMm"), 1e-3);
  }

  @Test
  void everySteelOfTheTableIsToldWithItsSources() {
    for (JsonValue steel : Ran.run("steels", "--json").list("steels")) {
      String id =
          ((JsonValue.TextValue) ((JsonValue.ObjectValue) steel).members().get("id").value())
              .text();
      Ran ran = Ran.run("steels", id, "--sources");
      assertEquals(0, ran.code(), id + ": " + ran.err());
      ran.out().lines().forEach(l -> assertTrue(l.length() <= 80, id + ": " + l));
    }
  }
}
