package seamsoak.pairing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.support.KnownPairs;
import seamsoak.unit.UnitSystem;
import seamsoak.words.pair.PairWords;

/**
 * Pairs of which the trade knows how they go (common practice, no source), and what must hold for
 * every pair.
 */
class PairCheckTest {
  private final KnownPairs known = new KnownPairs();

  @ParameterizedTest
  @CsvSource({
    "1084, 75Ni8",
    "1080, 75Ni8",
    "1075, 75Ni8",
    "80CrV2, 75Ni8",
    "1095, 1084",
    "1018, 1008"
  })
  void fits(String first, String second) {
    assertEquals(Rating.FITS, known.of(first, second).rating());
  }

  @Test
  void highCarbonWithNickelSteelIsAtMostAMatterOfTheHardeningHeat() {
    PairResult pair = known.of("1095", "75Ni8");
    assertNotEquals(Rating.CLASH, pair.rating());
    pair.deciding().ifPresent(f -> assertEquals(CheckName.HARDENING_WINDOW, f.check()));
  }

  @ParameterizedTest
  @CsvSource({
    "O1, 1084, HARDENABILITY, WATCH",
    "1075, O1, HARDENABILITY, WATCH",
    "1084, L6, HARDENABILITY, WATCH",
    "52100, 1084, OXIDE_CHROMIUM, WATCH",
    "1084, 1018, SOFT_LAYER, WATCH",
    "9260, 1084, OXIDE_SILICON, WATCH",
    "A2, 1084, NORMALIZING, WATCH",
    "1018, 4130, SOFT_LAYER, WATCH",
    "D2, 1084, HARDENING_WINDOW, CLASH",
    "D2, 1084, HARDENABILITY, CLASH",
    "D2, 1084, OXIDE_CHROMIUM, CLASH",
    "D2, 1084, SOLIDUS_MARGIN, CLASH",
    "1084, Ni200, SOFT_LAYER, WATCH",
    "1084, Ni200, CARBON_BARRIER, WATCH"
  })
  void isWarnedOf(String first, String second, CheckName check, Rating rating) {
    assertEquals(rating, known.rating(first, second, check));
  }

  @ParameterizedTest
  @CsvSource({"1008", "1045", "1084", "W2", "PUREIRON", "75Ni8", "5160"})
  void austeniticStainlessClashesWithAnythingPlainForExpansionAndOxide(String plain) {
    PairResult pair = known.of("304", plain);
    assertEquals(Rating.CLASH, pair.rating());
    assertEquals(Rating.CLASH, pair.check(CheckName.OXIDE_CHROMIUM).orElseThrow().rating());
    assertEquals(Rating.CLASH, pair.check(CheckName.EXPANSION_COLD).orElseThrow().rating());
  }

  @Test
  void nickelIsBrightSoftAndSlowsCarbonButDoesNotClash() {
    PairResult pair = known.of("1084", "Ni200");
    assertEquals(Rating.WATCH, pair.rating());
    Finding contrast = pair.check(CheckName.CONTRAST).orElseThrow();
    assertTrue(contrast.second() > contrast.first(), says(pair, contrast));
    assertTrue(says(pair, contrast).contains("Ni200 the brighter one"), says(pair, contrast));
    assertTrue(
        says(pair, pair.check(CheckName.SOFT_LAYER).orElseThrow()).contains("never at the edge"),
        says(pair, contrast));
    Finding barrier = pair.check(CheckName.CARBON_BARRIER).orElseThrow();
    assertTrue(barrier.second() > 3 * barrier.first(), says(pair, barrier));
  }

  @Test
  void carbonGoesDownItsActivityNotItsPercentage() {
    // nickel raises the activity: at the same carbon it flows out of the nickel steel
    PairSteel plain = known.check.steel(seamsoak.steel.Steel.written("C0.75 Mn0.40 Si0.25"));
    PairSteel nickel = known.check.steel(seamsoak.steel.Steel.written("C0.75 Mn0.40 Si0.25 Ni2"));
    PairResult pair = known.check.of(nickel, plain, KnownPairs.USUAL);
    Finding pull = pair.check(CheckName.CARBON_ACTIVITY).orElseThrow();
    assertTrue(pull.first() > pull.second(), says(pair, pull));
    Finding even = pair.check(CheckName.EVENED_CARBON).orElseThrow();
    assertTrue(even.first() < 0.75 && even.second() > 0.75, says(pair, even));
  }

  @Test
  void evenedOutCarbonIsThatOfThePublishedModel() {
    // 1084 with 75Ni8, 50 to 50, all at 1000 C in the notes: 0.821 and 0.769; 0.005 for 1100 C
    PairSteel plain = known.check.steel(seamsoak.steel.Steel.written("C0.84 Mn0.75 Si0.22"));
    PairSteel nickel = known.check.steel(seamsoak.steel.Steel.written("C0.75 Mn0.40 Si0.25 Ni2"));
    Finding even =
        known
            .check
            .of(plain, nickel, KnownPairs.USUAL)
            .check(CheckName.EVENED_CARBON)
            .orElseThrow();
    assertEquals(0.821, even.first(), 0.005);
    assertEquals(0.769, even.second(), 0.005);
  }

  @Test
  void aSteelWithItselfFitsWithoutAGap() {
    for (PairSteel s : known.all()) {
      PairResult alone = known.check.of(s, s, KnownPairs.USUAL);
      assertEquals(Rating.FITS, alone.rating(), s.id());
      assertTrue(alone.same());
      alone.checks().forEach(f -> assertEquals(0, f.gap(), 0, s.id() + " " + f.check()));
    }
  }

  @Test
  void theOtherOrderGivesTheSameRatingAndMirroredReasons() {
    List<PairSteel> all = known.all();
    PairSetting unequal =
        new PairSetting(2e-3, 3e-3, 5e-3, java.util.OptionalDouble.empty(), false);
    PairSetting swapped =
        new PairSetting(3e-3, 2e-3, 5e-3, java.util.OptionalDouble.empty(), false);
    int pairs = 0;
    for (int i = 0; i < all.size(); i++) {
      for (int j = 0; j < i; j++) {
        PairResult one = known.check.of(all.get(i), all.get(j), unequal);
        PairResult other = known.check.of(all.get(j), all.get(i), swapped);
        assertMirrored(one, other);
        pairs++;
      }
    }
    assertEquals(67 * 66 / 2, pairs);
  }

  private static void assertMirrored(PairResult one, PairResult other) {
    String pair = one.first().id() + " " + one.second().id();
    assertEquals(one.rating(), other.rating(), pair);
    assertEquals(one.checks().size(), other.checks().size(), pair);
    for (int i = 0; i < one.checks().size(); i++) {
      Finding a = one.checks().get(i);
      Finding b = other.checks().get(i);
      String where = pair + " " + a.check();
      assertEquals(a.check(), b.check(), where);
      assertEquals(a.rating(), b.rating(), where);
      assertEquals(a.first(), b.second(), 1e-9 * Math.abs(a.first()), where);
      assertEquals(a.second(), b.first(), 1e-9 * Math.abs(a.second()), where);
      assertEquals(a.gap(), b.gap(), 1e-9 * Math.max(1, a.gap()), where);
      assertEquals(a.rated(), b.rated(), 1e-9 * Math.max(1, Math.abs(a.rated())), where);
      assertEquals(a.firstRange(), b.secondRange(), where);
      assertEquals(words(says(one, a)), words(says(other, b)), where);
    }
  }

  private static String says(PairResult pair, Finding f) {
    return new PairWords(UnitSystem.METRIC, pair.first().id(), pair.second().id()).reason(f);
  }

  /** The same words, in whatever order the two steels stand. */
  private static String words(String reason) {
    return Stream.of(reason.split("[^-\\w.]+"))
        .map(w -> w.replaceAll("\\.$", "").toLowerCase(java.util.Locale.ROOT))
        .sorted()
        .collect(Collectors.joining(" "));
  }

  @Test
  void everyReasonCarriesItsNumbersItsLimitAndHowWellThatIsKnown() {
    List<PairSteel> all = known.all();
    for (int i = 0; i < all.size(); i++) {
      PairResult pair =
          known.check.of(all.get(i), all.get((i + 17) % all.size()), KnownPairs.USUAL);
      for (Finding f : pair.checks()) {
        assertTrue(Double.isFinite(f.first()) && Double.isFinite(f.second()), f.toString());
        assertTrue(Double.isFinite(f.gap()) && f.gap() >= 0, f.toString());
        assertTrue(Double.isFinite(f.rated()), f.toString());
        String reason = says(pair, f);
        assertTrue(reason.contains(pair.first().id()), reason);
        assertTrue(reason.contains(pair.second().id()), reason);
        if (f.limit().watch().isPresent()) {
          assertTrue(reason.contains("Limit: watch"), reason);
          assertTrue(reason.contains(f.limit().standing().words()), reason);
        }
      }
    }
  }

  @Test
  void theWorstComesFirstThenTheOrderOfTheTable() {
    for (PairSteel s : known.all()) {
      List<Finding> checks = known.check.of(known.steel("1084"), s, KnownPairs.USUAL).checks();
      for (int i = 1; i < checks.size(); i++) {
        Finding before = checks.get(i - 1);
        Finding after = checks.get(i);
        int worse = before.rating().compareTo(after.rating());
        assertTrue(worse >= 0, before.check() + " " + after.check());
        if (worse == 0) {
          assertTrue(before.limit().order() < after.limit().order());
        }
      }
    }
  }

  @Test
  void aClosedStackLetsMoreChromiumIn() {
    PairSetting closed = KnownPairs.USUAL.inClosedStack();
    assertTrue(known.of("A2", "1084", closed).check(CheckName.OXIDE_CHROMIUM).isEmpty());
    assertEquals(
        Rating.FITS,
        known
            .of("A2", "1084", closed)
            .check(CheckName.OXIDE_CHROMIUM_SEALED)
            .orElseThrow()
            .rating());
    assertEquals(
        Rating.WATCH,
        known
            .of("440C", "1084", closed)
            .check(CheckName.OXIDE_CHROMIUM_SEALED)
            .orElseThrow()
            .rating());
  }

  @Test
  void thinLayersLoseMoreInTheFirstWelds() {
    double thin =
        known
            .of("1095", "1018", KnownPairs.setting(0.5))
            .check(CheckName.CARBON_LOSS)
            .orElseThrow()
            .rated();
    double thick =
        known
            .of("1095", "1018", KnownPairs.setting(6))
            .check(CheckName.CARBON_LOSS)
            .orElseThrow()
            .rated();
    assertTrue(thin > thick, thin + " " + thick);
  }

  @Test
  void sulfurAndCopperWarn() {
    assertEquals(Rating.CLASH, known.rating("C0.4 Mn1.5 S0.30", "1084", CheckName.SULFUR));
    assertEquals(Rating.WATCH, known.rating("C0.4 Mn0.8 Cu0.4", "1084", CheckName.COPPER));
    assertTrue(known.finding("1084", "75Ni8", CheckName.SULFUR).isEmpty());
  }
}
