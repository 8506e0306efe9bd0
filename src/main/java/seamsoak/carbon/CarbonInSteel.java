package seamsoak.carbon;

import java.util.Optional;
import java.util.OptionalDouble;
import seamsoak.property.Correlations;
import seamsoak.property.phase.AusteniteActivity;
import seamsoak.property.phase.MetalLattice;
import seamsoak.property.phase.PhaseLines;
import seamsoak.property.phase.Unary;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.unit.Temperature;

/**
 * Carbon in one steel, from ferrite through austenite to undissolved cementite.
 *
 * <p>Above A1, by rising carbon: ferrite, ferrite with austenite (level), austenite, austenite with
 * cementite (level). The ends of the levels are the steel's own A3 and Accm lines ({@link
 * PhaseLines}); their activity is the alloyed austenite's at these ends. Where three phases stand
 * side by side the two ends are one. Below A1: ferrite, then ferrite with carbide (level, at the
 * activity of plain ferrite and cementite; from 2 % chromium on, whose carbides hold carbon far
 * better, lower by as much as it is at A1, where austenite stands beside them). So carbon goes from
 * mild steel into chromium steel below A1 as it does above it (observed from 2.25 to 12 % Cr: Race
 * and Bhadeshia 1992). Ferrite is taken as plain iron with carbon.
 */
public final class CarbonInSteel implements CarbonLaw {
  /** From so much chromium on carbides other than cementite hold the carbon, wt%; judgement. */
  private static final double CHROMIUM_CARBIDES_PCT = 2;

  final Correlations correlations;
  final MetalLattice lattice;
  final AusteniteActivity austenite;
  final PhaseLines lines;
  final double mobilityFactor;
  final double lnCarbidesBelow;

  /**
   * @param steel analysis; its carbon figure plays no part
   * @param mobilityFactor multiplies the mobility of carbon, 1 as published
   */
  public CarbonInSteel(Correlations correlations, Composition steel, double mobilityFactor) {
    this.correlations = correlations;
    this.lattice = MetalLattice.of(steel);
    this.austenite = new AusteniteActivity(correlations.phases().activity(), lattice);
    this.lines = correlations.lines(steel);
    this.mobilityFactor = mobilityFactor;
    this.lnCarbidesBelow =
        steel.percent(Element.CR) >= CHROMIUM_CARBIDES_PCT && !lines.alwaysAustenite()
            ? lnCarbidesBelow()
            : 0;
  }

  /** How far below plain cementite the activity lies at A1, where austenite stands beside it. */
  private double lnCarbidesBelow() {
    double kelvin = lines.a1Celsius() + Temperature.ZERO_CELSIUS;
    double beside = lattice.ratio(lines.austeniteBesideCementitePct(lines.a1Celsius()));
    return Math.min(
        0, austenite.at(kelvin).lnActivity(beside) - Unary.lnActivityOfFerriteAndCementite(kelvin));
  }

  public MetalLattice lattice() {
    return lattice;
  }

  @Override
  public Optional<PhaseLines> phases() {
    return Optional.of(lines);
  }

  @Override
  public Isotherm at(double kelvin) {
    SteelIsotherm dissolved = new SteelIsotherm(this, kelvin);
    OptionalDouble most = lines.besideChromiumCarbidePct(kelvin - Temperature.ZERO_CELSIUS);
    return most.isPresent()
        ? new CarbideLaden(dissolved, lattice.ratio(most.getAsDouble()))
        : dissolved;
  }

  @Override
  public double jumpKelvin() {
    return lines.alwaysAustenite() ? Double.NaN : lines.a1Celsius() + Temperature.ZERO_CELSIUS;
  }
}
