package seamsoak.schedule.demand;

import java.util.List;
import java.util.Optional;
import seamsoak.billet.Shop;
import seamsoak.billet.Workpiece;
import seamsoak.heat.Section;
import seamsoak.pairing.MayBe;
import seamsoak.property.Correlations;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.hardening.GrossmannCriterion;
import seamsoak.property.hardening.Hardening;
import seamsoak.property.hardening.HardeningDepth;
import seamsoak.property.phase.PhaseLines;
import seamsoak.source.Estimate;
import seamsoak.state.Limits;
import seamsoak.steel.Composition;
import seamsoak.steel.Dispute;
import seamsoak.steel.Element;
import seamsoak.steel.Hardenability;
import seamsoak.steel.Steel;

/**
 * A steel of the work with the carbon it has by now, and what follows from that.
 *
 * @param steel as the table has it
 * @param carbonPct mean over its layers, wt%
 * @param lines its phase lines
 * @param besideOthers whether it is hardened from the heat of others, none of its own
 * @param k the correlations
 */
public record SteelNow(
    Steel steel, double carbonPct, PhaseLines lines, boolean besideOthers, Correlations k) {
  /** Softer as quenched than this counts as not hardening, HRC; judgement. */
  private static final double HARD_HRC = 50;

  /**
   * The same for a grade that is not meant to be hardened and has taken up carbon: what gets no
   * harder than a spring makes no edge; judgement.
   */
  private static final double HARD_OF_SOFT_GRADE_HRC = 55;

  /** Below this no martensite of any hardness forms, wt%; judgement. */
  private static final double LEAST_CARBON = 0.25;

  /**
   * Chromium carbide dissolves only at heats of its own: a steel with more than this, hardened from
   * the heat of others, has a hardness that nothing here tells, wt%; judgement.
   */
  private static final double OWN_HEAT_CHROMIUM_PCT = 3;

  public static List<SteelNow> of(List<Steel> steels, Workpiece piece, Shop shop) {
    return steels.stream()
        .map(
            s ->
                new SteelNow(
                    s,
                    Limits.carbonPct(s, piece),
                    shop.metal(s).law().phases().orElseThrow(),
                    steels.stream().anyMatch(o -> asksForLess(o, s)),
                    shop.correlations()))
        .toList();
  }

  private static boolean asksForLess(Steel other, Steel steel) {
    return chromium(steel) > OWN_HEAT_CHROMIUM_PCT
        && chromium(other) <= OWN_HEAT_CHROMIUM_PCT
        && other.heatTreatment().harden().isPresent();
  }

  private static double chromium(Steel steel) {
    return steel.analysis().percent(Element.CR);
  }

  public String id() {
    return steel.id();
  }

  public double ac1C() {
    return lines.a1Celsius();
  }

  /** The lower of that and the published figure, where its sheet has one. */
  public double lowestAc1C() {
    return Math.min(ac1C(), steel.ac1C().orElse(Double.POSITIVE_INFINITY));
  }

  /** The higher of the two. */
  public double highestAc1C() {
    return Math.max(ac1C(), steel.ac1C().orElse(0));
  }

  /** The hottest at which surely nothing of it changes; any heat where it is always austenite. */
  public double unchangedToC() {
    return lines.alwaysAustenite()
        ? Double.POSITIVE_INFINITY
        : lowestAc1C() - k.critical().ae1().subCriticalMarginKelvin();
  }

  /** How long its austenite takes to change near 650 C, h. */
  public double pearliteHours() {
    return k.hardening().pearlite().hours(steel.hardenability());
  }

  /** Above this all is austenite. */
  public double upperC() {
    return lines.fullAusteniteCelsius(carbonPct);
  }

  /** The same on the way up, where ferrite goes later than it has to. */
  public double upperOnHeatingC() {
    return upperC() + (carbideLast() ? 0 : k.hardening().window().heatingKelvin());
  }

  /** Whether {@link #upperC} is Accm. */
  public boolean carbideLast() {
    return lines.carbideLast(carbonPct);
  }

  public String upperName() {
    return carbideLast() ? "Accm" : "Ac3";
  }

  /** Whether there is more carbon than pearlite holds, so that carbide has to dissolve. */
  public boolean overEutectoid() {
    return upperC() > ac1C() + 40 && carbideLast();
  }

  /** Its austenite at a heat, with grains of that number. */
  public QuenchedSteel quenched(double celsius, double grainNumber) {
    return QuenchedSteel.from(
        k, analysis(), celsius, Math.min(grainNumber, QuenchedSteel.FINEST_GRAIN));
  }

  /** The same grade with the carbon it came with, for its tempering table. */
  public QuenchedSteel quenchedAsBought(double celsius, double grainNumber) {
    return QuenchedSteel.from(
        k, steel.analysis(), celsius, Math.min(grainNumber, QuenchedSteel.FINEST_GRAIN));
  }

  /** Its analysis by now; nickel that has taken up carbon is left as it came. */
  public Composition analysis() {
    return lines.alwaysAustenite() ? lines.steel() : lines.steel().with(Element.C, carbonPct);
  }

  /** Whether it has so much chromium or nickel that no formula here reaches it. */
  public boolean beyondFormulas() {
    return lines.alwaysAustenite() || besideOthers || !QuenchedSteel.reaches(steel.analysis());
  }

  /** Whether a fast enough quench makes it hard. */
  public boolean hardens() {
    return hardens(carbonPct);
  }

  /** Whether it was bought as one that hardens, whatever carbon it has by now. */
  public boolean hardensAsBought() {
    return hardens(steel.analysis().carbon());
  }

  private boolean hardens(double percent) {
    boolean soft = steel.hardenability().filter(h -> h == Hardenability.NONE).isPresent();
    return !lines.alwaysAustenite()
        && percent > LEAST_CARBON
        && k.hardening().asQuenched().martensiteHrc(percent)
            >= (soft ? HARD_OF_SOFT_GRADE_HRC : HARD_HRC);
  }

  /** Whether its own sheet hardens it, from a heat that is none for carbon steels. */
  public boolean ownHeat() {
    return beyondFormulas() && steel.heatTreatment().harden().isPresent();
  }

  /** Hardness of a section that cooled in air to ferrite and pearlite, HRC. */
  public Estimate airCooledHrc(Section section) {
    Hardening h = k.hardening();
    return h.airCooled().estimate(carbonPct, section).map(h.conversion()::hrc);
  }

  public Estimate magnet() {
    return k.hardening().magnet().celsius(lines, carbonPct);
  }

  /** What still air does to a section of it, cooled from a heat with grains of that number. */
  public Hardens inAir(Section section, double celsius, double grainNumber) {
    if (steel.hardenability().filter(h -> h == Hardenability.AIR).isPresent()) {
      return Hardens.YES;
    }
    if (!hardens() || beyondFormulas()) {
      return Hardens.NO;
    }
    QuenchedSteel austenite = quenched(celsius, grainNumber);
    double needed =
        k.hardening()
            .criterion()
            .neededMetres(section, k.hardening().criterion().stillAirPerInch());
    double margin = austenite.idealDiameterMetres() / needed;
    HardeningDepth.Depth depth = k.hardening().depth().depth(margin, margin);
    if (depth == HardeningDepth.Depth.THROUGH || depth == HardeningDepth.Depth.NEARLY) {
      return Hardens.YES;
    }
    return austenite.mayHardenInAir(section) ? Hardens.PERHAPS : Hardens.NO;
  }

  /**
   * How long the middle of a section may take from 800 to 500 C in still air and still be hard, s.
   *
   * @param takesSeconds it takes
   */
  public double allowsInAir(
      Section section, double celsius, double grainNumber, double takesSeconds) {
    GrossmannCriterion criterion = k.hardening().criterion();
    double needed = criterion.neededMetres(section, criterion.stillAirPerInch());
    double over =
        quenched(celsius, grainNumber).idealDiameterMetres()
            / needed
            / k.hardening().depth().throughMargin();
    return takesSeconds * over * over;
  }

  /** What it may be, where it is stock of unknown make. */
  public Optional<MayBe> mayBe() {
    return steel.make().map(make -> MayBe.of(k, make));
  }

  /** Whether its sheets forbid normalizing. */
  public boolean neverNormalized() {
    return disputes().stream().anyMatch(Dispute::never);
  }

  /** Whether its sheets disagree about normalizing. */
  public boolean normalizingDisputed() {
    return disputes().stream().anyMatch(d -> !d.never());
  }

  private List<Dispute> disputes() {
    return steel.disputes().stream().filter(Dispute::ofNormalizing).toList();
  }
}
