package seamsoak.property.hardening;

import seamsoak.data.DataFolder;
import seamsoak.property.correlation.CoefficientTable;

/**
 * What is known about hardening and tempering: correlations and tables, read once.
 *
 * @param martensite hardness of martensite, and of half martensite
 * @param conversion Rockwell C against Vickers
 * @param asQuenched hardness as quenched, with retained austenite
 * @param ferriteLeft hardness where the heat was too low for all austenite
 * @param rateByAnalysis austenite that a quench leaves, by analysis
 * @param rateAlike the same, at one rate for every steel
 * @param retained the same between the two, which is told
 * @param normalized hardness of bars as normalized
 * @param brinell Vickers against Brinell
 * @param airCooled hardness of what did not harden, by section
 * @param vanadium what vanadium carbide leaves in solution
 * @param slowCarbide what carbide with chromium in it still holds
 * @param idealDiameter hardenability of an analysis
 * @param criterion what hardenability a section needs in a quench
 * @param depth hardness where the quench is nearly fast enough
 * @param quenchants what there is to quench in
 * @param quench which of them to take
 * @param parameter time and temperature of a temper in one number
 * @param tempering tempering tables
 * @param temperedByAnalysis hardness after tempering where no table speaks
 * @param magnet where the magnet lets go
 * @param window to harden from
 * @param pearlite how long it takes to form
 */
public record Hardening(
    AstmA255Hardness martensite,
    AstmE140 conversion,
    AsQuenchedHardness asQuenched,
    FerriteLeft ferriteLeft,
    VanBohemen2012Retained rateByAnalysis,
    KoistinenMarburger1959 rateAlike,
    RetainedAustenite retained,
    NormalizedHardness normalized,
    Iso18265Brinell brinell,
    AirCooledHardness airCooled,
    Narita1975VanadiumCarbide vanadium,
    SlowCarbide slowCarbide,
    AstmA255 idealDiameter,
    GrossmannCriterion criterion,
    HardeningDepth depth,
    QuenchantTable quenchants,
    QuenchRule quench,
    HollomonJaffe1945 parameter,
    TemperingTable tempering,
    GrangeBaughman1956Tempering temperedByAnalysis,
    MagnetRule magnet,
    HardeningWindow window,
    PearliteTime pearlite) {
  public static Hardening load(DataFolder data, CoefficientTable table) {
    AstmA255Hardness martensite = new AstmA255Hardness(table.of("astm-a255-hardness"));
    AstmE140 conversion = new AstmE140(table.of("astm-e140"));
    GrossmannCriterion criterion = new GrossmannCriterion(table.of("grossmann-criterion"));
    VanBohemen2012Retained rateByAnalysis =
        new VanBohemen2012Retained(table.of("van-bohemen2012-rate"));
    KoistinenMarburger1959 rateAlike =
        new KoistinenMarburger1959(table.of("koistinen-marburger1959"));
    NormalizedHardness normalized = new NormalizedHardness(table.of("normalized-hardness"));
    Iso18265Brinell brinell = new Iso18265Brinell(table.of("iso18265-brinell"));
    HardeningDepth depth = new HardeningDepth(table.of("hardening-depth"));
    HollomonJaffe1945 parameter = new HollomonJaffe1945(table.of("hollomon-jaffe1945"));
    return new Hardening(
        martensite,
        conversion,
        new AsQuenchedHardness(table.of("as-quenched-hardness"), martensite, conversion),
        new FerriteLeft(table.of("ferrite-left"), conversion),
        rateByAnalysis,
        rateAlike,
        new RetainedAustenite(table.of("retained-austenite"), rateByAnalysis, rateAlike),
        normalized,
        brinell,
        new AirCooledHardness(table.of("air-cooled-hardness"), normalized, brinell),
        new Narita1975VanadiumCarbide(table.of("narita1975-vanadium-carbide")),
        new SlowCarbide(table.of("slow-carbide")),
        new AstmA255(table.of("astm-a255")),
        criterion,
        depth,
        QuenchantTable.load(data),
        new QuenchRule(table.of("quench-rule"), criterion, depth),
        parameter,
        TemperingTable.load(data, parameter),
        new GrangeBaughman1956Tempering(
            table.of("grange-baughman1956-tempering"),
            new PlainTemperingLoss(table.of("plain-tempering-loss")),
            conversion,
            parameter),
        new MagnetRule(table.of("magnet")),
        new HardeningWindow(table.of("hardening-range")),
        new PearliteTime(table.of("pearlite-time")));
  }
}
