package seamsoak.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.Published;
import seamsoak.schedule.Margins;
import seamsoak.source.Exceeded;
import seamsoak.source.Source;
import seamsoak.source.SourceTable;
import seamsoak.source.Standing;
import seamsoak.state.Grain;
import seamsoak.steel.Composition;
import seamsoak.steel.Provenance;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;
import seamsoak.trace.Trace.Entry;
import seamsoak.trace.Trace.Outside;

/** Collects the entries of a trace, each once. */
final class TraceEntries {
  private static final String UNKNOWN = "not stated";
  private static final String OWN = "the user's own figures";
  private static final String WEAKLY = ", weakly";

  private final SourceTable sources;
  private final SteelTable steels;
  private final Map<List<String>, Entry> entries = new LinkedHashMap<>();

  TraceEntries(SourceTable sources, SteelTable steels) {
    this.sources = sources;
    this.steels = steels;
  }

  /** A metal that a correlation is asked about. */
  record Material(String name, Composition analysis) {
    static Material of(Steel steel) {
      return new Material(steel.id(), steel.analysis());
    }
  }

  /** A temperature that a correlation is asked about, and when that is. */
  record Moment(String when, double celsius) {
    Moment orHotter(Moment other) {
      return other.celsius > celsius ? other : this;
    }

    Moment orCooler(Moment other) {
      return other.celsius < celsius ? other : this;
    }
  }

  Trace trace() {
    return new Trace(List.copyOf(entries.values()));
  }

  /** Correlations whose ranges nothing is held against. */
  void use(Published... all) {
    use(List.of(), List.of(), all);
  }

  /** Correlations with the metals they were used for. */
  void use(List<Material> metals, Published... all) {
    use(metals, List.of(), all);
  }

  /**
   * Correlations with the metals and the temperatures they were used for. What is used twice is
   * told once, with all that it left.
   */
  void use(List<Material> metals, List<Moment> moments, Published... all) {
    for (Published one : all) {
      Correlation c = one.correlation();
      Entry before = entries.get(List.of(c.name(), c.gives()));
      Set<Outside> left = new LinkedHashSet<>(before == null ? List.of() : before.exceeded());
      metals.forEach(m -> c.exceeded(m.analysis()).forEach(e -> left.add(outside(m.name(), e))));
      moments.forEach(m -> c.exceeded(m.celsius()).forEach(e -> left.add(outside(m.when(), e))));
      put(
          new Entry(
              c.name(),
              c.gives(),
              c.unit(),
              c.sourceKey(),
              citation(Arrays.asList(c.sourceKey().split(Correlation.BETWEEN_SOURCES))),
              c.standing().words(),
              words(c.terms()),
              c.notes(),
              c.validity(),
              c.statedError(),
              List.copyOf(left)));
    }
  }

  /** A choice of ours, in words with numbers. */
  void setting(String name, String gives, Object... numbers) {
    String words = String.format(Locale.ROOT, gives, numbers);
    limit(name, words, "judgement", Standing.JUDGEMENT);
  }

  /** A limit of a table. */
  void limit(String name, String gives, String source, Standing standing) {
    use(new Correlation(name, gives, "", source, standing, List.of(), "none"));
  }

  /** The analysis of a steel that is reckoned with, and further columns of it. */
  void analysis(Steel steel, String... further) {
    Stream<String> named = steel.analysis().elements().stream().map(e -> e.symbol() + "_typ_pct");
    figures(steel, "analysis", "wt%", Stream.concat(named, known(steel, Stream.of(further))));
  }

  /** Its published temperatures whose names begin so. */
  void temperatures(Steel steel, String what, String... beginnings) {
    figures(
        steel,
        what,
        "C",
        known(
            steel,
            SteelTable.TEMPERATURES.stream()
                .filter(c -> Arrays.stream(beginnings).anyMatch(c::startsWith))));
  }

  private Stream<String> known(Steel steel, Stream<String> columns) {
    return columns.filter(c -> steels.standing(steel.grade(), c).isPresent());
  }

  /** Nothing where it has none of them. */
  private void figures(Steel steel, String what, String unit, Stream<String> columns) {
    Set<String> keys = new LinkedHashSet<>();
    Set<Standing> standings = EnumSet.noneOf(Standing.class);
    Map<String, List<String>> terms = new TreeMap<>();
    columns.forEach(
        column -> {
          Optional<Provenance> from = steels.standing(steel.grade(), column);
          from.ifPresent(p -> keys.add(p.source()));
          from.ifPresent(p -> standings.add(p.standing()));
          String known =
              from.map(p -> p.standing().words() + (p.lowConfidence() ? WEAKLY : ""))
                  .orElse(UNKNOWN);
          String word = column.replaceFirst("(_typ)?_pct$|_C$", "").replace('_', ' ');
          terms.computeIfAbsent(known, k -> new ArrayList<>()).add(word);
        });
    boolean alike = terms.size() == 1 && !terms.keySet().iterator().next().endsWith(WEAKLY);
    if (!terms.isEmpty()) {
      put(
          new Entry(
              steel.id() + " " + what,
              what + " of " + steel.id(),
              unit,
              String.join(Correlation.BETWEEN_SOURCES, keys),
              keys.isEmpty() ? OWN : citation(keys),
              keys.isEmpty() ? UNKNOWN : Standing.together(standings).words(),
              alike ? Map.of() : terms,
              List.of(),
              List.of(),
              UNKNOWN,
              List.of()));
    }
  }

  private void put(Entry e) {
    entries.put(List.of(e.name(), e.gives()), e);
  }

  private String citation(Collection<String> keys) {
    return keys.stream()
        .map(k -> sources.find(k).map(Source::citation).orElse(k))
        .collect(Collectors.joining("; "));
  }

  private static Map<String, List<String>> words(Map<Standing, List<String>> terms) {
    Map<String, List<String>> words = new LinkedHashMap<>();
    if (terms.size() > 1) {
      terms.forEach((standing, of) -> words.put(standing.words(), of));
    }
    return words;
  }

  private static Outside outside(String by, Exceeded e) {
    return new Outside(
        by, e.range().quantity(), e.range().unit(), e.value(), e.range().low(), e.range().high());
  }

  /** Where a schedule's temperatures and times lie. */
  void margins() {
    setting(
        "schedule",
        "the schedule: normalize %.0f C above the highest Ac3 or Accm, up to %d cycles down to"
            + " the hardening heat until the grain is ASTM %.0f, within the published ranges"
            + " that the steels share; grains: each pass through the critical range makes new"
            + " ones of %.2f times the size; a hold counts from when the core is within %.0f C;"
            + " a forge is %.0f C hotter than the work; a kiln that is off falls %.0f C per hour",
        Margins.NORMALIZE_ABOVE,
        Margins.MOST_CYCLES,
        Margins.FINE_ENOUGH,
        Grain.NEW_SHARE,
        Margins.CLOSE_KELVIN,
        Margins.FORGE_ABOVE,
        Margins.KILN_FALLS);
  }
}
