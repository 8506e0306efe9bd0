package seamsoak.property;

import seamsoak.data.DataFolder;

/**
 * Every published correlation of this package, read once and passed to whoever needs it.
 *
 * @param ae1 the recommended lower critical temperature
 * @param andrewsAe1 one of its members
 * @param grangeAe1 one of its members
 * @param hougardyAc1 one of its members
 * @param andrewsAe3 upper critical temperature and what alloying adds to it
 * @param leeLeeAccm what alloying adds to the cementite line
 * @param ironCarbon phase lines of plain iron and carbon
 * @param mobility of carbon in austenite
 * @param ferriteDiffusivity of carbon in ferrite
 * @param ferriteActivity of carbon in ferrite
 * @param scaledSurface carbon activity under scale
 * @param activity parameters of carbon in austenite
 */
public record Correlations(
    Ae1Mean ae1,
    Andrews1965Ae1 andrewsAe1,
    Grange1961Ae1 grangeAe1,
    Hougardy1984Ac1 hougardyAc1,
    Andrews1965Ae3 andrewsAe3,
    LeeLee2007Accm leeLeeAccm,
    FeCLines ironCarbon,
    Agren1986Mobility mobility,
    Agren1982Ferrite ferriteDiffusivity,
    GustafsonFerrite ferriteActivity,
    ScaledSurface scaledSurface,
    ActivityParameters activity) {

  public static Correlations load(DataFolder data) {
    CoefficientTable table = CoefficientTable.load(data);
    Andrews1965Ae1 andrews = new Andrews1965Ae1(table.of("andrews1965-ae1"));
    Grange1961Ae1 grange = new Grange1961Ae1(table.of("grange1961-ae1"));
    Hougardy1984Ac1 hougardy = new Hougardy1984Ac1(table.of("hougardy1984-ac1"));
    return new Correlations(
        new Ae1Mean(table.of("ae1-mean"), andrews, grange, hougardy),
        andrews,
        grange,
        hougardy,
        new Andrews1965Ae3(table.of("andrews1965-ae3")),
        new LeeLee2007Accm(table.of("lee-lee2007-accm")),
        new FeCLines(table.of("fe-c-a3"), table.of("fe-c-accm")),
        Agren1986Mobility.of(table.of("agren1986-mobility")),
        Agren1982Ferrite.of(table.of("agren1982-ferrite")),
        GustafsonFerrite.of(table.of("gustafson1985-ferrite")),
        ScaledSurface.of(table.of("oneill1993-surface")),
        ActivityParameters.load(data));
  }
}
