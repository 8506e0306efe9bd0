package seamsoak.property;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.data.DataFolder;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.CriticalTemperature;
import seamsoak.property.phase.CarbonDiffusivity;
import seamsoak.source.Exceeded;
import seamsoak.source.Range;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.support.Analyses;

/** The ranges that each correlation says it holds in, and that leaving them is noticed. */
class ValidityTest {
  private static final String LOW_ALLOY =
      " Mn 0 2 Si 0 2 V 0 2 Cr 0 5 Ni 0 5 Mo 0 5 W 0 5 Cu 0 1 Al 0 1 P 0 0.1";
  private static final String KASATKIN =
      "C 0 0.83 Mn 0 2 Si 0 1 Cr 0 2 Mo 0 1 V 0 0.5 W 0 1 Al 0 0.2 P 0 0.04 S 0 0.04";
  private static final String TRZASKA =
      "C 0.06 0.68 Mn 0 2.04 Si 0 1.75 Cr 0 2.3 Ni 0 3.85 Mo 0 1.05 V 0 0.5 Cu 0 1";

  private static final List<String> NEITHER_CARBON_NOR_HEAT =
      List.of("hardness", "severity", "section", "margin");

  private final Correlations k = Correlations.load(DataFolder.packed());

  private Map<String, Correlation> all() {
    Stream<Correlation> regressions =
        Stream.of(
                k.critical().lower(),
                k.critical().upper(),
                k.critical().martensiteStart(),
                k.critical().bainiteStart(),
                List.of(k.forging().solidus()))
            .flatMap(List::stream)
            .map(CriticalTemperature::correlation);
    Stream<Correlation> others =
        Stream.of(
            k.critical().accmAlloy().correlation(),
            k.hardening().rateByAnalysis().correlation(),
            k.hardening().rateAlike().correlation(),
            k.hardening().retained().correlation(),
            k.forging().rule().highestForging().correlation(),
            k.forging().rule().burning().correlation(),
            k.forging().rule().safeForging().correlation(),
            k.forging().steelScaling().correlation(),
            k.forging().ironScaling().correlation(),
            k.forging().grainNumber().correlation(),
            k.forging().grainGrowth().correlation(),
            k.sections().steel().correlation(),
            k.sections().airCooling().correlation(),
            k.sections().furnace().correlation(),
            k.hardening().martensite().correlation(),
            k.hardening().asQuenched().correlation(),
            k.hardening().normalized().correlation(),
            k.hardening().brinell().correlation(),
            k.hardening().airCooled().correlation(),
            k.hardening().idealDiameter().correlation(),
            k.hardening().vanadium().correlation(),
            k.hardening().parameter().correlation(),
            k.hardening().magnet().correlation(),
            k.hardening().conversion().correlation(),
            k.hardening().criterion().correlation(),
            k.hardening().depth().correlation(),
            k.hardening().quench().correlation(),
            k.critical().ae1().correlation(),
            k.phases().ironCarbon().a3(),
            k.phases().ironCarbon().accm(),
            k.phases().mobility().correlation(),
            k.phases().scaledSurface().correlation(),
            k.phases().chromiumCarbide().correlation(),
            k.phases().ferriteActivity().correlation(),
            k.phases().activity().iron(),
            k.phases().activity().of(Element.CR).orElseThrow(),
            k.phases().activity().of(Element.W).orElseThrow(),
            k.forging().rule().refusal(),
            k.forging().rule().stainless(),
            k.mechanics().martensiteGrowth().correlation(),
            k.mechanics().expansion().correlation(),
            k.mechanics().expansion().lattice().correlation(),
            k.mechanics().stainlessExpansion().correlation(),
            k.mechanics().hotStrength().correlation(),
            k.mechanics().welding().correlation(),
            k.hardening().window().correlation(),
            k.mechanics().brightness().correlation());
    Stream<Correlation> diffusivities =
        Stream.of(k.phases().austeniteDiffusivities(), k.phases().ferriteDiffusivities())
            .flatMap(List::stream)
            .map(CarbonDiffusivity::correlation);
    return Stream.of(regressions, others, diffusivities)
        .flatMap(s -> s)
        .collect(Collectors.toMap(c -> c.name() + ", " + c.gives(), c -> c));
  }

  /**
   * From the papers where they say, else what their type's comment names as our judgement; the
   * carbon limits of "low alloy" regressions are those of the analyses they were fitted to.
   */
  @ParameterizedTest
  @CsvSource({
    "andrews1965-ae1, Ae1, C 0 0.6 low alloy",
    "grange1961-ae1, Ae1, C 0 0.6 low alloy",
    "hougardy1984-ac1, Ac1, C 0.1 0.6 low alloy",
    "eldis1982-ae1, Ae1, C 0 0.6 low alloy",
    "kasatkin1984-ac1, Ac1, Kasatkin Ni 0 0.3",
    "trzaska2016-ac1, Ac1, Trzaska",
    "andrews1965-ae3, Ae3, C 0 0.6 low alloy",
    "grange1961-ae3, Ae3, C 0 0.6 low alloy",
    "hougardy1984-ac3, Ac3, C 0.1 0.6 low alloy",
    "eldis1982-ae3, Ae3, C 0 0.6 low alloy",
    "kasatkin1984-ac3, Ac3, Kasatkin Ni 0 3",
    "trzaska-dobrzanski2007-ac3, Ac3, Trzaska",
    "trzaska2016-ac3, Ac3, Trzaska",
    "lee-lee2007-accm, alloy shift of Accm, C 0.2 0.7 Mn 0 1.5 Si 0 0.3 Ni 0 2.8 Cr 0 1.5 Mo 0 0.6",
    "van-bohemen2012-rate, retained austenite, C 0 1.5 low alloy",
    "koistinen-marburger1959, retained austenite, C 0.37 1.1",
    "retained-austenite, 'retained austenite, with its band', ''",
    "andrews1965-ms-linear, Ms, C 0 0.6 low alloy",
    "andrews1965-ms-product, Ms, C 0 0.6 low alloy",
    "van-bohemen2012-ms, Ms, C 0 1.5 low alloy",
    "ingber-kunert2022-ms, Ms, C 0 1.5 low alloy",
    "barbier2014-ms, Ms, C 0 1.5 low alloy",
    "capdevila2002-ms, Ms,"
        + " C 0 1.65 Mn 0 3.76 Si 0 3.4 Cr 0 17.9 Ni 0 27.2 Mo 0 5.1 W 0 12.9 Cu 0 0.98",
    "hirai1997-solidus, solidus, C 0 1.5 low alloy S 0 0.1",
    "brady-highest-forging, highest forging temperature, C 0.2 1.5",
    "brady-burning, burning temperature, C 0.2 1.5",
    "asm14-safe-forging, highest safe forging temperature, C 0.1 1.1",
    "birks-jackson1970-scaling, scaling constant of steel, temperature 700 1250",
    "paidassi1958-scaling, scaling constant of iron, temperature 700 1250",
    "astm-e112, grain size number, ''",
    "lee-lee2008-grain, austenite grain size, C 0 0.6 low alloy temperature 800 1250",
    "en1993-1-2, heat and expansion of steel, temperature 20 1200",
    "air-cooling, cooling rate in still air, temperature 20 1200",
    "furnace-heat, heating in kiln and forge, temperature 20 1300",
    "astm-a255-hardness, hardness of quenched steel, C 0.1 0.69",
    "as-quenched-hardness, hardness as quenched, C 0.1 1.5",
    "normalized-hardness, hardness as normalized, C 0.15 0.95",
    "iso18265-brinell, Vickers against Brinell hardness, hardness 80 450",
    "air-cooled-hardness, hardness as cooled in air, section 1 100",
    "astm-a255, ideal diameter,"
        + " C 0 0.9 Mn 0 1.95 Si 0 2 Ni 0 3.5 Cr 0 1.75 Mo 0 0.55 Cu 0 0.55 V 0 0.2",
    "narita1975-vanadium-carbide, vanadium and carbon in solution beside vanadium carbide,"
        + " temperature 750 1250",
    "hollomon-jaffe1945, tempering parameter, temperature 100 700",
    "van-bohemen2012-bs, Bs, C 0 1.5 low alloy",
    "steven-haynes1956-bs, Bs, C 0.1 0.55 low alloy",
    "li1998-bs, Bs, C 0 1 low alloy",
    "magnet, heat at which the magnet lets go, ''",
    "astm-e140, Rockwell C against Vickers hardness, hardness 20 68",
    "grossmann-criterion, ideal diameter that a section needs, severity 0.02 5",
    "hardening-depth, hardness of a slower quench, margin 0 100",
    "quench-rule, what to quench in, ''",
    "ae1-mean, Ae1, ''",
    "fe-c-a3, A3 of iron and carbon, C 0.02 0.76",
    "fe-c-accm, Accm of iron and carbon, C 0.76 2",
    "agren1986-mobility, mobility of carbon in austenite, C 0 2.1 temperature 700 1400",
    "agren1986-mobility, diffusivity of carbon in austenite, C 0 2.1 temperature 700 1400",
    "liu2009, diffusivity of carbon in austenite, C 0 2.1 temperature 700 1400",
    "tibbetts1980, diffusivity of carbon in austenite, C 0.1 1.3 temperature 800 1100",
    "slycke-ericsson1981, diffusivity of carbon in austenite, C 0 1.5 temperature 800 1200",
    "lee-matlock-van-tyne2011, diffusivity of carbon in austenite,"
        + " C 0 1.5 Mn 0 2 Si 0 2 Ni 0 4 Cr 0 1.1 Mo 0 0.6 temperature 800 1200",
    "oneill1993-surface, activity of carbon at a face under scale, temperature 726.85 1249.85",
    "deighton1970-chromium-carbide,"
        + " carbon in solution beside chromium carbide in austenitic stainless steel,"
        + " temperature 700 1150 Cr 16 20 Ni 8 14",
    "wells1950, diffusivity of carbon in austenite, C 0 1.5 temperature 800 1200",
    "wert1950, diffusivity of carbon in ferrite, temperature -40 912",
    "agren1982-ferrite, diffusivity of carbon in ferrite, temperature -40 912",
    "gustafson1985-ferrite, activity of carbon in ferrite, temperature 20 912",
    "austenite-activity-Fe, 'activity of carbon in austenite, part of Fe', temperature 700 1300",
    "austenite-activity-Cr, 'activity of carbon in austenite, part of Cr',"
        + " Cr 0 5 temperature 700 1300",
    "austenite-activity-W, 'activity of carbon in austenite, part of W',"
        + " W 0 5 temperature 700 1300",
    "asm4-martensite-growth, growth of austenite that becomes martensite, C 0 1.5",
    "cementite-volume, volume and expansion of cementite, ''",
    "stainless-expansion, mean expansion of austenitic stainless steel, temperature 20 870",
    "misaka-yoshimoto1967-hot-strength, hot strength,"
        + " C 0 1.2 Cr 0 5 Ni 0 5 temperature 750 1200",
    "welding-heat, heats for forge welding, ''",
    "hardening-range, hardening range where no sheet gives one, ''",
    "etch-brightness, brightness after etching, ''",
    "seki-nagata2005-lattice, lattice of ferrite and austenite, C 0 3.35 temperature 20 1277"
  })
  void ranges(String name, String gives, String expected) {
    Correlation c = all().get(name + ", " + gives);
    assertNotNull(c, "not there");
    String full =
        expected
            .replace(" low alloy", LOW_ALLOY)
            .replace("Kasatkin", KASATKIN)
            .replace("Trzaska", TRZASKA);
    assertEquals(full, written(c.validity()));
  }

  private static String written(List<Range> ranges) {
    return ranges.stream()
        .map(r -> r.quantity() + " " + number(r.low()) + " " + number(r.high()))
        .collect(Collectors.joining(" "));
  }

  private static String number(double x) {
    return x == Math.rint(x) ? String.format(Locale.ROOT, "%.0f", x) : Double.toString(x);
  }

  /** Just inside every end nothing is said, just outside one remark with the value. */
  @Test
  void leavingARangeIsNoticed() {
    for (Correlation c : all().values()) {
      for (Range r : c.validity()) {
        if (NEITHER_CARBON_NOR_HEAT.contains(r.quantity())) {
          continue;
        }
        double inside = r.high();
        double outside = r.high() * 1.001;
        assertTrue(of(c, r, inside).isEmpty(), () -> c.name() + " " + r);
        Exceeded e = new Exceeded(c.name(), r, outside);
        assertEquals(List.of(e), of(c, r, outside));
        if (r.low() != 0) {
          assertTrue(of(c, r, r.low()).isEmpty(), () -> c.name() + " " + r);
          assertEquals(1, of(c, r, r.low() - 1e-3).size(), () -> c.name() + " " + r);
        }
      }
    }
  }

  private static List<Exceeded> of(Correlation c, Range r, double value) {
    if (r.quantity().equals("temperature")) {
      return c.exceeded(value);
    }
    Element e = Element.valueOf(r.quantity().toUpperCase(Locale.ROOT));
    List<Exceeded> found = new ArrayList<>(c.exceeded(Composition.of(Map.of(e, value))));
    // an analysis without carbon leaves a carbon range that starts above none
    found.removeIf(x -> !x.range().equals(r));
    return found;
  }

  @Test
  void compositionAndTemperatureAreToldTogether() {
    Composition odd = Composition.of(Map.of(Element.C, 0.9, Element.NI, 6.0));
    assertEquals(3, k.forging().grainGrowth().correlation().exceeded(odd, 1300).size());
    assertEquals(2, k.forging().grainGrowth().correlation().exceeded(odd, 1200).size());
  }

  /** Published factors bear out all but two elements. */
  @Test
  void saysWhichElementsWereChecked() {
    for (Element e : List.of(Element.CR, Element.MN, Element.SI, Element.NI)) {
      assertEquals(
          "0.006 in log10 per wt% against published alloy factors",
          k.phases().activity().of(e).orElseThrow().statedError());
    }
    for (Element e : List.of(Element.V, Element.W)) {
      assertEquals("not at hand", k.phases().activity().of(e).orElseThrow().statedError());
    }
    assertTrue(k.phases().activity().of(Element.CU).isEmpty());
  }

  @Test
  void estimatesNameTheirSource() {
    assertEquals("ae1-mean, judgement", k.critical().ae1().estimate(Analyses.of("C0.8")).source());
  }

  /** Beyond its limits a low alloy regression is taken at them. */
  @Test
  void moreThanTheLimitCountsAsTheLimit() {
    for (CriticalTemperature t : List.of(k.critical().lower().get(0), k.forging().solidus())) {
      Composition at = Composition.of(Map.of(Element.C, 0.5, Element.CR, 5.0, Element.MN, 2.0));
      Composition over = Composition.of(Map.of(Element.C, 0.5, Element.CR, 9.0, Element.MN, 3.0));
      assertEquals(t.celsius(at), t.celsius(over), 1e-12);
    }
  }

  /** So much alloy that martensite never starts: all that is not capped stops at absolute zero. */
  @Test
  void martensiteStartEndsAtAbsoluteZero() {
    Composition rich =
        Composition.of(
            Map.of(Element.C, 4.0, Element.MN, 20.0, Element.NI, 40.0, Element.CR, 30.0));
    for (CriticalTemperature t : k.critical().martensiteStart()) {
      assertEquals(-273.15, t.celsius(rich), 1e-12, t.correlation().name());
    }
  }
}
