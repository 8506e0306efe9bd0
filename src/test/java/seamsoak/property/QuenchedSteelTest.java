package seamsoak.property;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.data.DataFolder;
import seamsoak.heat.Section;
import seamsoak.property.hardening.HardeningDepth;
import seamsoak.property.hardening.HardeningDepth.Depth;
import seamsoak.property.hardening.HollomonJaffe1945;
import seamsoak.property.hardening.QuenchResult;
import seamsoak.property.hardening.Quenchant;
import seamsoak.property.hardening.TemperingCurve;
import seamsoak.property.phase.PhaseLines;
import seamsoak.source.Estimate;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;
import seamsoak.support.Analyses;
import seamsoak.support.ExtremeAnalyses;

/** Hardening and tempering of whole steels. */
class QuenchedSteelTest {
  private static final double HARDEN_CELSIUS = 815;
  private static final double GRAIN = 8;

  private final Correlations k = Correlations.load(DataFolder.packed());
  private final SteelTable steels = SteelTable.load(DataFolder.packed());

  private QuenchedSteel steel(String id) {
    return QuenchedSteel.from(k, steels.find(id).orElseThrow().analysis(), HARDEN_CELSIUS, GRAIN);
  }

  private Quenchant in(String id) {
    return k.hardening().quenchants().find(id).orElseThrow();
  }

  /** Common practice, no source: what smiths get from blades and bars. */
  @ParameterizedTest
  @CsvSource({
    "1084, 3, oil-fast, THROUGH",
    "1095, 3, water, THROUGH",
    "1095, 25, water, SHELL",
    "1095, 25, still-air, NOT",
    "5160, 6, oil-medium, THROUGH",
    "O1, 12, oil-medium, THROUGH",
    "80CrV2, 5, oil-medium, THROUGH",
    "1018, 3, still-air, NOT",
    "1084, 3, still-air, NOT"
  })
  void bladesAndBarsHardenAsSmithsKnowThem(String id, double mm, String bath, Depth expected) {
    assertEquals(expected, steel(id).quench(Section.plate(mm / 1000), in(bath)).depth());
  }

  /**
   * Common practice, no source: after forging, grain 4 and all dissolved, L6 and O1 are hard after
   * cooling in air; plain steel is not.
   */
  @ParameterizedTest
  @CsvSource({
    "L6, 12, true",
    "O1, 12, true",
    "1084, 2, false",
    "1095, 6, false",
    "1075, 3, false",
    "5160, 12, false",
    "5160, 2, true"
  })
  void whatMayHardenInAir(String id, double mm, boolean expected) {
    Composition c = steels.find(id).orElseThrow().analysis();
    QuenchedSteel forged = QuenchedSteel.from(k, c, 900, 4);
    assertEquals(expected, forged.mayHardenInAir(Section.plate(mm / 1000)));
  }

  /** The least margin of thousandths either way of the steps. */
  @Test
  void airHardeningStepsAtHalf() {
    HardeningDepth depth = k.hardening().depth();
    assertTrue(depth.mayHardenInAir(0.501));
    assertFalse(depth.mayHardenInAir(0.499));
    assertEquals(Depth.THROUGH, depth.depth(1.151, 2));
    assertEquals(Depth.NEARLY, depth.depth(1.149, 2));
    assertEquals(Depth.NEARLY, depth.depth(0.851, 2));
    assertEquals(Depth.SHELL, depth.depth(0.849, 0.851));
    assertEquals(Depth.NOT, depth.depth(0.2, 0.849));
  }

  @Test
  void theMiddleOfAThickPlainSteelStaysSoft() {
    QuenchResult r = steel("1095").quench(Section.plate(0.025), in("water"));
    assertTrue(r.faceHrc().value() > 60 && r.coreHrc().value() < 45, r.toString());
    assertTrue(r.coreSeconds8to5() > 2 * r.longestSeconds8to5(), r.toString());
    assertTrue(r.faceSeconds8to5() < r.coreSeconds8to5());
    assertTrue(r.greatestDifferenceKelvin() > 100);
  }

  /** Common practice, no source: 1095 has about a second from 1300 to 900 F. */
  @Test
  void plainSteelHasAboutASecond() {
    double seconds = steel("1095").longestSeconds(704, 482);
    assertTrue(seconds > 0.5 && seconds < 2, () -> "seconds " + seconds);
  }

  @Test
  void carbonBeyondWhatAusteniteHoldsStaysInCarbide() {
    Composition w2 = Analyses.named("W2");
    double cool = dissolved(w2, 780);
    double warm = dissolved(w2, 810);
    assertTrue(cool < warm && warm < w2.carbon());
    assertEquals(w2.carbon(), dissolved(w2, 1200));
    assertEquals(0, dissolved(w2, 650));
  }

  /**
   * Vanadium in carbide does not deepen hardening: what the grade comes to without any, give or
   * take what little is in solution at its own hardening heat, and what chromium comes free where
   * vanadium takes the carbon of cementite.
   */
  @ParameterizedTest
  @CsvSource({"W2, 790, 0.03", "80CrV2, 830, 0.05", "L2, 810, 0.09", "6150, 860, 0.11"})
  void vanadiumInCarbideDoesNotDeepenHardening(String id, double celsius, double more) {
    Composition grade = steels.find(id).orElseThrow().analysis();
    Composition bare = grade.with(Element.V, 0);
    QuenchedSteel hardened = QuenchedSteel.from(k, grade, celsius, GRAIN);
    double counted =
        k.hardening()
            .idealDiameter()
            .idealDiameterMetres(
                QuenchedSteel.from(k, bare, celsius, GRAIN)
                    .austenite()
                    .with(Element.V, grade.percent(Element.V)),
                GRAIN);
    double without = QuenchedSteel.from(k, bare, celsius, GRAIN).idealDiameterMetres();
    assertTrue(hardened.idealDiameterMetres() < (1 + more) * without);
    assertTrue(hardened.idealDiameterMetres() < 0.86 * counted);
  }

  /** What vanadium holds of the carbon is missing in the austenite, and no more than that. */
  @Test
  void vanadiumHoldsCarbonBack() {
    Composition grade = steels.find("6150").orElseThrow().analysis();
    Composition austenite = QuenchedSteel.from(k, grade, 860, GRAIN).austenite();
    double bound = grade.percent(Element.V) - austenite.percent(Element.V);
    assertEquals(12.011 / 50.942 * bound, grade.carbon() - austenite.carbon(), 1e-12);
    assertEquals(
        k.hardening().vanadium().product(860),
        austenite.percent(Element.V) * austenite.carbon(),
        1e-12);
  }

  @Test
  void coldMakesItHarder() {
    QuenchedSteel o1 = steel("O1");
    assertTrue(o1.retainedShare(-80) < o1.retainedShare(20));
    assertTrue(o1.fullHrc(-80).value() > o1.fullHrc(20).value());
  }

  @Test
  void temperForAHardnessGivesThatHardness() {
    for (String id : new String[] {"1084", "1095", "O1", "75Ni8", "80CrV2"}) {
      QuenchedSteel s = steel(id);
      TemperingCurve curve = s.tempering(id, s);
      Estimate kelvin = curve.kelvinFor(60, 2);
      assertEquals(60, curve.hrc(kelvin.value(), 2).value(), 1e-6, id);
      assertTrue(kelvin.low() < kelvin.value() && kelvin.value() < kelvin.high());
      assertTrue(kelvin.value() > 420 && kelvin.value() < 560, id + " " + kelvin);
      assertTrue(kelvin.exceeded().isEmpty());
    }
  }

  @Test
  void aHardnessThatCannotBeHadIsRemarked() {
    TemperingCurve curve = steel("1084").tempering();
    assertEquals(373.15, curve.kelvinFor(70, 2).value());
    assertEquals(1, curve.kelvinFor(70, 2).exceeded().size());
    assertEquals(1, curve.kelvinFor(-90, 2).exceeded().size());
  }

  /** Two tempers of an hour are one of two hours; and less carbon tempers to less. */
  @Test
  void tempersAddUpAndCarbonMovesTheTable() {
    HollomonJaffe1945 law = k.hardening().parameter();
    assertEquals(law.parameter(470, 2), law.after(law.parameter(470, 1), 470, 1), 1e-9);
    QuenchedSteel usual = steel("1095");
    QuenchedSteel poor = new QuenchedSteel(k, Analyses.of("C0.55 Mn0.4"), GRAIN);
    double difference = usual.fullHrc(20).value() - poor.fullHrc(20).value();
    assertEquals(
        usual.tempering("1095", usual).hrc(480, 2).value() - difference,
        poor.tempering("1095", usual).hrc(480, 2).value(),
        1e-9);
    assertTrue(difference > 1);
  }

  static Stream<Composition> analyses() {
    return Stream.concat(
        SteelTable.load(DataFolder.packed()).steels().stream().map(Steel::analysis),
        ExtremeAnalyses.all());
  }

  @ParameterizedTest
  @MethodSource("analyses")
  void everySteelGivesPossibleNumbers(Composition c) {
    QuenchedSteel s = QuenchedSteel.from(k, c, HARDEN_CELSIUS, GRAIN);
    assertTrue(s.idealDiameterMetres() >= 0 && s.idealDiameterMetres() < 1e4);
    assertTrue(s.retainedShare(20) >= 0 && s.retainedShare(20) <= 1);
    within(s.fullHrc(20), 10, 70);
    QuenchResult r = s.quench(Section.plate(0.006), in("oil-medium"));
    within(r.coreHrc(), 0, 70);
    within(r.faceHrc(), 0, 70);
    assertTrue(r.faceHrc().value() >= r.coreHrc().value());
    assertFalse(Double.isNaN(r.marginAtCore()) || Double.isNaN(r.marginAtFace()));
    within(s.tempering().hrc(473, 2), 0, 70);
  }

  private static void within(Estimate e, double low, double high) {
    assertTrue(
        e.low() <= e.value() && e.value() <= e.high() && e.value() >= low && e.high() <= high,
        e::toString);
  }

  /** Below A1 nothing dissolves, above it all that the Accm line allows and the steel has. */
  @Test
  void carbonDissolvesFromA1() {
    Composition steel = steels.find("1095").orElseThrow().analysis();
    PhaseLines lines = k.lines(steel);
    double a1 = lines.a1Celsius();
    assertEquals(0, dissolved(steel, Math.nextDown(a1)));
    assertTrue(dissolved(steel, a1) > 0.6);
    double at = dissolved(steel, 780);
    assertEquals(780, lines.accmCelsius(at), 0.01);
    assertEquals(steel.carbon(), dissolved(steel, 1000));
    QuenchedSteel hardened = QuenchedSteel.from(k, steel, 780, GRAIN);
    assertEquals(at, hardened.austenite().carbon(), 1e-12);
    assertEquals(
        k.hardening().idealDiameter().idealDiameterMetres(steel.with(Element.C, at), GRAIN),
        hardened.idealDiameterMetres(),
        1e-12);
  }

  @Test
  void martensiteStartsBetweenTheTwoFormulas() {
    Composition austenite = steel("1095").austenite();
    double first = k.critical().ms().celsius(austenite);
    double second = k.critical().highCarbonMs().celsius(austenite);
    Estimate ms = steel("1095").msCelsius();
    assertEquals((first + second) / 2, ms.value());
    assertEquals(Math.min(first, second), ms.low());
    assertEquals(Math.max(first, second), ms.high());
    assertTrue(ms.low() < ms.high());
  }

  @Test
  void oneHardnessOfTheMiddleHoweverAsked() {
    QuenchedSteel o1 = steel("O1");
    Section section = Section.plate(0.012);
    QuenchResult all = o1.quench(section, in("oil-medium"));
    assertEquals(all.coreHrc(), o1.coreHrc(section, in("oil-medium")));
    assertEquals(
        k.hardening().criterion().longestSeconds(o1.idealDiameterMetres(), 800, 500),
        o1.longestSeconds8to5(),
        1e-9);
    assertEquals(o1.longestSeconds8to5(), all.longestSeconds8to5());
  }

  /** A steel without a table of its own is tempered by its analysis, from its own hardness. */
  @Test
  void withoutATableItsAnalysisSpeaks() {
    QuenchedSteel steel = steel("1084");
    double full = steel.fullHrc(20).value();
    Estimate law = k.hardening().temperedByAnalysis().curve(steel.austenite(), full).hrc(500, 2);
    assertEquals(law.value(), steel.tempering("no such steel", steel).hrc(500, 2).value());
    assertEquals(law.value(), steel.tempering().hrc(500, 2).value());
  }

  /** A grade with a table goes by it, moved by what it hardens to now above or below the usual. */
  @Test
  void withATableItsOwnSpeaks() {
    TemperingCurve own = k.hardening().tempering().of("O1").orElseThrow();
    QuenchedSteel usual = steel("O1");
    assertEquals(own.hrc(500, 2).value(), usual.tempering("O1", usual).hrc(500, 2).value(), 1e-9);
    Composition lean = usual.austenite().with(Element.C, 0.4);
    QuenchedSteel less = new QuenchedSteel(k, lean, GRAIN);
    double softer = usual.fullHrc(20).value() - less.fullHrc(20).value();
    assertTrue(softer > 3);
    assertEquals(
        own.hrc(500, 2).value() - softer, less.tempering("O1", usual).hrc(500, 2).value(), 1e-9);
  }

  /** Beyond the hottest of its table it falls as its analysis has it, with the band of that. */
  @Test
  void beyondItsTableItsAnalysisSpeaks() {
    QuenchedSteel steel = steel("1080");
    TemperingCurve curve = steel.tempering("1080", steel);
    Estimate end = curve.hrc(287.8 + 273.15, 2);
    Estimate hotter = curve.hrc(500 + 273.15, 2);
    TemperingCurve law = steel.tempering();
    assertEquals(2, end.high() - end.value(), 1e-9);
    assertEquals(3, hotter.high() - hotter.value(), 1e-9);
    assertEquals(1, hotter.exceeded().size());
    double fallen = law.hrc(287.8 + 273.15, 2).value() - law.hrc(500 + 273.15, 2).value();
    assertEquals(fallen, end.value() - hotter.value(), 0.4);
  }

  private double dissolved(Composition steel, double celsius) {
    return k.austenite(k.lines(steel), steel.carbon(), celsius)
        .map(Composition::carbon)
        .orElse(0.0);
  }
}
