package seamsoak.property.correlation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.property.Correlations;
import seamsoak.property.critical.Criticals;
import seamsoak.steel.Composition;

/** Regressions that stand in tables alone. */
class RegressionTest {
  private static final String ROW = "new2030-ac1,Ac1,F,C 0 1; low alloy,alloying; Ni 1,,+ 2 Co,,";
  private static final String TERMS =
      """
      new2030-ac1,constant,1340,F,judgement,seen,
      new2030-ac1,sqrt(C),-10,F/wt%^0.5,judgement,seen,
      new2030-ac1,Ni^2,-2,F/wt%^2,judgement,seen,
      new2030-ac1,C*Mn,4,F/wt%^2,judgement,seen,
      """;

  @TempDir Path folder;

  private static Regression of(Criticals all, String name) {
    return Stream.of(all.lower(), all.upper(), all.martensiteStart(), List.of(all.accmAlloy()))
        .flatMap(List::stream)
        .filter(r -> r.correlation().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** As the papers print them. */
  @ParameterizedTest
  @CsvSource({
    "hougardy1984-ac1, Ac1 = 739 - 22 C - 7 Mn + 2 Si + 14 Cr + 13 Mo - 13 Ni",
    "'grange1961-ae1', 'Ae1 = 1333 - 25 Mn + 40 Si + 42 Cr - 26 Ni in F, converted to C'",
    "capdevila2002-ms, 'Ms = 764.2 - 302.6 C - 30.6 Mn - 16.6 Ni - 8.9 Cr + 2.4 Mo - 14.5 Si"
        + " - 11.3 Cu + 7.4 W in K, converted to C"
        + " (and + 8.58 Co, which an analysis does not name)'",
    "andrews1965-ms-product, Ms = 512 - 453 C - 16.9 Ni + 15 Cr - 9.5 Mo + 217 C^2 - 71.5 C Mn"
        + " - 67.6 C Cr",
    "van-bohemen2012-ms, Ms = 565 - 600 (1 - exp(-0.96 C)) - 31 Mn - 13 Si - 10 Cr - 18 Ni - 12 Mo",
    "lee-lee2007-accm, alloy shift of Accm = 46.7 Cr + 19 C Cr - 6.1 Cr^2 + 7.6 Mn + 10 Mo"
        + " - 6.8 Cr Mo - 6.9 Ni + 3.7 C Ni - 2.7 Cr Ni + 0.8 Ni^2 + 16.7 Si"
  })
  void theFirstNoteIsTheFormula(String name, String formula) {
    Correlations k = Correlations.load(DataFolder.packed());
    assertEquals(formula, of(k.critical(), name).correlation().notes().get(0));
  }

  @Test
  void eachSaysItsErrorAndHowItWasRead() {
    for (CsvTable.Row row : DataFolder.packed().csv("regressions.csv").rows()) {
      assertFalse(row.text("error").isEmpty(), row.place().toString());
      assertFalse(row.text("read").isEmpty(), row.place().toString());
    }
  }

  @Test
  void rowsAloneAddOne() throws IOException {
    Correlations k = loaded(TERMS, ROW);
    List<Regression> lower = k.critical().lower();
    Regression added = lower.get(lower.size() - 1);
    assertEquals("new2030-ac1", added.correlation().name());
    // nickel counts as 1 %, manganese as 2 %, carbon as it is
    Composition rich = Composition.parse("C1.44 Mn3 Ni4");
    double fahrenheit = 1340 - 10 * 1.2 - 2 + 4 * 1.44 * 2;
    assertEquals((fahrenheit - 32) / 1.8, added.celsius(rich), 1e-12);
    assertEquals((-2 + 4 * 1.44 * 2) / 1.8, added.alloyShiftCelsius(rich), 1e-12);
    assertEquals(
        List.of("C", "Mn"), added.exceeded(rich).stream().map(e -> e.range().quantity()).toList());
    assertEquals(11, added.correlation().validity().size());
    assertEquals(10, added.alloyShift().validity().size());
  }

  /** Nickel of Kasatkin's Ac1 is doubtful from 0.3 %, and counts up to the 3 % of the source. */
  @Test
  void whatIsDoubtfulIsSaidBeforeItIsCapped() {
    Regression ac1 = of(Correlations.load(DataFolder.packed()).critical(), "kasatkin1984-ac1");
    Composition some = Composition.parse("C0.4 Ni0.5");
    assertEquals(1, ac1.exceeded(some).size());
    assertTrue(ac1.celsius(some) > ac1.celsius(Composition.parse("C0.4 Ni0.3")));
    assertEquals(
        ac1.celsius(Composition.parse("C0.4 Ni3")), ac1.celsius(Composition.parse("C0.4 Ni5")));
  }

  @ParameterizedTest
  @CsvSource({
    "sqrt(C), sqrt(Mn), is unknown",
    "Ni^2, Co^2, is unknown",
    "Ni^2, Ni^3, is unknown",
    "constant, Cu, no term constant"
  })
  void anUnknownTermIsAFault(String term, String instead, String says) {
    String terms = TERMS.replace("new2030-ac1," + term + ",", "new2030-ac1," + instead + ",");
    Fault fault = assertThrows(Fault.class, () -> loaded(terms, ROW));
    assertTrue(fault.getMessage().contains(says), fault.getMessage());
  }

  @ParameterizedTest
  @CsvSource({
    "'Ac1,F', 'Ac1,R', unit R",
    "C 0 1, C 0, '''C 0'' in column ranges'",
    "C 0 1, Co 0 1, '''Co'' in column ranges'",
    "C 0 1, C 0 much, '''much'' in column ranges'",
    "Ni 1, Ni 0 1, '''Ni 0 1'' in column capped'",
    "new2030, new2031, no correlation new2031-ac1",
    "new2030-ac1, andrews1965-ae1, stands twice"
  })
  void aWrongRowIsAFault(String part, String instead, String says) {
    String row = ROW.replace(part, instead);
    Fault fault = assertThrows(Fault.class, () -> loaded(TERMS, row));
    assertTrue(fault.getMessage().contains(says), fault.getMessage());
  }

  private Correlations loaded(String terms, String row) throws IOException {
    Files.writeString(folder.resolve("correlations.csv"), packed("correlations.csv") + terms);
    Files.writeString(folder.resolve("regressions.csv"), packed("regressions.csv") + row + "\n");
    return Correlations.load(DataFolder.over(folder));
  }

  private static String packed(String table) throws IOException {
    try (InputStream in = DataFolder.class.getResourceAsStream("/alloy-data/" + table)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
