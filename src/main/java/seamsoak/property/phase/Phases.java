package seamsoak.property.phase;

import java.util.List;
import java.util.stream.Stream;
import seamsoak.data.DataFolder;
import seamsoak.property.correlation.CoefficientTable;

/**
 * What is known about carbon among the phases, read once.
 *
 * @param ironCarbon phase lines of plain iron and carbon
 * @param activity parameters of carbon in austenite
 * @param mobility of carbon in austenite
 * @param austeniteDiffusivity of carbon in austenite
 * @param austeniteDiffusivities all that give it in austenite, the one in use first
 * @param ferriteActivity of carbon in ferrite
 * @param ferriteDiffusivity of carbon in ferrite
 * @param ferriteDiffusivities all that give it in ferrite, the one in use first
 * @param chromiumCarbide what it leaves in solution in austenitic stainless steel
 * @param scaledSurface carbon activity under scale
 */
public record Phases(
    FeCLines ironCarbon,
    ActivityParameters activity,
    Agren1986Mobility mobility,
    Agren1986Diffusivity austeniteDiffusivity,
    List<CarbonDiffusivity> austeniteDiffusivities,
    GustafsonFerrite ferriteActivity,
    Agren1982Ferrite ferriteDiffusivity,
    List<CarbonDiffusivity> ferriteDiffusivities,
    Deighton1970ChromiumCarbide chromiumCarbide,
    ScaledSurface scaledSurface) {

  public static Phases load(DataFolder data, CoefficientTable table) {
    Agren1982Ferrite ferrite = new Agren1982Ferrite(table.of("agren1982-ferrite"));
    Agren1986Diffusivity austenite = new Agren1986Diffusivity(table.of("agren1986-mobility"));
    Stream<CarbonDiffusivity> constantInAustenite =
        Stream.of(
                "callister-austenite",
                "teaching-austenite",
                "wells1950",
                "asm4-austenite",
                "birks-meier-pettit-austenite")
            .map(name -> ConstantDiffusivity.inAustenite(table.of(name)));
    Stream<CarbonDiffusivity> constantInFerrite =
        Stream.of("wert1950", "callister-ferrite-older", "callister-ferrite-newer")
            .map(name -> ConstantDiffusivity.inFerrite(table.of(name)));
    return new Phases(
        new FeCLines(table.of("fe-c-a3"), table.of("fe-c-accm")),
        ActivityParameters.load(data),
        Agren1986Mobility.of(table.of("agren1986-mobility")),
        austenite,
        Stream.concat(
                Stream.of(
                    austenite,
                    new Tibbetts1980Diffusivity(table.of("tibbetts1980")),
                    new LeeMatlockVanTyne2011Diffusivity(table.of("lee-matlock-van-tyne2011")),
                    new SlyckeEricsson1981Diffusivity(table.of("slycke-ericsson1981")),
                    new Liu2009Diffusivity(table.of("liu2009"))),
                constantInAustenite)
            .toList(),
        GustafsonFerrite.of(table.of("gustafson1985-ferrite")),
        ferrite,
        Stream.concat(Stream.of(ferrite), constantInFerrite).toList(),
        new Deighton1970ChromiumCarbide(table.of("deighton1970-chromium-carbide")),
        ScaledSurface.of(table.of("oneill1993-surface")));
  }
}
