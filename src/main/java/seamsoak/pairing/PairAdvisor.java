package seamsoak.pairing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import seamsoak.billet.Stack;
import seamsoak.property.Correlations;
import seamsoak.source.Standing;
import seamsoak.state.StageReport;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;
import seamsoak.steel.UnknownMake;

/** Advises on two steels: the checks, the carbon between them, what would make them work. */
public final class PairAdvisor {
  /** Layers where neither the smith nor the table of pairings says, m. */
  private static final double USUAL_LAYER_METRES = 3e-3;

  /** Section at hardening where nobody says, m: a blade before grinding. */
  public static final double USUAL_SECTION_METRES = 5e-3;

  private final Correlations k;
  private final PairCheck check;
  private final PairTable practice;
  private final SteelTable table;
  private List<PairSteel> grades;

  public PairAdvisor(Correlations k, PairLimits limits, PairTable practice, SteelTable table) {
    this.k = k;
    this.check = new PairCheck(k, limits);
    this.practice = practice;
    this.table = table;
  }

  /**
   * Each two unlike steels that lie on each other in a stack, once.
   *
   * @param history of the billet, whose thickness at the end is the section that is hardened
   */
  public List<PairAdvice> ofStack(Stack stack, List<StageReport> history) {
    double sectionMetres = history.get(history.size() - 1).thicknessMm() / 1e3;
    List<PairAdvice> all = new ArrayList<>();
    Set<Set<Steel>> done = new HashSet<>();
    for (int i = 1; i < stack.layers(); i++) {
      Steel a = stack.steel(i - 1);
      Steel b = stack.steel(i);
      if (!a.equals(b) && done.add(Set.of(a, b))) {
        Asked asked =
            new Asked(
                OptionalDouble.of(stack.thickness(i - 1).metres()),
                OptionalDouble.of(stack.thickness(i).metres()),
                OptionalDouble.empty(),
                OptionalDouble.of(sectionMetres));
        all.add(advise(a, b, asked));
      }
    }
    return List.copyOf(all);
  }

  /**
   * What the smith said of the way the pair is put together; empty where nothing.
   *
   * @param firstMetres layers of the first
   * @param secondMetres layers of the second
   * @param firstShare share of the first, 0 to 1; not together with both layers
   * @param sectionMetres section at hardening
   */
  public record Asked(
      OptionalDouble firstMetres,
      OptionalDouble secondMetres,
      OptionalDouble firstShare,
      OptionalDouble sectionMetres) {
    /** Nothing was said. */
    static final Asked NOTHING =
        new Asked(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty());
  }

  /** A pair of which one has no analysis: a clash, and why. */
  public PairAdvice withStock(String first, String second, Stock stock) {
    Finding finding =
        new Judge(check.limits())
            .values(
                stock.check(),
                Stock.named(first).isPresent() ? 1 : 0,
                Stock.named(second).isPresent() ? 1 : 0,
                Why.NAME);
    return new PairAdvice(
        first,
        second,
        finding.rating(),
        List.of(finding),
        false,
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(),
        Optional.empty(),
        List.of());
  }

  /** The pair and all that is known of it. */
  public PairAdvice advise(Steel first, Steel second, Asked asked) {
    Optional<Practice> said = practice.of(first.key(), second.key());
    PairSetting setting = setting(asked, said);
    PairSteel a = check.steel(first);
    PairSteel b = check.steel(second);
    PairResult result = check.of(a, b, setting);
    PairRemedies remedies = new PairRemedies(check);
    List<PairSteel> grades = result.deciding().isEmpty() ? List.of() : grades();
    double welding = check.weldingCelsius(a, b, setting);
    return new PairAdvice(
        first.id(),
        second.id(),
        result.rating(),
        result.checks(),
        result.same(),
        Optional.of(
            new PairAdvice.How(
                100 * setting.share(),
                1e3 * setting.firstMetres(),
                1e3 * setting.secondMetres(),
                1e3 * setting.sectionMetres(),
                welding,
                assumed(asked, said))),
        Optional.of(new FirstWelds(k).of(a, b, setting, welding)),
        remedies.of(result, setting),
        remedies.insteadOfSecond(result, grades, setting),
        said.map(p -> new PairAdvice.Said(p.note(), p.standing().words(), p.source())),
        Stream.concat(
                unknownMakes(first, second, setting),
                Stream.of(first, second).distinct().flatMap(this::remarks))
            .toList());
  }

  /** What becomes of the pair by what each stock of unknown make in it may turn out to be. */
  private Stream<PairAdvice.Remark> unknownMakes(Steel first, Steel second, PairSetting setting) {
    return Stream.of(first, second)
        .distinct()
        .flatMap(s -> s.make().stream())
        .map(
            make ->
                new PairAdvice.Remark.UnknownMake(
                    MayBe.of(k, make),
                    make.mayBe().stream()
                        .map(
                            grade ->
                                PairAdvice.As.of(
                                    grade,
                                    check.of(
                                        check.steel(as(first, make, grade)),
                                        check.steel(as(second, make, grade)),
                                        setting)))
                        .toList()));
  }

  private static Steel as(Steel steel, UnknownMake make, Steel grade) {
    return steel.make().filter(make::equals).isPresent() ? grade : steel;
  }

  /** Every steel of the table as the checks want it, once a pair needs others to choose from. */
  private List<PairSteel> grades() {
    if (grades == null) {
      grades = table.grades().stream().map(check::steel).toList();
    }
    return grades;
  }

  /** As is usual for a pair. */
  static PairSetting usual(Optional<Practice> said) {
    return setting(Asked.NOTHING, said);
  }

  /** Layers as asked; what is not asked as the table of pairings has it, or as usual. */
  private static PairSetting setting(Asked asked, Optional<Practice> said) {
    OptionalDouble share = asked.firstShare();
    double first =
        asked.firstMetres().orElse(said.map(p -> p.firstMm() / 1e3).orElse(USUAL_LAYER_METRES));
    double second;
    if (share.isPresent()) {
      second = first * (1 - share.getAsDouble()) / share.getAsDouble();
    } else {
      second =
          asked.secondMetres().orElse(said.map(p -> p.secondMm() / 1e3).orElse(USUAL_LAYER_METRES));
    }
    return new PairSetting(
        first,
        second,
        asked.sectionMetres().orElse(USUAL_SECTION_METRES),
        OptionalDouble.empty(),
        false);
  }

  private static List<PairAdvice.Assumption> assumed(Asked asked, Optional<Practice> said) {
    List<PairAdvice.Assumption> all = new ArrayList<>();
    if (asked.firstMetres().isEmpty()) {
      all.add(
          said.isPresent()
              ? PairAdvice.Assumption.LAYERS_OF_PRACTICE
              : PairAdvice.Assumption.LAYERS);
    }
    if (asked.sectionMetres().isEmpty()) {
      all.add(PairAdvice.Assumption.SECTION);
    }
    all.add(PairAdvice.Assumption.WELD_HEATS);
    return all;
  }

  private Stream<PairAdvice.Remark> remarks(Steel s) {
    Stream<PairAdvice.Remark> outside =
        s.deviations().stream()
            .map(d -> new PairAdvice.Remark.OutsideGrade(s.id(), s.designation(), d));
    boolean own =
        s.heatTreatment().harden().isEmpty() && table.steels().stream().noneMatch(s::isSame);
    List<String> grades =
        own ? table.gradesOf(s.analysis()).stream().map(Steel::id).toList() : List.of();
    return grades.isEmpty()
        ? outside
        : Stream.concat(outside, Stream.of(new PairAdvice.Remark.WithinGrades(s.id(), grades)));
  }

  /** Where the settings of this advice come from, for {@code --sources}. */
  public static String settings() {
    return String.format(
        Locale.ROOT,
        "layers %.0f mm and section %.0f mm where nobody says; first weld %d heats of %.0f min;"
            + " soak at %.0f C; %s",
        1e3 * USUAL_LAYER_METRES,
        1e3 * USUAL_SECTION_METRES,
        FirstWelds.WELD_HEATS,
        FirstWelds.WELD_MINUTES,
        FirstWelds.SOAK_CELSIUS,
        Standing.JUDGEMENT.words());
  }
}
