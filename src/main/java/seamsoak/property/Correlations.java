package seamsoak.property;

import java.util.List;
import seamsoak.data.DataFolder;
import seamsoak.property.correlation.CoefficientTable;
import seamsoak.property.critical.Criticals;
import seamsoak.property.forging.AstmE112;
import seamsoak.property.forging.BirksJackson1970Scaling;
import seamsoak.property.forging.ForgingRule;
import seamsoak.property.forging.HeatColors;
import seamsoak.property.forging.Hirai1997Solidus;
import seamsoak.property.forging.LeeLee2008GrainGrowth;
import seamsoak.property.forging.Mechanics;
import seamsoak.property.forging.Paidassi1958Scaling;
import seamsoak.property.forging.SellarsWhiteman1979Grain;
import seamsoak.property.hardening.Hardening;
import seamsoak.property.hardening.KoistinenMarburger1959;
import seamsoak.property.hardening.VanBohemen2012Retained;
import seamsoak.property.phase.ActivityParameters;
import seamsoak.property.phase.Agren1982Ferrite;
import seamsoak.property.phase.Agren1986Diffusivity;
import seamsoak.property.phase.Agren1986Mobility;
import seamsoak.property.phase.CarbonDiffusivity;
import seamsoak.property.phase.ConstantDiffusivity;
import seamsoak.property.phase.FeCLines;
import seamsoak.property.phase.GustafsonFerrite;
import seamsoak.property.phase.LeeMatlockVanTyne2011Diffusivity;
import seamsoak.property.phase.Liu2009Diffusivity;
import seamsoak.property.phase.PhaseLines;
import seamsoak.property.phase.ScaledSurface;
import seamsoak.property.phase.SlyckeEricsson1981Diffusivity;
import seamsoak.property.phase.Tibbetts1980Diffusivity;
import seamsoak.property.section.AirCooling;
import seamsoak.property.section.En1993Steel;
import seamsoak.property.section.FurnaceHeat;
import seamsoak.property.section.SectionHeat;
import seamsoak.property.section.SteelHeat;
import seamsoak.steel.Composition;

/**
 * Every published correlation of this package, read once and passed to whoever needs it.
 *
 * @param critical transformation temperatures
 * @param ironCarbon phase lines of plain iron and carbon
 * @param mobility of carbon in austenite
 * @param carbonDiffusivity all that give it in austenite, the one in use first
 * @param ferriteDiffusivities all that give it in ferrite, the one in use first
 * @param ferriteDiffusivity of carbon in ferrite
 * @param ferriteActivity of carbon in ferrite
 * @param scaledSurface carbon activity under scale
 * @param activity parameters of carbon in austenite
 * @param koistinenMarburger retained austenite at one rate for all
 * @param vanBohemenRetained retained austenite at a rate by analysis
 * @param solidus where the first liquid forms
 * @param forging how hot it may be forged and soaked
 * @param steelScaling the low end of what scale eats
 * @param ironScaling the high end of what scale eats
 * @param grainNumber grain size numbers and lengths
 * @param grainGrowth the grain size that the program uses
 * @param sellarsGrain another, for carbon-manganese steel
 * @param steelHeat specific heat, conductivity, expansion
 * @param airCooling cooling in still air
 * @param hardening hardness, hardenability, quenching, tempering
 * @param sections heating and cooling of sections
 * @param mechanics how steel grows, yields, welds and hardens
 * @param colors what old tables call the color of hot steel
 */
public record Correlations(
    Criticals critical,
    FeCLines ironCarbon,
    Agren1986Mobility mobility,
    List<CarbonDiffusivity> carbonDiffusivity,
    List<CarbonDiffusivity> ferriteDiffusivities,
    Agren1982Ferrite ferriteDiffusivity,
    GustafsonFerrite ferriteActivity,
    ScaledSurface scaledSurface,
    ActivityParameters activity,
    KoistinenMarburger1959 koistinenMarburger,
    VanBohemen2012Retained vanBohemenRetained,
    Hirai1997Solidus solidus,
    ForgingRule forging,
    BirksJackson1970Scaling steelScaling,
    Paidassi1958Scaling ironScaling,
    AstmE112 grainNumber,
    LeeLee2008GrainGrowth grainGrowth,
    SellarsWhiteman1979Grain sellarsGrain,
    En1993Steel steelHeat,
    AirCooling airCooling,
    Hardening hardening,
    SectionHeat sections,
    Mechanics mechanics,
    HeatColors colors) {
  public Correlations {
    carbonDiffusivity = List.copyOf(carbonDiffusivity);
    ferriteDiffusivities = List.copyOf(ferriteDiffusivities);
  }

  /** The phases of one steel. */
  public PhaseLines lines(Composition steel) {
    return new PhaseLines(ironCarbon, critical, steel);
  }

  /** Reads the tables. */
  public static Correlations load(DataFolder data) {
    CoefficientTable table = CoefficientTable.load(data);
    Agren1982Ferrite agrenFerrite = new Agren1982Ferrite(table.of("agren1982-ferrite"));
    Hirai1997Solidus solidus = new Hirai1997Solidus(table.of("hirai1997-solidus"));
    En1993Steel steelHeat = new En1993Steel(table.of("en1993-1-2"));
    SteelHeat changing = SteelHeat.changing(steelHeat);
    AirCooling airCooling = new AirCooling(table.of("air-cooling"));
    Hardening hardening = Hardening.load(data, table);
    return new Correlations(
        Criticals.load(data, table),
        new FeCLines(table.of("fe-c-a3"), table.of("fe-c-accm")),
        Agren1986Mobility.of(table.of("agren1986-mobility")),
        List.of(
            new Agren1986Diffusivity(table.of("agren1986-mobility")),
            new Tibbetts1980Diffusivity(table.of("tibbetts1980")),
            new LeeMatlockVanTyne2011Diffusivity(table.of("lee-matlock-van-tyne2011")),
            new SlyckeEricsson1981Diffusivity(table.of("slycke-ericsson1981")),
            new Liu2009Diffusivity(table.of("liu2009")),
            ConstantDiffusivity.inAustenite(table.of("callister-austenite")),
            ConstantDiffusivity.inAustenite(table.of("teaching-austenite")),
            ConstantDiffusivity.inAustenite(table.of("wells1950")),
            ConstantDiffusivity.inAustenite(table.of("asm4-austenite")),
            ConstantDiffusivity.inAustenite(table.of("birks-meier-pettit-austenite"))),
        List.of(
            agrenFerrite,
            ConstantDiffusivity.inFerrite(table.of("wert1950")),
            ConstantDiffusivity.inFerrite(table.of("callister-ferrite-older")),
            ConstantDiffusivity.inFerrite(table.of("callister-ferrite-newer"))),
        agrenFerrite,
        GustafsonFerrite.of(table.of("gustafson1985-ferrite")),
        ScaledSurface.of(table.of("oneill1993-surface")),
        ActivityParameters.load(data),
        new KoistinenMarburger1959(table.of("koistinen-marburger1959")),
        new VanBohemen2012Retained(table.of("van-bohemen2012-rate")),
        solidus,
        new ForgingRule(table, solidus),
        new BirksJackson1970Scaling(table.of("birks-jackson1970-scaling")),
        new Paidassi1958Scaling(table.of("paidassi1958-scaling")),
        new AstmE112(table.of("astm-e112")),
        new LeeLee2008GrainGrowth(table.of("lee-lee2008-grain")),
        new SellarsWhiteman1979Grain(table.of("sellars-whiteman1979-grain")),
        steelHeat,
        airCooling,
        hardening,
        new SectionHeat(
            airCooling, new FurnaceHeat(table.of("furnace-heat")), hardening.criterion(), changing),
        Mechanics.of(table),
        HeatColors.load(data));
  }
}
