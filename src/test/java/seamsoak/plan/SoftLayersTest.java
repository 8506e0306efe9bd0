package seamsoak.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.report.ShopCard;
import seamsoak.schedule.Remark;
import seamsoak.schedule.demand.Conflict;
import seamsoak.support.Schedules;
import seamsoak.unit.UnitSystem;
import seamsoak.words.ConflictWords;
import seamsoak.words.ScheduleWords;
import seamsoak.words.told.Statement;

/** Soft steel beside what cuts is wanted; soft steel that was to be hard, or that cuts, is not. */
class SoftLayersTest {
  private static List<Conflict.SoftLayer> conflicts(Advice advice) {
    return advice.schedule().conflicts().stream()
        .filter(Conflict.SoftLayer.class::isInstance)
        .map(Conflict.SoftLayer.class::cast)
        .toList();
  }

  private static List<Remark.SoftCladding> cladding(Advice advice) {
    return advice.schedule().remarks().stream()
        .filter(Remark.SoftCladding.class::isInstance)
        .map(Remark.SoftCladding.class::cast)
        .toList();
  }

  private static String todo(Conflict conflict) {
    return new ConflictWords(UnitSystem.METRIC).said(conflict).todo();
  }

  /** Common practice, no source: a hard core between jackets of iron, mild steel or nickel. */
  @ParameterizedTest
  @CsvSource({"1018, 1095", "PUREIRON, 1095", "1008, 1084", "1018, O1", "nickel, 1095"})
  void softJacketsRoundAHardCoreAreNoConflict(String soft, String hard) {
    Advice advice = Schedules.stack("\"%s\", \"%s\"".formatted(soft, hard), 3, "6 mm", "");
    assertEquals(List.of(), conflicts(advice));
    Remark.SoftCladding told = cladding(advice).get(0);
    assertEquals(List.of(soft, hard), List.of(told.steel(), told.edge()));
    String sentence = soft + " stays soft, as what lies beside the edge is meant to: ";
    for (List<String> place :
        List.of(
            new ScheduleWords(advice.schedule(), UnitSystem.US).told(),
            ShopCard.of(advice, UnitSystem.US).cladding())) {
      assertEquals(1, place.stream().filter(s -> s.startsWith(sentence)).count(), "" + place);
    }
    Map<String, Object> json = Statement.members(advice.schedule());
    assertTrue(json.get("remarkKinds").toString().contains("soft-cladding"), "" + json);
    assertFalse(ShopCard.of(advice, UnitSystem.US).conflicts().toString().contains("soft layer"));
  }

  /** An edge ground from both flats ends in the core. */
  @Test
  void aSoftCoreIsOne() {
    Advice advice = Schedules.stack("\"1095\", \"1018\"", 3, "6 mm", "");
    assertEquals("1018", conflicts(advice).get(0).steel());
    assertTrue(todo(conflicts(advice).get(0)).contains("keep it away from the edge"));
    assertEquals(List.of(), cladding(advice));
  }

  /** Two plates are a soft back and a hard edge, whichever lies above. */
  @Test
  void oneSideOfTwoIsNone() {
    assertEquals(List.of(), conflicts(Schedules.stack("\"1018\", \"1095\"", 2, "6 mm", "")));
  }

  @Test
  void whatIsToCutIsOneThoughItWasBoughtSoft() {
    Advice advice =
        Schedules.stack("\"1018\", \"1095\"", 3, "8 mm", ", \"blade\": { \"cuts\": \"1018\" }");
    assertEquals("1018", conflicts(advice).get(0).steel());
  }

  /** One that was bought to harden and has lost the carbon for it. */
  @Test
  void aSteelThatLostItsCarbonIsOne() {
    Advice advice =
        Schedules.of(
            """
            { "stack": { "layers": 5, "width": "40 mm", "length": "120 mm",
                         "steels": ["C0.42 Mn0.75", "PUREIRON", "1095", "PUREIRON", "C0.42 Mn0.75"],
                         "thickness": ["2 mm", "3 mm", "12 mm", "3 mm", "2 mm"] },
              "steps": [ { "do": "weld", "heats": [{ "at": "1200 C", "for": "5 min", "times": 3 }] },
                         { "do": "draw", "thickness": "8 mm", "width": "40 mm",
                           "heats": [{ "at": "1150 C", "for": "5 min" }] } ] }
            """);
    assertEquals(1, conflicts(advice).size());
    assertEquals("C0.42 Mn0.75", conflicts(advice).get(0).steel());
    assertTrue(conflicts(advice).get(0).carbonPct() < 0.36, "" + conflicts(advice));
    assertEquals("PUREIRON", cladding(advice).get(0).steel());
  }
}
