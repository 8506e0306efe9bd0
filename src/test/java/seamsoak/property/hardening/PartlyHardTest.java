package seamsoak.property.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import seamsoak.data.DataFolder;
import seamsoak.property.Correlations;

/** Martensite beside what did not harden. */
class PartlyHardTest {
  private final AstmE140 e140 = Correlations.load(DataFolder.packed()).hardening().conversion();

  @Test
  void allMartensiteTempersAsItsCurve() {
    PartlyHard all = new PartlyHard(e140, 66, 40, 66);
    assertEquals(60, all.tempered(60), 1e-9);
    assertEquals(60, all.wanted(60), 1e-9);
  }

  @Test
  void whatDidNotHardenDoesNotSoften() {
    PartlyHard none = new PartlyHard(e140, 66, 40, 40);
    assertEquals(40, none.tempered(60), 1e-9);
    assertEquals(66, none.wanted(60), 1e-9);
  }

  /** Halfway by Vickers hardness: 66 and 40 HRC are 862.9 and 390.3 HV, by the standard's form. */
  @Test
  void halfOfIt() {
    double middle = e140.hrc((e140.vickers(66) + e140.vickers(40)) / 2);
    PartlyHard half = new PartlyHard(e140, 66, 40, middle);
    assertEquals(e140.hrc((e140.vickers(60) + e140.vickers(40)) / 2), half.tempered(60), 1e-9);
    assertTrue(half.tempered(60) < middle);
    assertEquals(60, half.wanted(half.tempered(60)), 1e-9);
  }

  /** Tempered below what did not harden, all of it is as soft as that temper makes martensite. */
  @Test
  void aHotTemperSoftensAll() {
    assertEquals(35, new PartlyHard(e140, 66, 40, 55).tempered(35), 1e-9);
  }
}
