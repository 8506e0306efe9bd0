package seamsoak.property;

import java.util.OptionalDouble;
import java.util.function.BiFunction;
import seamsoak.heat.Section;
import seamsoak.heat.SectionCurve;
import seamsoak.property.hardening.GrossmannCriterion;
import seamsoak.property.hardening.Hardening;
import seamsoak.property.hardening.PartlyHard;
import seamsoak.property.hardening.QuenchResult;
import seamsoak.property.hardening.Quenchant;
import seamsoak.property.hardening.TemperingCurve;
import seamsoak.property.phase.PhaseLines;
import seamsoak.source.Estimate;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.unit.Temperature;

/**
 * One austenite, and what quenching and tempering make of it. All that the correlations say about
 * hardening, for one analysis.
 *
 * <p>The analysis is that of the austenite at the hardening heat: its carbon and vanadium are what
 * is dissolved, its chromium less what cementite keeps; manganese that cementite keeps is counted
 * as dissolved.
 */
public final class QuenchedSteel {
  /** Where sub-zero treatment aside a quench ends, C. */
  public static final double ROOM_CELSIUS = 20;

  /**
   * Finer grain counts as this number: the standard's factors end here, and the margins of
   * hardening were set against blades as smiths refine them.
   */
  public static final double FINEST_GRAIN = 8;

  private static final double ZERO = Temperature.ZERO_CELSIUS;
  private static final double START_KELVIN = 850 + ZERO;
  private static final double HOT = 800;
  private static final double COOL = 500;

  /** More chromium or nickel than this and a steel is no low-alloy one, wt%; judgement. */
  private static final double LOW_ALLOY_PCT = 4;

  private final Correlations k;
  private final Composition austenite;
  private final double grainNumber;
  private final double ferriteShare;
  private final double idealDiameterMetres;

  /**
   * Of an austenite.
   *
   * @param austenite analysis with the carbon that is dissolved
   * @param grainNumber ASTM grain size number
   */
  public QuenchedSteel(Correlations k, Composition austenite, double grainNumber) {
    this(k, austenite, grainNumber, 0);
  }

  private QuenchedSteel(
      Correlations k, Composition austenite, double grainNumber, double ferriteShare) {
    this.k = k;
    this.austenite = austenite;
    this.grainNumber = grainNumber;
    this.ferriteShare = ferriteShare;
    this.idealDiameterMetres =
        k.hardening().idealDiameter().idealDiameterMetres(austenite, grainNumber);
  }

  /**
   * Of a steel hardened from a heat, after a hold as blades get: carbon, chromium and vanadium
   * beyond what austenite holds there stay in carbide, below A1 all of them; below Ac3 ferrite
   * stays.
   */
  public static QuenchedSteel from(
      Correlations k, Composition steel, double hardenCelsius, double grainNumber) {
    PhaseLines lines = k.lines(steel);
    return k.austenite(lines, steel.carbon(), hardenCelsius)
        .map(
            a ->
                new QuenchedSteel(
                    k, a, grainNumber, lines.ferriteShare(steel.carbon(), hardenCelsius)))
        .orElseGet(
            () -> new QuenchedSteel(k, steel.with(Element.C, 0).with(Element.V, 0), grainNumber));
  }

  /** Whether the formulas, which are for low-alloy steels, reach an analysis. */
  public static boolean reaches(Composition steel) {
    return steel.percent(Element.CR) <= LOW_ALLOY_PCT && steel.percent(Element.NI) <= LOW_ALLOY_PCT;
  }

  /** The austenite. */
  public Composition austenite() {
    return austenite;
  }

  /** The same with no more carbon than that, wt%. */
  public QuenchedSteel withCarbon(double percent) {
    return new QuenchedSteel(
        k,
        austenite.with(Element.C, Math.min(percent, austenite.carbon())),
        grainNumber,
        ferriteShare);
  }

  /** Share of ferrite that the heat was too low for, 0 to 1. */
  public double ferriteShare() {
    return ferriteShare;
  }

  /** Ideal diameter, m. */
  public double idealDiameterMetres() {
    return idealDiameterMetres;
  }

  /** Start of martensite, C: midway between van Bohemen's and Ingber and Kunert's. */
  public Estimate msCelsius() {
    return k.critical().martensite(austenite);
  }

  /** Share of austenite left after cooling to a temperature, from 0 to 1. */
  public double retainedShare(double coldestCelsius) {
    return retained(coldestCelsius).value();
  }

  /** The same with its band. */
  public Estimate retained(double coldestCelsius) {
    return k.hardening()
        .retained()
        .retained(austenite, k.critical().ms().celsius(austenite), coldestCelsius);
  }

  /** Hardness where all hardens, untempered, after cooling to a temperature. */
  public Estimate fullHrc(double coldestCelsius) {
    Hardening h = k.hardening();
    return h.ferriteLeft()
        .hrc(
            h.asQuenched().estimate(austenite.carbon(), retainedShare(coldestCelsius)),
            ferriteShare);
  }

  /** The longest from 800 to 500 C that still gives half martensite, s. */
  public double longestSeconds8to5() {
    return longestSeconds(HOT, COOL);
  }

  /** The longest from one temperature to another that still gives half martensite, s. */
  public double longestSeconds(double fromCelsius, double toCelsius) {
    return k.hardening().criterion().longestSeconds(idealDiameterMetres, fromCelsius, toCelsius);
  }

  /** What a quench makes of a section, in a bath at the middle of its range of use. */
  public QuenchResult quench(Section section, Quenchant quenchant) {
    return quench(section, quenchant, quenchant.severity());
  }

  /** The same for another of the quenchant's severities. */
  public QuenchResult quench(Section section, Quenchant quenchant, double severityPerInch) {
    Hardening h = k.hardening();
    double core = atCore(section, severityPerInch);
    double face = atFace(section, quenchant, severityPerInch);
    double edge = atEdge(section, quenchant, severityPerInch);
    SectionCurve curve =
        k.sections()
            .quench(
                section,
                START_KELVIN,
                quenchant,
                severityPerInch,
                quenchant.bathCelsius() + ZERO,
                COOL + ZERO);
    return new QuenchResult(
        h.depth().depth(core, face),
        core,
        face,
        edge,
        hrc(core, quenchant.kind(), section),
        hrc(face, quenchant.kind(), section),
        hrc(edge, quenchant.kind(), h.quench().edge(section)),
        h.criterion().neededMetres(section, severityPerInch),
        seconds(curve::coreSecondsBetween),
        seconds(curve::faceSecondsBetween),
        longestSeconds8to5(),
        curve.greatestDifferenceKelvin());
  }

  /** Ideal diameter over the one that the middle needs. */
  private double atCore(Section section, double severityPerInch) {
    return idealDiameterMetres / k.hardening().criterion().neededMetres(section, severityPerInch);
  }

  private double atFace(Section section, Quenchant quenchant, double severityPerInch) {
    Hardening h = k.hardening();
    double severity = h.depth().severityAtFace(quenchant.kind(), severityPerInch);
    return idealDiameterMetres / h.criterion().neededAtFaceMetres(section, severity);
  }

  /** An edge cools faster than any part of the face beside it. */
  private double atEdge(Section section, Quenchant quenchant, double severityPerInch) {
    double thin =
        k.hardening()
            .quench()
            .marginAtEdge(idealDiameterMetres, section, quenchant, severityPerInch);
    return Math.max(thin, atFace(section, quenchant, severityPerInch));
  }

  /** Hardness in the middle of a section, in a bath at the middle of its range of use. */
  public Estimate coreHrc(Section section, Quenchant quenchant) {
    return hrc(atCore(section, quenchant.severity()), quenchant.kind(), section);
  }

  /** Hardness of a section's thin edge, in a bath at the middle of its range of use. */
  public Estimate edgeHrc(Section section, Quenchant quenchant) {
    return hrc(
        atEdge(section, quenchant, quenchant.severity()),
        quenchant.kind(),
        k.hardening().quench().edge(section));
  }

  /**
   * Whether part of a section may harden by itself in still air. On the safe side, because the
   * criterion says too little hardening there. Ask it of the austenite that cools: after forging
   * with coarse grain and all carbon dissolved.
   */
  public boolean mayHardenInAir(Section section) {
    GrossmannCriterion criterion = k.hardening().criterion();
    return k.hardening().depth().mayHardenInAir(atCore(section, criterion.stillAirPerInch()));
  }

  /**
   * Hardness after tempering: by the table of the grade, moved by what its carbon now gives more or
   * less than the grade hardened as usual, and beyond the table's hottest as the analysis has it
   * fall; by the analysis alone where there is no table.
   *
   * @param steelId id of the grade; its table may be missing
   * @param usual the grade hardened as usual
   */
  public TemperingCurve tempering(String steelId, QuenchedSteel usual) {
    double now = fullHrc(ROOM_CELSIUS).value();
    return k.hardening()
        .tempering()
        .of(steelId)
        .map(own -> own.movedBy(now - usual.fullHrc(ROOM_CELSIUS).value()).continuedBy(tempering()))
        .orElseGet(this::tempering);
  }

  /** Hardness after tempering of a steel without a table of its own. */
  public TemperingCurve tempering() {
    return k.hardening().temperedByAnalysis().curve(austenite, fullHrc(ROOM_CELSIUS).value());
  }

  /**
   * The edge of a section with the hardness that it came out of a bath with, chilled to a
   * temperature.
   *
   * @param quenchedHrc hardness out of the bath
   */
  public PartlyHard partlyHardEdge(
      Section section, double quenchedHrc, double coldestCelsius, Quenchant.Kind kind) {
    Hardening h = k.hardening();
    double full = fullHrc(coldestCelsius).value();
    double chilled = quenchedHrc + full - fullHrc(ROOM_CELSIUS).value();
    double soft = softHrc(kind, h.quench().edge(section));
    return new PartlyHard(h.conversion(), full, soft, chilled);
  }

  private Estimate hrc(double margin, Quenchant.Kind kind, Section section) {
    Hardening h = k.hardening();
    return h.depth()
        .hrc(
            margin,
            fullHrc(ROOM_CELSIUS),
            h.martensite().halfMartensiteHrc(austenite.carbon()),
            softHrc(kind, section));
  }

  /** Hardness of what of a section does not harden in a bath. */
  private double softHrc(Quenchant.Kind kind, Section section) {
    Hardening h = k.hardening();
    double bar = h.conversion().hrc(h.airCooled().barVickers(austenite.carbon()));
    double inAir = h.conversion().hrc(h.airCooled().vickers(austenite.carbon(), section));
    return h.depth().softHrc(kind, bar, inAir);
  }

  private static double seconds(BiFunction<Double, Double, OptionalDouble> between) {
    return between.apply(HOT + ZERO, COOL + ZERO).orElseThrow();
  }
}
