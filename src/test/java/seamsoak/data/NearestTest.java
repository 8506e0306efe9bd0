package seamsoak.data;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
  private static final List<String> KNOWN =
      List.of("thickness", "width", "heats", "for", "at", "turn", "outside", "normalize");

  @ParameterizedTest
  @CsvSource({
    "thicknes, thickness",
    "Thikness, thickness",
    "widht, width",
    "heat, heats",
    "fro, for",
    "normalise, normalize",
    "out_side, outside",
    "OUTSIDE, outside",
  })
  void aFewSlipsAreForgiven(String word, String meant) {
    assertEquals(Optional.of(meant), Nearest.of(word, KNOWN));
  }

  @ParameterizedTest
  @CsvSource({"colour", "x", "temperature", "''"})
  void otherWordsAreNotGuessed(String word) {
    assertEquals(Optional.empty(), Nearest.of(word, KNOWN));
  }

  @Test
  void aVeryLongWordTakesNoTime() {
    assertEquals(Optional.empty(), Nearest.of("x".repeat(1_000_000), KNOWN));
  }
}
