package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

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

  @Test
  void aHeatThatMeltsAndOneThatIsTooColdAreRemarkedOn() {
    Ran hot = Ran.run("decarb", "1084", "--at", "1500C", "--for", "1min");
    assertEquals(0, hot.code());
    assertTrue(hot.err().contains("Remark: 1084 begins to melt at about"), hot.err());
    Ran cold = Ran.run("decarb", "1084", "--at", "600C", "--for", "1min");
    assertTrue(cold.err().contains("holds no austenite"), cold.err());
    assertEquals("", Ran.run("decarb", "1084", "--at", "1000C", "--for", "1min").err());
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
}
