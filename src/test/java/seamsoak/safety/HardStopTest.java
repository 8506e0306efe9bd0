package seamsoak.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import seamsoak.billet.Bath;
import seamsoak.billet.Can;
import seamsoak.billet.Coating;
import seamsoak.data.DataFolder;
import seamsoak.data.Place;
import seamsoak.plan.Advice;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.state.BathAtHand;
import seamsoak.support.Schedules;
import seamsoak.support.Walks;
import seamsoak.unit.Temperature;
import seamsoak.unit.UnitSystem;
import seamsoak.words.StopWords;

class HardStopTest {
  @ParameterizedTest
  @CsvSource({"GALVANIZED, zinc", "PLATED, cadmium"})
  void refusesMetalCoatingsAndSaysWhy(Coating coating, String metal) {
    String why = words(HardStop.jacket(coating).orElseThrow());
    assertTrue(why.contains(metal) && why.contains("refused"), why);
  }

  @ParameterizedTest
  @EnumSource(names = {"NONE", "PAINTED", "UNKNOWN"})
  void leavesTheRestToTheCautions(Coating coating) {
    assertFalse(HardStop.jacket(coating).isPresent());
  }

  @ParameterizedTest
  @EnumSource
  void warnsOfZincUnlessTheSheetIsBare(Coating coating) {
    boolean warned =
        CautionTable.load(DataFolder.packed())
            .at(CautionStep.TILE, Condition.ofJacket(coating))
            .stream()
            .anyMatch(caution -> caution.id().equals("zinc"));
    assertEquals(coating != Coating.NONE, warned);
  }

  private static String words(Danger danger) {
    return new StopWords(UnitSystem.METRIC).says(danger);
  }

  @ParameterizedTest
  @CsvSource({
    "DAMP, NONE, true",
    "OILY, UNKNOWN, true",
    "PAINTED, NONE, true",
    "DAMP, HOLE, false",
    "BAKED_DRY, NONE, false",
    "UNKNOWN, NONE, false"
  })
  void refusesASealedCanWithSomethingWetInIt(Can.Inside inside, Can.Vent vent, boolean refused) {
    Optional<String> why =
        HardStop.can(new Can(Optional.of(inside), Optional.of(vent))).map(HardStopTest::words);
    assertEquals(refused, why.isPresent());
    why.ifPresent(s -> assertTrue(s.contains("vent") && s.contains("refused"), s));
  }

  /** 40 C for the blade and the interval of 28 C below the flash point: 182 - 68 = 114 C. */
  @ParameterizedTest
  @CsvSource({
    "oil-fast, 113, 182, false",
    "oil-fast, 115, 182, true",
    "oil-fast, 50, 110, true",
    "canola, 60, 315, false",
    "salt, 640, , false",
    "salt, 655, , true",
    "water, 20, , false"
  })
  void refusesABathTooNearItsDanger(String kind, double at, Double flash, boolean refused) {
    BathAtHand bath =
        new BathAtHand(
            new Bath(
                kind,
                Optional.of(Temperature.ofCelsius(at)),
                Optional.ofNullable(flash).map(Temperature::ofCelsius),
                Place.of("test")),
            Walks.CORRELATIONS.hardening().quenchants().find(kind).orElseThrow());
    assertEquals(refused, HardStop.bath(bath).isPresent());
  }

  /** The whole way: the step is refused, with the reason, and nothing goes ahead. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "oil        | , 'quenchants': [{ 'kind': 'oil-fast', 'at': '140 C', 'flash': '180 C' }]",
        "salt       | , 'quenchants': [{ 'kind': 'salt', 'at': '660 C' }]",
        "nitrate    | , 'equipment': { 'forge': 'none', 'kiln': 'none', 'salt': 'nitrate' }",
      })
  void aRefusedStepSaysWhyAndStopsTheWork(String word, String more) {
    Advice advice = Schedules.bar("1084", "6 mm", more.replace('\'', '"'));
    assertFalse(advice.goesAhead());
    assertEquals("harden", advice.hardStops().get(0).step());
    ScheduleAdvice.Step harden =
        advice.schedule().steps().stream()
            .filter(s -> s.step().words().equals("harden"))
            .findFirst()
            .orElseThrow();
    Stop refused = harden.refused().orElseThrow();
    assertEquals(advice.hardStops().get(0), refused);
    String why = new StopWords(UnitSystem.METRIC).says(refused);
    assertTrue(why.startsWith("harden: The ") || why.startsWith("harden: Only "), why);
    assertTrue(why.contains(word), why);
    assertTrue(Schedules.bar("1084", "6 mm", "").goesAhead());
  }
}
