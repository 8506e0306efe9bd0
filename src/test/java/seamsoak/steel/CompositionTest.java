package seamsoak.steel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.data.DataFolder;

class CompositionTest {
  private static final Composition STEEL_1084 =
      Composition.of(Map.of(Element.C, 0.84, Element.MN, 0.75, Element.SI, 0.22));

  @ParameterizedTest
  @ValueSource(
      strings = {
        "C0.84 Mn0.75 Si0.22",
        "c0.84 mn0.75 si0.22",
        "C 0.84, Mn 0.75, Si 0.22",
        "C0.84Mn0.75Si0.22",
        "C 0.84% Mn 0.75 % Si 0.22%",
        "C=0.84; Mn=0.75; Si=0.22",
        "C0,84 Mn0,75 Si0,22",
        "  Si.22  C.84\tMn.75  ",
        "SI0.220 MN0.750 C0.840"
      })
  void readsTheWaysPeopleWrite(String text) {
    assertEquals(STEEL_1084, Composition.parse(text));
  }

  @Test
  void readsEveryElement() {
    for (Element e : Element.values()) {
      assertEquals(0.5, Composition.parse(e.symbol() + "0.5").percent(e), e.symbol());
    }
  }

  @Test
  void ironAloneIsPureIron() {
    assertEquals(Composition.of(Map.of()), Composition.parse("fe"));
    assertEquals("Fe", Composition.of(Map.of()).format());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "C0.84 Co5 | names 'Co'; the elements known here are C, Mn, Si, Cr, Ni, Mo, V, W, P, S",
        "Ti0.1 | names 'Ti'; the elements known",
        "N0.01 | names 'N'; the elements known",
        "CMn0.75 | names 'CMn'",
        "C0.84 Mn0.75 c0.9 | names C twice",
        "C0.84 Fe99 | gives iron a number; leave it out",
        "C0.84 Mn | cannot be read from 'Mn' on",
        "0.84 C | cannot be read from '0.84 C' on",
        "C0.84.2 | cannot be read from '.2' on",
        "C-0.84 | cannot be read from 'C-0.84' on",
        "C0.84 and more | cannot be read from 'and more' on",
        "C84 Mn75 | has 84 % C, more than cementite holds",
        "Ni101 | Ni 101.0 is not a percentage between 0 and 100",
        "Ni99 Cr2 | adds up to 101.0 %, more than 100 %",
        "' ' | is blank"
      })
  void refusesWithOneSentence(String text, String message) {
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> Composition.parse(text));
    assertTrue(e.getMessage().contains(message), e.getMessage());
    assertTrue(e.getMessage().endsWith("as in C0.84 Mn0.75 Si0.22"), e.getMessage());
  }

  @Test
  void formatsWhatItReads() {
    assertEquals("C0.84 Mn0.75 Si0.22", STEEL_1084.format());
    for (Steel steel : SteelTable.load(DataFolder.packed()).steels()) {
      assertEquals(steel.analysis(), Composition.parse(steel.analysis().format()), steel.id());
    }
  }

  @Test
  void formatsSmallNumbersPlainly() {
    String text = Composition.of(Map.of(Element.C, 1e-7, Element.CR, 12.0)).format();
    assertEquals("C0.0000001 Cr12", text);
    assertEquals(1e-7, Composition.parse(text).carbon());
  }
}
