package seamsoak.data;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
  private static final List<String> NAMES =
      List.of("1018", "1045", "1080", "1084", "W1", "O1", "52100", "80CrV2", "gauge plate");

  @ParameterizedTest
  @CsvSource({
    "1048,1045", // shares its start with 1045, not with 1018
    "108,1080",
    "01,O1", // zero for O weighs less than another letter
    "52l00,52100",
    "80crv,80CrV2",
    "80rCV2,80CrV2",
    "GAUGEPLATE,gauge plate",
  })
  void findsWhatWasMeant(String word, String meant) {
    assertEquals(Optional.of(meant), Nearest.to(word, NAMES));
  }

  @Test
  void findsNothingFarAway() {
    assertEquals(Optional.empty(), Nearest.to("vibranium", NAMES));
    assertEquals(Optional.empty(), Nearest.to("", NAMES));
    assertEquals(Optional.empty(), Nearest.to("1084", List.of()));
  }
}
