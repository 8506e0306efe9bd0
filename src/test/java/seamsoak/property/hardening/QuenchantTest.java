package seamsoak.property.hardening;

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
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;

/** The table of quenchants and what is read from it. */
class QuenchantTest {
  private static final String HEADER =
      "id,name,kind,speed,severity_low_per_in,severity_per_in,severity_high_per_in,"
          + "use_low_C,use_high_C,flash_C,source,standing,note\n";

  @TempDir Path folder;

  private final QuenchantTable packed = QuenchantTable.load(DataFolder.packed());

  /** The middle of the range of use; from room temperature, or the one end, where half is given. */
  @ParameterizedTest
  @CsvSource({"40, 70, 55", "'', 60, 40", "160, '', 160", "'', '', 20"})
  void theBathIsAtTheMiddleOfItsRange(String low, String high, double expected) throws IOException {
    Quenchant q =
        table("mine,my oil,oil,fast,0.3,0.4,0.5," + low + "," + high + ",,judgement,seen,")
            .find("mine")
            .orElseThrow();
    assertEquals(expected, q.bathCelsius());
  }

  @Test
  void isFoundByItsIdHoweverWritten() {
    assertEquals("oil-fast", packed.find(" Oil-FAST ").orElseThrow().id());
    assertTrue(packed.find("oil").isEmpty());
    assertEquals("did you mean 'oil-fast'?", packed.instead("oil-fsat"));
    assertTrue(packed.instead("liquid nitrogen").startsWith("they are vermiculite, still-air"));
  }

  @Test
  void allStandInTheOrderOfTheTable() throws IOException {
    QuenchantTable two =
        table(
            "b,second,water,fast,1,1,1,,,,judgement,seen,\n"
                + "a,first,salt,slow,0.1,0.2,0.3,,,,judgement,seen,");
    assertEquals(List.of("b", "a"), two.all().stream().map(Quenchant::id).toList());
    assertEquals(Quenchant.Kind.SALT, two.find("a").orElseThrow().kind());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0,0.4,0.5", "0.3,0.2,0.5", "0.3,0.6,0.5", "-1,0.4,0.5"})
  void severitiesOutOfOrderAreAFault(String severities) {
    assertThrows(
        Fault.class, () -> table("mine,oil,oil,fast," + severities + ",,,,judgement,seen,"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.4,0.4,0.5", "0.3,0.5,0.5", "0.4,0.4,0.4"})
  void severitiesMayBeEqual(String severities) throws IOException {
    assertEquals(1, table("mine,oil,oil,fast," + severities + ",,,,judgement,seen,").all().size());
  }

  @Test
  void anUnknownKindAndADoubledIdAreFaults() {
    String row = "mine,oil,oil,fast,0.3,0.4,0.5,,,,judgement,seen,";
    Fault twice = assertThrows(Fault.class, () -> table(row + "\n" + row));
    assertTrue(twice.getMessage().contains("mine"), twice.getMessage());
    Fault kind = assertThrows(Fault.class, () -> table(row.replace("oil,oil", "oil,jelly")));
    assertTrue(kind.getMessage().contains("jelly"), kind.getMessage());
  }

  private QuenchantTable table(String rows) throws IOException {
    Files.writeString(folder.resolve("quenchants.csv"), HEADER + rows + "\n");
    return QuenchantTable.load(DataFolder.over(folder));
  }
}
