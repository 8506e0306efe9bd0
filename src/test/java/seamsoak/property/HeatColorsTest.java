package seamsoak.property;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.data.DataFolder;

class HeatColorsTest {
  private final HeatColors colors = HeatColors.load(DataFolder.packed());

  /** Chapman has cherry from 815 to 870, Dooley at 902, the handbook of 1905 full cherry at 900. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "840  | cherry, dull cherry, dark cherry",
        "900  | light cherry, full cherry, cherry",
        "1100 | yellow, deep orange, dull orange"
      })
  void tellsAllTheWordsThatTablesHave(double celsius, String words) {
    assertEquals(List.of(words.split(", ")), colors.words(celsius));
  }

  @Test
  void theSameWordLiesFarApart() {
    assertTrue(colors.words(820).contains("cherry"), "Chapman");
    assertTrue(colors.words(930).contains("cherry"), "Dooley");
    assertEquals(List.of(), colors.words(200));
  }
}
