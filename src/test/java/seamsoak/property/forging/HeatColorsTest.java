package seamsoak.property.forging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;

class HeatColorsTest {
  @TempDir Path folder;

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

  /** Our rule: a word carries 75 C beyond the heats that its table gives it. */
  @Test
  void aWordEndsSomewhat() throws IOException {
    HeatColors one = table("mine,red,600,700");
    assertEquals(List.of("red"), one.words(525));
    assertEquals(List.of(), one.words(524.9));
    assertEquals(List.of("red"), one.words(775));
    assertEquals(List.of(), one.words(775.1));
  }

  @Test
  void theNearerWordCountsAndOfTwoTheFirst() throws IOException {
    HeatColors two = table("mine,red,600,700\nmine,orange,720,800");
    assertEquals(List.of("red"), two.words(709));
    assertEquals(List.of("red"), two.words(710));
    assertEquals(List.of("orange"), two.words(711));
  }

  @Test
  void oneHeatMayBeAWordAndAnUpsideDownOneIsAFault() throws IOException {
    assertEquals(List.of("red"), table("mine,red,600,600").words(600));
    assertThrows(Fault.class, () -> table("mine,red,601,600"));
  }

  private HeatColors table(String rows) throws IOException {
    StringBuilder text = new StringBuilder("scale,color,low_C,high_C,source,standing\n");
    rows.lines().forEach(row -> text.append(row).append(",chapman-colors,seen\n"));
    Files.writeString(folder.resolve("colors.csv"), text);
    return HeatColors.load(DataFolder.over(folder));
  }
}
