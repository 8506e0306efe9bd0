package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.data.JsonValue;
import seamsoak.support.Ran;

/** Stock of unknown make is told from end to end of what it may be, and with the test to do. */
class UnknownMakeAnswerTest {
  @TempDir private Path folder;

  private static List<String> grades(Ran steel) {
    List<String> all = new ArrayList<>();
    for (int i = 0; i < steel.list("mayBe.grades").size(); i++) {
      all.add(steel.text("mayBe.grades." + i + ".id"));
    }
    return all;
  }

  /** The bands are those of the grades, as steels tells each of them. */
  @ParameterizedTest
  @ValueSource(strings = {"old-file", "leaf-spring", "saw-blade", "mild-steel"})
  void steelsSpansItsGrades(String stock) {
    Ran ran = Ran.run("steels", stock, "--json");
    List<Ran> grades = grades(ran).stream().map(g -> Ran.run("steels", g, "--json")).toList();
    for (String name : List.of("ac1C", "ac3OrAccmC", "msC", "solidusC", "highestForgingC")) {
      assertEquals(
          grades.stream().mapToDouble(g -> g.number(name + ".low")).min().orElseThrow(),
          ran.number(name + ".low"),
          name);
      assertEquals(
          grades.stream().mapToDouble(g -> g.number(name + ".high")).max().orElseThrow(),
          ran.number(name + ".high"),
          name);
    }
    Ran likeliest = grades.get(0);
    assertEquals(likeliest.text("id"), ran.text("mayBe.reckonedAs"));
    assertEquals(likeliest.number("ac1C.value"), ran.number("ac1C.value"));
    assertEquals(likeliest.number("hardenC"), ran.number("hardenC"));
    String page = Ran.run("steels", stock).out();
    assertTrue(page.startsWith(stock + " is stock of unknown make"), page);
    assertTrue(page.contains("First of all: "), page);
    assertTrue(page.replaceAll("\\s+", " ").contains("or none of these (common practice"), page);
  }

  /** A pair is told for every grade, as pair says of that grade. */
  @Test
  void pairTellsOfEachGrade() {
    Ran ran = Ran.run("pair", "leaf spring", "1084", "--json");
    assertEquals("unknown-make", ((JsonValue.TextValue) ran.list("remarkKinds").get(0)).text());
    String says = ((JsonValue.TextValue) ran.list("remarks").get(0)).text();
    for (String grade : grades(Ran.run("steels", "leaf-spring", "--json"))) {
      String rating = Ran.run("pair", grade, "1084", "--json").text("rating");
      assertTrue(says.contains("as " + grade + ": " + rating), grade + " in " + says);
    }
    assertEquals("clash", Ran.run("pair", "mystery spring", "1084", "--json").text("rating"));
    JsonValue same = Ran.run("pair", "leaf spring", "5160", "--json").at("same");
    assertFalse(((JsonValue.BooleanValue) same).value());
  }

  @ParameterizedTest
  @ValueSource(strings = {"decarb", "migrate"})
  void anEstimateOfOneHeatSaysIt(String command) {
    List<String> words = new ArrayList<>(List.of(command, "old file", "1018"));
    if (command.equals("decarb")) {
      words.remove(2);
    } else {
      words.addAll(List.of("--layer", "1mm"));
    }
    words.addAll(List.of("--at", "1000C", "--for", "10min"));
    String page = Ran.run(words.toArray(new String[0])).out().replaceAll("\\s+", " ");
    assertTrue(page.contains("old-file is of unknown make"), page);
  }

  /** Soak, schedule and plan say it first, and the quench has coupons before it. */
  @Test
  void billetsSayItFirst() throws IOException {
    Path billet =
        Files.writeString(
            folder.resolve("billet.json"),
            """
            { "units": "metric",
              "stack": { "layers": 2, "steels": ["leaf spring", "mild steel"], "thickness": "6 mm",
                         "width": "40 mm", "length": "150 mm" },
              "steps": [ { "do": "weld", "heats": [{ "at": "1150 C", "for": "5 min" }] } ],
              "blade": { "thickness": "5 mm" } }
            """);
    String file = billet.toString();
    Ran soak = Ran.run("soak", file, "--samples", "4", "--json");
    assertEquals("carbon-unknown", ((JsonValue.TextValue) soak.list("adviceKinds").get(0)).text());
    Ran schedule = Ran.run("schedule", file, "--samples", "0", "--json");
    assertEquals("unknown-made", schedule.text("conflicts.0.kind"));
    assertEquals(
        Ran.run("steels", "leaf-spring", "--json").number("mayBe.hardenC.high"),
        schedule.number("conflicts.0.mayBe.hardenC.high"));
    assertEquals("unknown-made", schedule.text("conflicts.1.kind"));
    assertEquals(1, coupons(schedule));
    for (String command : List.of("schedule", "plan")) {
      List<String> words = new ArrayList<>(List.of(command, file, "--samples", "0"));
      if (command.equals("plan")) {
        words.addAll(List.of("--out", folder.resolve("charts").toString()));
      }
      String page = Ran.run(words.toArray(new String[0])).out().replaceAll("\\s+", " ");
      assertTrue(page.contains("Leaf-spring is of unknown make"), page);
    }
  }

  private static long coupons(Ran schedule) {
    long count = 0;
    for (int i = 0; i < schedule.list("steps").size(); i++) {
      if (schedule.text("steps." + i + ".kind").equals("harden")) {
        count +=
            schedule.list("steps." + i + ".checkKinds").stream()
                .filter(k -> ((JsonValue.TextValue) k).text().equals("coupons"))
                .count();
      }
    }
    return count;
  }
}
