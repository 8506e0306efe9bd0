package seamsoak.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import seamsoak.billet.Coating;
import seamsoak.data.DataFolder;

class HardStopTest {
  @ParameterizedTest
  @CsvSource({"GALVANIZED, zinc", "PLATED, cadmium"})
  void refusesMetalCoatingsAndSaysWhy(Coating coating, String metal) {
    String why = HardStop.jacket(coating).orElseThrow();
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
            .at("tile", words(Condition.ofJacket(coating)))
            .stream()
            .anyMatch(caution -> caution.id().equals("zinc"));
    assertEquals(coating != Coating.NONE, warned);
  }

  private static Set<String> words(Set<Condition> conditions) {
    return conditions.stream().map(Condition::word).collect(Collectors.toSet());
  }
}
