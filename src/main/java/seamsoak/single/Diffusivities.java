package seamsoak.single;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import seamsoak.property.Correlations;
import seamsoak.property.phase.CarbonDiffusivity;
import seamsoak.single.SteelReport.AtTemperature;
import seamsoak.single.SteelReport.Diffusivity;
import seamsoak.steel.Composition;
import seamsoak.unit.Temperature;

/** Every published diffusivity of carbon beside the others, at a steel's own carbon. */
public record Diffusivities(Correlations k, Composition steel) {
  /** Forging and soaking heats, degC. */
  public static final double[] AUSTENITE_CELSIUS = {1050, 1150};

  /** Where a rim of ferrite grows, degC. */
  public static final double[] FERRITE_CELSIUS = {720, 850};

  /** Why those that are used are used. */
  static final String CHOSEN =
      "Carbon moves by Agren's mobility of 1986 times the pull of the steel's own alloy: it is the"
          + " one that keeps mobility and pull apart, so that it serves across unlike steels, and"
          + " it lies within 15 % of the other fits that know carbon; values without carbon fit one"
          + " carbon only."
          + " In ferrite it is Agren's of 1982, the only one that bends as measurements do from"
          + " room temperature up. Their spread is why speed of carbon is varied by 15 % in the"
          + " bands.";

  List<Diffusivity> all() {
    List<Diffusivity> all = new ArrayList<>();
    add(all, "austenite", k.phases().austeniteDiffusivities(), AUSTENITE_CELSIUS, "mobility");
    add(all, "ferrite", k.phases().ferriteDiffusivities(), FERRITE_CELSIUS, "ferrite");
    return all;
  }

  private void add(
      List<Diffusivity> all,
      String phase,
      List<CarbonDiffusivity> formulas,
      double[] celsius,
      String use) {
    for (CarbonDiffusivity d : formulas) {
      all.add(
          new Diffusivity(
              d.correlation().name(),
              phase,
              Arrays.stream(celsius).mapToObj(c -> at(d, c)).toList(),
              d.correlation().standing().words(),
              d == formulas.get(0) ? Optional.of(use) : Optional.empty()));
    }
  }

  private AtTemperature at(CarbonDiffusivity d, double celsius) {
    return new AtTemperature(
        celsius,
        d.squareMetresPerSecond(celsius + Temperature.ZERO_CELSIUS, steel),
        !d.exceeded(steel, celsius).isEmpty());
  }
}
