package seamsoak.property.section;

import seamsoak.heat.Environment;
import seamsoak.heat.Section;
import seamsoak.heat.SectionCurve;
import seamsoak.heat.SectionModel;
import seamsoak.property.correlation.CoefficientTable;
import seamsoak.property.hardening.GrossmannCriterion;
import seamsoak.property.hardening.Quenchant;

/**
 * Heating and cooling of sections in what a shop has, each with the heat that applies.
 *
 * @param steel specific heat, conductivity, expansion
 * @param airCooling still air
 * @param furnace kilns and forges
 * @param criterion what a severity is as a film
 * @param changing sections that change between pearlite and austenite
 * @param austenite sections that stay austenite
 */
public record SectionHeat(
    En1993Steel steel,
    AirCooling airCooling,
    FurnaceHeat furnace,
    GrossmannCriterion criterion,
    SectionModel changing,
    SectionModel austenite) {
  private static final double LONGEST_SECONDS = 1e6;

  public static SectionHeat of(CoefficientTable table, GrossmannCriterion criterion) {
    En1993Steel steel = new En1993Steel(table.of("en1993-1-2"));
    return new SectionHeat(
        steel,
        new AirCooling(table.of("air-cooling")),
        new FurnaceHeat(table.of("furnace-heat")),
        criterion,
        new SectionModel(SteelHeat.changing(steel)),
        new SectionModel(SteelHeat.austenite(criterion)));
  }

  /**
   * Heating (or slow cooling) in surroundings until the core reaches a temperature. In a kiln that
   * settles at that temperature itself the core never does: ask for 10 K less.
   */
  public SectionCurve heat(
      Section section, double fromKelvin, Environment environment, double untilCoreKelvin) {
    return changing.run(section, fromKelvin, environment, untilCoreKelvin, LONGEST_SECONDS);
  }

  /**
   * Cooling in still air until the core reaches a temperature; it ends after eleven days if that is
   * not above the air's.
   */
  public SectionCurve coolInAir(Section section, double fromKelvin, double untilCoreKelvin) {
    return heat(section, fromKelvin, airCooling.air(), untilCoreKelvin);
  }

  /**
   * Cooling in still air of a section that stays austenite, until the core reaches a temperature
   * above the air's: what leads to the start of ferrite and pearlite.
   */
  public SectionCurve austeniteInAir(Section section, double fromKelvin, double untilCoreKelvin) {
    return austenite.run(section, fromKelvin, airCooling.air(), untilCoreKelvin, LONGEST_SECONDS);
  }

  /**
   * Quench until the core reaches a temperature above that of the bath. In baths and between plates
   * the steel is taken to stay austenite, in air and in vermiculite to change to pearlite.
   *
   * @param severityPerInch Grossmann's H, one of the quenchant's three
   */
  public SectionCurve quench(
      Section section,
      double fromKelvin,
      Quenchant quenchant,
      double severityPerInch,
      double bathKelvin,
      double untilCoreKelvin) {
    Environment around = environment(quenchant, severityPerInch, bathKelvin);
    SectionModel model =
        switch (quenchant.kind()) {
          case AIR, INSULATION -> changing;
          case PLATES, OIL, VEGETABLE_OIL, SALT, WATER -> austenite;
        };
    return model.run(section, fromKelvin, around, untilCoreKelvin, LONGEST_SECONDS);
  }

  /**
   * A quenchant as surroundings. Air radiates besides: its film is that of still air and what the
   * severity says above still air's.
   */
  public Environment environment(Quenchant quenchant, double severityPerInch, double bathKelvin) {
    double film = criterion.filmWattsPerSquareMetreKelvin(severityPerInch);
    if (quenchant.kind() != Quenchant.Kind.AIR) {
      return Environment.steady(bathKelvin, film, 0);
    }
    Environment air = airCooling.air();
    double above = film - criterion.filmWattsPerSquareMetreKelvin(criterion.stillAirPerInch());
    return Environment.steady(
        bathKelvin, air.filmWattsPerSquareMetreKelvin() + Math.max(0, above), air.emissivity());
  }
}
