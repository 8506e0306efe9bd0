package seamsoak.property.hardening;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import seamsoak.heat.Section;
import seamsoak.numeric.OneTerm;
import seamsoak.property.Correlations;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.phase.PhaseLines;
import seamsoak.reference.Inputs;
import seamsoak.source.Estimate;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.steel.Hardenability;

/** What hardening and tempering come to, by the names of the reference folders. */
public final class HardeningReferences {
  private static final double MILLIMETRES = 1e3;

  private HardeningReferences() {}

  public static void add(Map<String, ToDoubleFunction<Inputs>> all, Correlations k) {
    hardness(all, k);
    hardenability(all, k.hardening());
    all.put("quenched-bar-core", in -> bar(k, in).coreHrc().value());
    all.put("quenched-bar-face", in -> bar(k, in).faceHrc().value());
    tempering(all, k.hardening());
    all.put(
        "pearlite-time",
        in -> {
          Hardenability depth = Hardenability.values()[(int) in.get("depth")];
          return k.hardening().pearlite().hours(Optional.of(depth));
        });
    all.put("magnet", in -> k.hardening().magnet().celsius(lines(k, in), in.get("C")).value());
    all.put(
        "magnet-at-most", in -> k.hardening().magnet().celsius(lines(k, in), in.get("C")).high());
  }

  private static PhaseLines lines(Correlations k, Inputs in) {
    return k.lines(in.composition());
  }

  private static void hardness(Map<String, ToDoubleFunction<Inputs>> all, Correlations k) {
    Hardening h = k.hardening();
    all.put("astm-a255-hardness", in -> h.martensite().martensiteHrc(in.get("C")));
    all.put("astm-a255-hardness-half", in -> h.martensite().halfMartensiteHrc(in.get("C")));
    all.put("astm-e140-hrc", in -> h.conversion().hrc(in.get("HV")));
    all.put("astm-e140-vickers", in -> h.conversion().vickers(in.get("HRC")));
    all.put("normalized-hardness", in -> h.normalized().brinell(in.get("C")));
    all.put("iso18265-vickers", in -> h.brinell().vickers(in.get("HB")));
    all.put("air-cooled-hardness", in -> airCooled(h, in).value());
    all.put("air-cooled-hardness-low", in -> airCooled(h, in).low());
    all.put("air-cooled-hardness-high", in -> airCooled(h, in).high());
    all.put("as-quenched-martensite", in -> h.asQuenched().martensiteHrc(in.get("C")));
    all.put("as-quenched-measured", in -> h.asQuenched().measuredHrc(in.get("C")));
    all.put("as-quenched-enough", in -> h.asQuenched().enoughHrc(in.get("C")));
    all.put("as-quenched-hardens", in -> h.asQuenched().hardens(in.get("C")) ? 1 : 0);
    all.put("as-quenched-mixed", in -> h.asQuenched().hrc(in.get("C"), in.get("retained")));
    all.put(
        "ferrite-left",
        in -> {
          double hrc = in.get("HRC");
          Estimate without = new Estimate(hrc, hrc - 2, hrc + 2, "judgement", List.of());
          return h.ferriteLeft().hrc(without, in.get("share")).value();
        });
    all.put("carbon-in-solution", in -> austenite(k, in).carbon());
    all.put("chromium-in-solution", in -> austenite(k, in).percent(Element.CR));
    all.put("heating-at-most", in -> h.window().mostHeatingKelvin());
    all.put("slow-carbide-usual-minutes", in -> h.slowCarbide().usualSeconds() / 60);
    all.put("as-quenched-band", in -> h.asQuenched().estimate(in.get("C"), 0).high());
    all.put("as-quenched-band-low", in -> h.asQuenched().estimate(in.get("C"), 0).low());
    all.put(
        "as-quenched-hardness",
        in -> {
          Composition austenite = in.composition();
          double ms = k.critical().ms().celsius(austenite);
          double retained = k.hardening().retained().retained(austenite, ms, 20).value();
          return h.asQuenched().hrc(austenite.carbon(), retained);
        });
  }

  /** Of a plate, or of a bar where it is as wide as thick. */
  private static Estimate airCooled(Hardening h, Inputs in) {
    double thick = in.get("millimetres") / MILLIMETRES;
    double wide = in.get("wide") / MILLIMETRES;
    Section section = wide > 0 ? new Section(thick, wide) : Section.plate(thick);
    return h.airCooled().estimate(in.get("C"), section);
  }

  private static void hardenability(Map<String, ToDoubleFunction<Inputs>> all, Hardening h) {
    AstmA255 a255 = h.idealDiameter();
    all.put(
        "astm-a255",
        in -> MILLIMETRES * a255.idealDiameterMetres(in.composition(), in.get("grain")));
    all.put("astm-a255-carbon", in -> a255.carbonInches(in.get("C")));
    all.put("astm-a255-grain", in -> a255.grainFactor(in.get("grain")));
    for (Element e : Element.values()) {
      all.put("astm-a255-factor-" + e.symbol(), in -> a255.factor(e, in.get(e.symbol())));
    }
    all.put("hardening-depth", in -> slower(h, in).value());
    all.put("hardening-depth-low", in -> slower(h, in).low());
    all.put(
        "hardening-depth-soft",
        in ->
            h.depth()
                .softHrc(
                    in.get("bath") > 0 ? Quenchant.Kind.OIL : Quenchant.Kind.AIR,
                    in.get("normalized"),
                    in.get("normalized")));
    all.put(
        "hardening-depth-at-face",
        in ->
            h.depth()
                .severityAtFace(
                    in.get("water") > 0 ? Quenchant.Kind.WATER : Quenchant.Kind.OIL,
                    in.get("severity")));
    all.put(
        "vanadium-in-austenite",
        in ->
            h.vanadium()
                .dissolved(in.get("V"), in.get("C"), in.get("most"), in.get("celsius"))
                .vanadiumPct());
    GrossmannCriterion g = h.criterion();
    all.put(
        "grossmann-criterion-plate",
        in ->
            MILLIMETRES
                * g.neededMetres(
                    Section.plate(in.get("millimetres") / MILLIMETRES), in.get("severity")));
    all.put(
        "grossmann-criterion-bar",
        in ->
            MILLIMETRES
                * g.neededMetres(
                    Section.bar(in.get("millimetres") / MILLIMETRES), in.get("severity")));
    all.put(
        "grossmann-criterion-thickest",
        in ->
            MILLIMETRES
                * g.thickestPlateMetres(
                    a255.idealDiameterMetres(in.composition(), 7), in.get("severity")));
    all.put("grossmann-criterion-film", in -> g.filmWattsPerSquareMetreKelvin(in.get("severity")));
    all.put(
        "grossmann-criterion-seconds",
        in -> g.longestSeconds(in.get("millimetres") / MILLIMETRES, in.get("from"), in.get("to")));
    all.put("plane-wall-root", in -> OneTerm.plate(in.get("biot")).root());
    all.put("plane-wall-factor", in -> OneTerm.plate(in.get("biot")).factor());
    all.put("cylinder-root", in -> OneTerm.cylinder(in.get("biot")).root());
    all.put("cylinder-factor", in -> OneTerm.cylinder(in.get("biot")).factor());
  }

  private static QuenchResult bar(Correlations k, Inputs in) {
    String bath = in.get("water") > 0 ? "water-agitated" : "oil-medium";
    return new QuenchedSteel(k, in.composition(), in.get("grain"))
        .quench(
            Section.bar(in.get("millimetres") / MILLIMETRES),
            k.hardening().quenchants().find(bath).orElseThrow(),
            in.get("severity"));
  }

  private static Estimate slower(Hardening h, Inputs in) {
    double all = in.get("all");
    return h.depth()
        .hrc(
            in.get("margin"),
            new Estimate(all, all, all, "judgement", List.of()),
            in.get("half"),
            in.get("none"));
  }

  private static void tempering(Map<String, ToDoubleFunction<Inputs>> all, Hardening h) {
    HollomonJaffe1945 law = h.parameter();
    all.put("hollomon-jaffe1945", in -> law.parameter(kelvin(in), in.get("hours")));
    all.put(
        "hollomon-jaffe1945-celsius",
        in -> law.kelvin(law.parameter(kelvin(in), in.get("hours")), in.get("to")) - 273.15);
    for (TemperingSheet sheet : h.tempering().sheets()) {
      TemperingCurve curve = h.tempering().of(sheet.steel()).orElseThrow();
      all.put("tempering-" + sheet.steel(), in -> curve.hrc(kelvin(in), in.get("hours")).value());
    }
    all.put(
        "tempering-by-analysis", in -> byAnalysis(h, in).hrc(kelvin(in), in.get("hours")).value());
    all.put(
        "tempering-by-analysis-low",
        in -> byAnalysis(h, in).hrc(kelvin(in), in.get("hours")).low());
  }

  private static Composition austenite(Correlations k, Inputs in) {
    Composition c = in.composition();
    return k.austenite(k.lines(c), c.carbon(), in.get("celsius"), 60 * in.get("minutes"))
        .orElseThrow();
  }

  private static TemperingCurve byAnalysis(Hardening h, Inputs in) {
    return h.temperedByAnalysis().curve(in.composition(), in.get("quenched"));
  }

  /** From degrees Celsius, or from Fahrenheit where the sheet is printed so. */
  private static double kelvin(Inputs in) {
    return in.has("fahrenheit")
        ? (in.get("fahrenheit") - 32) / 1.8 + 273.15
        : in.get("celsius") + 273.15;
  }
}
