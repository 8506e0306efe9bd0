package seamsoak.advice;

import java.util.List;
import seamsoak.billet.Shop;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.CarbonInSteel;
import seamsoak.property.Correlations;
import seamsoak.property.PhaseLines;
import seamsoak.property.Section;
import seamsoak.source.Estimate;
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
 * @param k the correlations
 */
record SteelNow(Steel steel, double carbonPct, PhaseLines lines, Correlations k) {
  /** Softer as quenched than this counts as not hardening, HRC; judgement. */
  private static final double HARD_HRC = 50;

  /** Below this no martensite of any hardness forms, wt%; judgement. */
  private static final double LEAST_CARBON = 0.25;

  private static final double ROOM_CELSIUS = 20;
  private static final String STILL_AIR = "still-air";

  /** Whether a section hardens when it is left in still air. */
  enum InAir {
    NO,
    /** Where twice the computed thickness would: the criterion says too little hardening. */
    PERHAPS,
    YES
  }

  static List<SteelNow> of(List<Steel> steels, Workpiece piece, Shop shop) {
    return steels.stream()
        .map(
            s ->
                new SteelNow(
                    s,
                    Limits.carbonPct(s, piece),
                    ((CarbonInSteel) shop.metal(s).law()).lines(),
                    shop.correlations()))
        .toList();
  }

  String id() {
    return steel.id();
  }

  double ac1C() {
    return lines.a1Celsius();
  }

  /** Above this all is austenite. */
  double upperC() {
    return lines.fullAusteniteCelsius(carbonPct);
  }

  /** Whether {@link #upperC} is Accm. */
  boolean carbideLast() {
    return lines.accmCelsius(carbonPct) > lines.ac3Celsius(carbonPct);
  }

  String upperName() {
    return carbideLast() ? "Accm" : "Ac3";
  }

  /** Whether there is more carbon than pearlite holds, so that carbide has to dissolve. */
  boolean overEutectoid() {
    return upperC() > ac1C() + 40 && carbideLast();
  }

  /** Carbon in solution in the austenite at a heat, wt%. */
  double dissolvedPct(double celsius) {
    return celsius < ac1C() ? 0 : Math.min(carbonPct, lines.austeniteBesideCementitePct(celsius));
  }

  Composition austenite(double celsius) {
    return lines.steel().with(Element.C, dissolvedPct(celsius));
  }

  /** Martensite start after a hold at a heat, C. */
  double msC(double celsius) {
    return k.vanBohemenMs().celsius(austenite(celsius));
  }

  /** Share of austenite left after a quench to a temperature. */
  double retained(double celsius, double quenchCelsius) {
    return k.vanBohemenRetained().retained(austenite(celsius), msC(celsius), quenchCelsius);
  }

  /** Hardness of martensite and retained austenite after a quench, HRC. */
  double quenchedHrc(double celsius, double quenchCelsius) {
    return k.hardening().asQuenched().hrc(dissolvedPct(celsius), retained(celsius, quenchCelsius));
  }

  /** Whether a fast enough quench makes it hard. */
  boolean hardens() {
    return !lines.alwaysAustenite()
        && carbonPct > LEAST_CARBON
        && k.hardening().asQuenched().martensiteHrc(Math.min(carbonPct, 1)) >= HARD_HRC;
  }

  double idealDiameterMetres(double celsius, double grainNumber) {
    return k.hardening().idealDiameter().idealDiameterMetres(austenite(celsius), grainNumber);
  }

  /** Hardness of ferrite and pearlite, HV. */
  double pearliteVickers() {
    return k.hardening().normalized().vickers(carbonPct);
  }

  Estimate magnet() {
    return k.hardening().magnet().celsius(lines, carbonPct);
  }

  /** What still air does to a section of it, cooled from a heat with grains of that number. */
  InAir inAir(Section section, double celsius, double grainNumber) {
    if (!hardens()) {
      return InAir.NO;
    }
    if (steel.hardenability().filter(h -> h == Hardenability.AIR).isPresent()) {
      return InAir.YES;
    }
    double air = k.hardening().quenchants().find(STILL_AIR).orElseThrow().severity();
    double has = idealDiameterMetres(celsius, grainNumber);
    if (has >= k.hardening().criterion().neededMetres(section, air)) {
      return InAir.YES;
    }
    Section half = new Section(section.thicknessMetres() / 2, section.widthMetres());
    return has >= k.hardening().criterion().neededMetres(half, air) ? InAir.PERHAPS : InAir.NO;
  }

  /** Whether its sheets forbid normalizing. */
  boolean neverNormalized() {
    return disputes().stream().anyMatch(Dispute::never);
  }

  /** Whether its sheets disagree about normalizing. */
  boolean normalizingDisputed() {
    return disputes().stream().anyMatch(d -> !d.never());
  }

  private List<Dispute> disputes() {
    return steel.disputes().stream().filter(d -> d.matter().equals(Dispute.NORMALIZING)).toList();
  }

  ScheduleAdvice.CriticalTemperatures told() {
    Estimate magnet = magnet();
    return new ScheduleAdvice.CriticalTemperatures(
        id(),
        carbonPct,
        ac1C(),
        upperC(),
        upperName(),
        k.vanBohemenMs().celsius(lines.steel().with(Element.C, carbonPct)),
        magnet.value(),
        magnet.low(),
        magnet.high());
  }
}
