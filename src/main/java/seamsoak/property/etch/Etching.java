package seamsoak.property.etch;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import seamsoak.property.correlation.CoefficientTable;
import seamsoak.property.forging.AstmE112;
import seamsoak.property.phase.Agren1986Diffusivity;
import seamsoak.property.phase.PhaseLines;
import seamsoak.unit.Temperature;

/**
 * What is known of what an etch shows, read once.
 *
 * @param pearlite when it starts
 * @param ferrite when it starts
 * @param extendedAccm carbon from which pearlite can start
 * @param extendedA3 carbon beside ferrite that grows
 * @param whiteness what the etch makes of the structure
 * @param looks whether an eye sees it
 * @param tone how light a picture shows it
 * @param carbonInAustenite how fast it moves there
 * @param grainNumber grain size numbers and lengths
 */
public record Etching(
    LiNiebuhr1998Start pearlite,
    LiNiebuhr1998Start ferrite,
    ExtendedLine extendedAccm,
    ExtendedLine extendedA3,
    Whiteness whiteness,
    Looks looks,
    Tone tone,
    Agren1986Diffusivity carbonInAustenite,
    AstmE112 grainNumber) {
  private static final double EXTENDED_BELOW = 727;
  private static final int ROUNDS = 4;

  public static Etching of(
      CoefficientTable table, Agren1986Diffusivity carbonInAustenite, AstmE112 grainNumber) {
    Whiteness whiteness = new Whiteness(table.of("whiteness"));
    return new Etching(
        new LiNiebuhr1998Start(table.of("li-niebuhr1998-pearlite"), "start of pearlite"),
        new LiNiebuhr1998Start(table.of("li-niebuhr1998-ferrite"), "start of ferrite"),
        new ExtendedLine(table.of("extended-accm"), "carbon beside cementite below A1", "4e-5 wt%"),
        new ExtendedLine(table.of("extended-a3"), "carbon beside ferrite below A1", "3e-4 wt%"),
        whiteness,
        new Looks(table.of("look")),
        new Tone(table.of("tone"), whiteness),
        carbonInAustenite,
        grainNumber);
  }

  /** The free ferrite that a cooling leaves in a steel. */
  public FreeFerrite ferrite(PhaseLines steel, Descent descent, double grainNumber) {
    return new FreeFerrite(this, steel, steel.a1Celsius(), descent, grainNumber);
  }

  /**
   * How white a steel etches that has cooled from a heat.
   *
   * @param layerCarbonPct carbon far from any seam
   */
  public Shade cooled(
      PhaseLines steel, Descent descent, double grainNumber, double layerCarbonPct) {
    if (steel.alwaysAustenite()) {
      return Shade.FLAT;
    }
    FreeFerrite.Shares shares = ferrite(steel, descent, grainNumber).beside(layerCarbonPct);
    return Shade.of(
        carbon -> {
          Band share = shares.at(carbon);
          return new Band(
              whiteness.cooled(share.low(), carbon),
              whiteness.cooled(share.middle(), carbon),
              whiteness.cooled(share.high(), carbon));
        });
  }

  /**
   * How white a steel etches that was quenched from a heat: martensite of the carbon dissolved
   * there, and the ferrite that was left. Flat where the heat lies below A1.
   *
   * @param martensiteVickers hardness of martensite by its carbon
   */
  public Shade hardened(
      PhaseLines steel, double fromCelsius, DoubleUnaryOperator martensiteVickers) {
    OptionalDouble most = steel.mostDissolvedCarbonPct(fromCelsius);
    if (steel.alwaysAustenite() || most.isEmpty()) {
      return Shade.FLAT;
    }
    double beside = steel.austeniteBesideFerritePct(fromCelsius);
    return Shade.of(
        carbon ->
            Band.of(
                whiteness.hardened(
                    FreeFerrite.share(beside, carbon),
                    martensiteVickers.applyAsDouble(
                        Math.min(most.getAsDouble(), Math.max(beside, carbon))))));
  }

  /** Carbon of a steel's austenite from which pearlite can start, wt%. */
  double besideCementitePct(PhaseLines steel, double celsius) {
    double carbon = extendedAccm.percent(celsius);
    for (int i = 0; i < ROUNDS; i++) {
      carbon = extendedAccm.percent(celsius - steel.accmShiftCelsius(carbon));
    }
    return carbon;
  }

  /** Carbon of a steel's austenite beside ferrite, wt%. */
  double besideFerritePct(PhaseLines steel, double celsius) {
    double plain = celsius - steel.a3ShiftCelsius();
    return plain > EXTENDED_BELOW ? steel.ferriteLinePct(celsius) : extendedA3.percent(plain);
  }

  /** Of carbon in austenite of iron with so much of it, m2/s. */
  public double diffusivity(double carbonPct, double celsius) {
    return carbonInAustenite.squareMetresPerSecond(celsius + Temperature.ZERO_CELSIUS, carbonPct);
  }
}
