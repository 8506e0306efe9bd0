package seamsoak.property.forging;

import seamsoak.data.DataFolder;
import seamsoak.property.correlation.CoefficientTable;

/**
 * What is known about steel in the fire, read once.
 *
 * @param rule how hot it may be forged and soaked
 * @param solidus where the first liquid forms
 * @param steelScaling the low end of what scale eats
 * @param ironScaling the high end of what scale eats
 * @param compactScale how scale hinders carbon and itself
 * @param grainNumber grain size numbers and lengths
 * @param grainGrowth size of its grains
 * @param pinning how coarse they may become beside cementite
 * @param colors what old tables call the color of hot steel
 */
public record Forging(
    ForgingRule rule,
    Hirai1997Solidus solidus,
    BirksJackson1970Scaling steelScaling,
    Paidassi1958Scaling ironScaling,
    CompactScale compactScale,
    AstmE112 grainNumber,
    LeeLee2008GrainGrowth grainGrowth,
    Nishizawa1997Pinning pinning,
    HeatColors colors) {

  public static Forging load(DataFolder data, CoefficientTable table) {
    Hirai1997Solidus solidus = new Hirai1997Solidus(table.of("hirai1997-solidus"));
    return new Forging(
        ForgingRule.of(table, solidus),
        solidus,
        new BirksJackson1970Scaling(table.of("birks-jackson1970-scaling")),
        new Paidassi1958Scaling(table.of("paidassi1958-scaling")),
        new CompactScale(table.of("compact-scale")),
        new AstmE112(table.of("astm-e112")),
        new LeeLee2008GrainGrowth(table.of("lee-lee2008-grain")),
        new Nishizawa1997Pinning(table.of("nishizawa1997-pinning")),
        HeatColors.load(data));
  }
}
