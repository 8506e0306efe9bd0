package seamsoak.property;

import java.util.List;
import seamsoak.data.DataFolder;
import seamsoak.property.correlation.CoefficientTable;
import seamsoak.property.correlation.CriticalTemperature;
import seamsoak.property.critical.Ae1Mean;
import seamsoak.property.critical.Andrews1965Ae1;
import seamsoak.property.critical.Andrews1965Ae3;
import seamsoak.property.critical.Andrews1965MsLinear;
import seamsoak.property.critical.Andrews1965MsProduct;
import seamsoak.property.critical.Barbier2014Ms;
import seamsoak.property.critical.Capdevila2002Ms;
import seamsoak.property.critical.Eldis1982Ae1;
import seamsoak.property.critical.Eldis1982Ae3;
import seamsoak.property.critical.Grange1961Ae1;
import seamsoak.property.critical.Grange1961Ae3;
import seamsoak.property.critical.Hougardy1984Ac1;
import seamsoak.property.critical.Hougardy1984Ac3;
import seamsoak.property.critical.IngberKunert2022Ms;
import seamsoak.property.critical.Kasatkin1984Ac1;
import seamsoak.property.critical.Kasatkin1984Ac3;
import seamsoak.property.critical.StevenHaynes1956Ms;
import seamsoak.property.critical.Trzaska2016Ac1;
import seamsoak.property.critical.Trzaska2016Ac3;
import seamsoak.property.critical.TrzaskaDobrzanski2007Ac3;
import seamsoak.property.critical.VanBohemen2012Ms;
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
import seamsoak.property.phase.LeeLee2007Accm;
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
 * @param ae1 the recommended lower critical temperature
 * @param lowerCritical all that give Ae1 or Ac1, side by side
 * @param andrewsAe3 upper critical temperature, and what alloying adds to the iron-carbon line
 * @param upperCritical all that give Ae3 or Ac3, side by side; they part above 0.6 %C
 * @param leeLeeAccm what alloying adds to the cementite line
 * @param ironCarbon phase lines of plain iron and carbon
 * @param mobility of carbon in austenite
 * @param carbonDiffusivity all that give it in austenite, the one in use first
 * @param ferriteDiffusivities all that give it in ferrite, the one in use first
 * @param ferriteDiffusivity of carbon in ferrite
 * @param ferriteActivity of carbon in ferrite
 * @param scaledSurface carbon activity under scale
 * @param activity parameters of carbon in austenite
 * @param vanBohemenMs the recommended martensite start
 * @param ingberKunertMs the second recommendation, for high carbon
 * @param martensiteStart all that give Ms, side by side
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
    Ae1Mean ae1,
    List<CriticalTemperature> lowerCritical,
    Andrews1965Ae3 andrewsAe3,
    List<CriticalTemperature> upperCritical,
    LeeLee2007Accm leeLeeAccm,
    FeCLines ironCarbon,
    Agren1986Mobility mobility,
    List<CarbonDiffusivity> carbonDiffusivity,
    List<CarbonDiffusivity> ferriteDiffusivities,
    Agren1982Ferrite ferriteDiffusivity,
    GustafsonFerrite ferriteActivity,
    ScaledSurface scaledSurface,
    ActivityParameters activity,
    VanBohemen2012Ms vanBohemenMs,
    IngberKunert2022Ms ingberKunertMs,
    List<CriticalTemperature> martensiteStart,
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
    lowerCritical = List.copyOf(lowerCritical);
    upperCritical = List.copyOf(upperCritical);
    martensiteStart = List.copyOf(martensiteStart);
  }

  /** The phases of one steel. */
  public PhaseLines lines(Composition steel) {
    return new PhaseLines(ironCarbon, andrewsAe3, leeLeeAccm, ae1, steel);
  }

  /** Reads {@code correlations.csv}. */
  public static Correlations load(DataFolder data) {
    CoefficientTable table = CoefficientTable.load(data);
    Andrews1965Ae1 andrewsAe1 = new Andrews1965Ae1(table.of("andrews1965-ae1"));
    Grange1961Ae1 grangeAe1 = new Grange1961Ae1(table.of("grange1961-ae1"));
    Hougardy1984Ac1 hougardyAc1 = new Hougardy1984Ac1(table.of("hougardy1984-ac1"));
    Andrews1965Ae3 andrewsAe3 = new Andrews1965Ae3(table.of("andrews1965-ae3"));
    VanBohemen2012Ms vanBohemen = new VanBohemen2012Ms(table.of("van-bohemen2012-ms"));
    IngberKunert2022Ms ingberKunert = new IngberKunert2022Ms(table.of("ingber-kunert2022-ms"));
    Agren1982Ferrite agrenFerrite = new Agren1982Ferrite(table.of("agren1982-ferrite"));
    Hirai1997Solidus solidus = new Hirai1997Solidus(table.of("hirai1997-solidus"));
    En1993Steel steelHeat = new En1993Steel(table.of("en1993-1-2"));
    SteelHeat changing = SteelHeat.changing(steelHeat);
    AirCooling airCooling = new AirCooling(table.of("air-cooling"));
    Hardening hardening = Hardening.load(data, table);
    return new Correlations(
        new Ae1Mean(table.of("ae1-mean"), andrewsAe1, grangeAe1, hougardyAc1),
        List.of(
            andrewsAe1,
            grangeAe1,
            hougardyAc1,
            new Eldis1982Ae1(table.of("eldis1982-ae1")),
            new Kasatkin1984Ac1(table.of("kasatkin1984-ac1")),
            new Trzaska2016Ac1(table.of("trzaska2016-ac1"))),
        andrewsAe3,
        List.of(
            andrewsAe3,
            new Grange1961Ae3(table.of("grange1961-ae3")),
            new Hougardy1984Ac3(table.of("hougardy1984-ac3")),
            new Eldis1982Ae3(table.of("eldis1982-ae3")),
            new Kasatkin1984Ac3(table.of("kasatkin1984-ac3")),
            new TrzaskaDobrzanski2007Ac3(table.of("trzaska-dobrzanski2007-ac3")),
            new Trzaska2016Ac3(table.of("trzaska2016-ac3"))),
        new LeeLee2007Accm(table.of("lee-lee2007-accm")),
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
        vanBohemen,
        ingberKunert,
        List.of(
            vanBohemen,
            ingberKunert,
            new Andrews1965MsLinear(table.of("andrews1965-ms-linear")),
            new Andrews1965MsProduct(table.of("andrews1965-ms-product")),
            new StevenHaynes1956Ms(table.of("steven-haynes1956-ms")),
            new Capdevila2002Ms(table.of("capdevila2002-ms")),
            new Barbier2014Ms(table.of("barbier2014-ms"))),
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
