package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The smith's shop, entered once. */
@Timeout(120)
class MyShopTest extends FormsOnly {
  private Visitor.Reply enter(Map<String, String> fields) throws IOException {
    Map<String, String> all = new LinkedHashMap<>(fields);
    all.put("rev", number(smith.get("/shop")));
    smith.post("/shop", all);
    return smith.get("/shop");
  }

  private Path kept() {
    return folder.resolve("state/shop.json");
  }

  @Test
  void whatIsEnteredOnceIsInEachNewBilletAndSaidThere() throws IOException {
    assertFalse(smith.get(begun("mosaic", "us", "")).body().contains("in your shop"));
    enter(Map.of("act", "quenchant"));
    assertFalse(Files.exists(kept()), "a quenchant without a kind is not kept");
    Visitor.Reply shop =
        enter(
            Map.of(
                "equipment.forge", "coal",
                "equipment.kiln.highest", "2000",
                "equipment.kiln.ramp", "700 F/h",
                "quenchants[0].kind", "oil-medium",
                "quenchants[0].at", "130",
                "soak.most", "45"));
    assertTrue(shop.body().contains("Kept"), shop.body());
    assertTrue(Files.readString(kept()).contains("\"coal\""));
    Visitor.Reply bench = smith.get(begun("mosaic", "us", ""));
    assertTrue(
        bench.body().contains("As in your shop: equipment, quenchants, soak."), bench.body());
    assertEquals("2000", value(bench, "equipment.kiln.highest"));
    assertEquals("130", value(bench, "quenchants[0].at"));
    assertFalse(bench.body().contains("to mend"), bench.body());
  }

  /** A number without a unit means what it meant where it was typed. */
  @Test
  void inABilletOfOtherUnitsEachNumberTakesItsUnitAlong() throws IOException {
    enter(Map.of("equipment.kiln.highest", "2000", "equipment.kiln.ramp", "700 F/h"));
    enter(Map.of("soak.most", "45", "soak.highest", "2050"));
    Visitor.Reply bench = smith.get(begun("mosaic", "metric", ""));
    assertEquals("2000 F", value(bench, "equipment.kiln.highest"));
    assertEquals("700 F/h", value(bench, "equipment.kiln.ramp"));
    assertEquals("45 min", value(bench, "soak.most"));
    assertEquals("2050 F", value(bench, "soak.highest"));
    assertFalse(bench.body().contains("to mend"), bench.body());
    assertTrue(bench.body().contains("As in your shop: equipment, soak."), bench.body());
  }

  @Test
  void anOldBilletTakesItByAButtonAndUndoes() throws IOException {
    String desk = begun("three-layers", "us", "");
    enter(Map.of("equipment.forge", "induction"));
    assertTrue(
        smith.get(desk).body().contains("Otherwise than in your shop: equipment."),
        smith.get(desk).body());
    Visitor.Reply bench = edit(desk, Map.of("act", "shop", "stack.width", "1-1/4"));
    assertTrue(bench.body().contains("As in your shop: equipment."), bench.body());
    assertTrue(bench.body().contains("<option value=\"induction\" selected>"));
    assertEquals("1-1/4", value(bench, "stack.width"), "what was typed is taken as well");
    bench = edit(desk, Map.of("act", "undo"));
    assertTrue(bench.body().contains("Otherwise than in your shop"), bench.body());
  }

  @Test
  void whatIsWrongIsToldAndNotKept() throws IOException {
    enter(Map.of("equipment.forge", "coal"));
    String before = Files.readString(kept());
    Visitor.Reply shop = enter(Map.of("equipment.kiln.highest", "very hot"));
    assertTrue(shop.body().contains("To mend, before it is kept"), shop.body());
    assertTrue(shop.body().contains("very hot"), "what was typed stays");
    assertEquals(before, Files.readString(kept()));
    assertFalse(smith.get(begun("mosaic", "us", "")).body().contains("very hot"));
    String number = number(smith.get("/shop"));
    for (Map<String, String> wrong :
        List.of(
            Map.of("stack.width", "3"),
            Map.of("act", "out equipment"),
            Map.of("act", "step weld 0"),
            Map.of("equipment.forge", "x".repeat(501)))) {
      Map<String, String> all = new LinkedHashMap<>(wrong);
      all.put("rev", number);
      assertEquals(400, smith.post("/shop", all).status(), wrong.toString());
    }
    assertEquals(409, smith.post("/shop", Map.of("rev", "99")).status());
    assertEquals(before, Files.readString(kept()));
  }

  @Test
  void aFileThatIsNoneOfOursIsAsIfItWereNotThere() throws IOException {
    for (String text : List.of("", "{", "[]", "\u0000\u00ff", "{\"units\": 7}")) {
      Files.createDirectories(kept().getParent());
      Files.writeString(kept(), text);
      page.close();
      open();
      assertEquals(200, smith.get("/shop").status());
      assertEquals(200, smith.get(begun("mosaic", "us", "")).status(), text);
    }
  }
}
