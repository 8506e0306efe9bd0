package seamsoak.steel;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A steel as the program uses it: an analysis with the published figures of its grade where it has
 * one.
 *
 * @param id what it is called here: the name under which it was asked for, or the analysis as
 *     written
 * @param grade key of the table; the same as the id for an analysis
 * @param designation its standard designation
 * @param aliases other names and numbers (UNS, EN) it is found under
 * @param category such as {@code plain carbon}
 * @param analysis typical analysis of the grade, or the one written out; residual elements are 0
 * @param limits limits by element; see {@link #limits(Element)}
 * @param heatTreatment published forging and heat-treatment figures
 * @param ac1C published Ac1, degrees Celsius
 * @param ac3OrAccmC published Ac3 below the eutectoid, Accm above it, degrees Celsius
 * @param msC published Ms, degrees Celsius
 * @param cteMicroPerKelvin mean expansion from 20 to 100 C, 1e-6 per kelvin (um/m K)
 * @param role what smiths use it for; a judgement
 * @param hardenability how deep it hardens; a judgement, empty when not judged
 * @param standards keys of the standards that define it
 * @param near near but not identical grades; it is not found under these
 * @param notes what else to know
 * @param disputes treatments on which its sheets disagree, or which they forbid
 * @param make what it may be, where it was found and not bought by its grade
 */
public record Steel(
    String id,
    String grade,
    String designation,
    List<String> aliases,
    String category,
    Composition analysis,
    Map<Element, Limits> limits,
    HeatTreatment heatTreatment,
    OptionalDouble ac1C,
    OptionalDouble ac3OrAccmC,
    OptionalDouble msC,
    OptionalDouble cteMicroPerKelvin,
    String role,
    Optional<Hardenability> hardenability,
    List<String> standards,
    List<String> near,
    String notes,
    List<Dispute> disputes,
    Optional<UnknownMake> make) {
  /** More than so much of an element, wt%, is no residual: a grade would limit it. */
  private static final double MOST_RESIDUAL = 0.3;

  public Steel {
    aliases = List.copyOf(aliases);
    limits = Map.copyOf(limits);
    standards = List.copyOf(standards);
    near = List.copyOf(near);
    disputes = List.copyOf(disputes);
  }

  /** By its name alone: it is looked up all the time, and has a whole sheet's worth of figures. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }

  /** A steel of which nothing but its analysis is known. */
  public Steel(
      String id, String designation, List<String> aliases, String category, Composition analysis) {
    this(
        id,
        id,
        designation,
        aliases,
        category,
        analysis,
        Map.of(),
        HeatTreatment.NONE,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        "",
        Optional.empty(),
        List.of(),
        List.of(),
        "",
        List.of(),
        Optional.empty());
  }

  /**
   * The steel of an analysis written out, such as {@code C0.84 Mn0.75 Si0.22}; {@code
   * IllegalArgumentException} as {@link Composition#parse}.
   */
  public static Steel written(String analysis) {
    String text = analysis.strip();
    return new Steel(text, text, List.of(), "written analysis", Composition.parse(text));
  }

  /** The limits of one element, {@link Limits#NONE} where the grade states none. */
  public Limits limits(Element e) {
    return limits.getOrDefault(e, Limits.NONE);
  }

  /**
   * This grade with an analysis of a melt in place of the typical one; elements that the melt's
   * analysis does not name stay as they are. Of stock of unknown make the analysis is all that is
   * known.
   */
  Steel melt(Composition melt) {
    if (make.isPresent()) {
      return written(melt.format());
    }
    Composition whole = analysis;
    for (Element e : melt.elements()) {
      whole = whole.with(e, melt.percent(e));
    }
    return with(id + " (" + melt.format() + ")", whole);
  }

  /** The same steel under another of its names. */
  Steel called(String name) {
    return name.equals(id) ? this : with(name, analysis);
  }

  /** Whether another is the same metal, whatever the two are called. */
  public boolean isSame(Steel other) {
    return key().equals(other.key()) && analysis.equals(other.analysis);
  }

  /** By the name of the first among some that is the same metal; itself where none is. */
  public Steel amongst(List<Steel> named) {
    return named.stream().filter(this::isSame).findFirst().orElse(this);
  }

  private Steel with(String name, Composition whole) {
    return new Steel(
        name,
        grade,
        designation,
        aliases,
        category,
        whole,
        limits,
        heatTreatment,
        ac1C,
        ac3OrAccmC,
        msC,
        cteMicroPerKelvin,
        role,
        hardenability,
        standards,
        near,
        notes,
        disputes,
        make);
  }

  /** Stock that is reckoned with as this grade and may be of others. */
  Steel ofUnknownMake(
      UnknownMake what,
      String called,
      List<String> names,
      Map<Element, Limits> spans,
      SheetQuench quench,
      String known) {
    return new Steel(
        what.id(),
        grade,
        called,
        names,
        "stock of unknown make",
        analysis,
        spans,
        heatTreatment.quenchedIn(quench),
        ac1C,
        ac3OrAccmC,
        msC,
        cteMicroPerKelvin,
        role,
        hardenability,
        standards,
        what.grades(),
        known,
        disputes,
        Optional.of(what));
  }

  /** Its name in the table of steels, whatever it was asked for by. */
  public String key() {
    return make.map(UnknownMake::id).orElse(grade);
  }

  /** Elements of which it holds more or less than its grade allows. */
  public List<Deviation> deviations() {
    return Arrays.stream(Element.values())
        .filter(e -> !limits(e).hold(analysis.percent(e)))
        .map(e -> new Deviation(e, analysis.percent(e), limits(e)))
        .toList();
  }

  /** Whether an analysis keeps to every limit of this grade. */
  boolean holds(Composition melt) {
    return !limits.isEmpty()
        && Arrays.stream(Element.values())
            .allMatch(
                e ->
                    limits(e).hold(melt.percent(e))
                        && (melt.percent(e) <= MOST_RESIDUAL || limits(e).max().isPresent()));
  }
}
