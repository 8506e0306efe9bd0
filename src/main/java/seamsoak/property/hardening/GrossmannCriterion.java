package seamsoak.property.hardening;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import seamsoak.heat.Section;
import seamsoak.numeric.Bessel;
import seamsoak.numeric.OneTerm;
import seamsoak.numeric.Roots;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.source.Range;

/**
 * Whether the middle of a section hardens: two middles count as cooled alike when they take the
 * same time to lose half of their heat above the bath.
 *
 * <p>DI = d sqrt(Fo / 0.2014), Fo = ln(2 factor) / root^2 of {@link OneTerm} at Bi = H d
 *
 * <p>DI in m, of the round bar that just half hardens in a perfect quench; d thickness of a plate
 * or diameter of a bar in m; H severity of the quench, h / (2 k), in 1/m here and in 1/in in
 * tables. 0.2014 is Fo of the perfectly quenched bar. Between a bar and a wide plate the needed DI
 * is taken straight in thickness over width.
 *
 * <p>M.A. Grossmann's half-temperature criterion, worked out with the one-term series. The rates
 * that a DI asks for rest on a diffusivity of austenite of 5.5 mm2/s (28 W/m/K, 650 J/kg/K).
 *
 * <p>Range: H 0.02 to 5 per inch.
 *
 * <p>Stated error: none. Against handbook limits of two plain steels in oil and one report of L6 in
 * air it says too little hardening, so for a warning that something hardens by itself take twice
 * the thickness.
 */
public final class GrossmannCriterion extends PublishedFormula {
  private static final double PER_INCH = 1 / 0.0254;
  private static final double HALF = 0.5;
  private static final OneTerm PERFECT = OneTerm.cylinder(1e9);
  private static final double BATH_CELSIUS = 20;
  private static final double THICKEST_METRES = 10;

  public GrossmannCriterion(Coefficients k) {
    super(
        k,
        "ideal diameter that a section needs",
        "in",
        List.of(new Range("severity", "1/in", 0.02, 5)),
        "none stated; it says too little hardening in air and oil");
  }

  /** Heat capacity of austenite, J/m3/K. */
  public double heatJoulesPerCubicMetreKelvin() {
    return k.get("heat");
  }

  /** Conductivity of austenite, W/m/K. */
  public double conductivityWattsPerMetreKelvin() {
    return k.get("conductivity");
  }

  /** Severity of still air, 1/in. */
  public double stillAirPerInch() {
    return k.get("still air");
  }

  /** Film coefficient of a severity given in 1/in, W/m2/K. */
  public double filmWattsPerSquareMetreKelvin(double severityPerInch) {
    return 2 * k.get("conductivity") * severityPerInch * PER_INCH;
  }

  /** The DI with which the middle of a section is half martensite, m. */
  public double neededMetres(Section section, double severityPerInch) {
    double d = section.thicknessMetres();
    double biot = severityPerInch * PER_INCH * d;
    double plate = needed(d, OneTerm.plate(biot));
    if (section.roundness() == 0) {
      return plate;
    }
    double bar = needed(d, OneTerm.cylinder(biot));
    return plate + section.roundness() * (bar - plate);
  }

  /** The DI with which the face of a section is half martensite, m; 0 in a hard quench. */
  public double neededAtFaceMetres(Section section, double severityPerInch) {
    double d = section.thicknessMetres();
    double biot = severityPerInch * PER_INCH * d;
    OneTerm flat = OneTerm.plate(biot);
    OneTerm round = OneTerm.cylinder(biot);
    double plate = atFace(d, flat, Math.cos(flat.root()));
    double bar = atFace(d, round, Bessel.j0(round.root()));
    return plate + section.roundness() * (bar - plate);
  }

  /** Where more than half is lost at once the one term says a time below 0. */
  private static double atFace(double thickness, OneTerm middle, double shareOfMiddle) {
    double fourier = Math.max(0, middle.fourierAt(HALF / shareOfMiddle));
    return thickness * Math.sqrt(fourier / PERFECT.fourierAt(HALF));
  }

  /** The thickest plate of which the middle is half martensite, m. */
  public double thickestPlateMetres(double idealDiameterMetres, double severityPerInch) {
    return thickestMetres(idealDiameterMetres, Double.POSITIVE_INFINITY, severityPerInch);
  }

  /** The same of a bar of that width; thicker than wide it is not. */
  public double thickestMetres(
      double idealDiameterMetres, double widthMetres, double severityPerInch) {
    DoubleUnaryOperator over =
        d -> neededMetres(new Section(d, widthMetres), severityPerInch) - idealDiameterMetres;
    double least = 1e-9;
    double most = Math.min(THICKEST_METRES, widthMetres);
    if (over.applyAsDouble(least) >= 0) {
      return 0;
    }
    return over.applyAsDouble(most) <= 0 ? most : Roots.between(over, least, most, 1e-9);
  }

  /**
   * The longest time in s that the middle may take from one temperature to a lower one and still be
   * half martensite. Meant for 800 to 500 C, or 704 to 482 C (1300 to 900 F).
   */
  public double longestSeconds(double idealDiameterMetres, double fromCelsius, double toCelsius) {
    double radius = idealDiameterMetres / 2;
    double root = PERFECT.root();
    return radius
        * radius
        * (k.get("heat") / k.get("conductivity"))
        * Math.log((fromCelsius - BATH_CELSIUS) / (toCelsius - BATH_CELSIUS))
        / (root * root);
  }

  private static double needed(double thickness, OneTerm middle) {
    return thickness * Math.sqrt(middle.fourierAt(HALF) / PERFECT.fourierAt(HALF));
  }
}
