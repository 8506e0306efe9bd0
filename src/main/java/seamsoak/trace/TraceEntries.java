package seamsoak.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import seamsoak.property.correlation.Correlation;
import seamsoak.schedule.Margins;
import seamsoak.soak.Histories;
import seamsoak.source.Exceeded;
import seamsoak.source.Source;
import seamsoak.source.SourceTable;
import seamsoak.source.Standing;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.steel.Provenance;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;
import seamsoak.trace.Trace.Entry;
import seamsoak.trace.Trace.Outside;

/** Collects the entries of a trace, each once. */
final class TraceEntries {
  private static final String UNKNOWN = "not stated";
  private static final String OWN = "the user's own figures";
  private static final String TYPICAL = "_typ_pct";

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
  record Moment(String when, double celsius) {}

  Trace trace() {
    return new Trace(List.copyOf(entries.values()));
  }

  /** A correlation with the metals and the temperatures it was used at. */
  void use(Correlation c, List<Material> metals, List<Moment> moments) {
    List<Outside> outside = new ArrayList<>();
    metals.forEach(m -> c.exceeded(m.analysis()).forEach(e -> outside.add(outside(m.name(), e))));
    moments.forEach(m -> c.exceeded(m.celsius()).forEach(e -> outside.add(outside(m.when(), e))));
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
            outside));
  }

  /** A choice of ours. */
  void setting(String name, String gives) {
    limit(name, gives, "judgement", Standing.JUDGEMENT);
  }

  /** A limit of a table. */
  void limit(String name, String gives, String source, Standing standing) {
    put(
        new Entry(
            name,
            gives,
            "",
            source,
            citation(List.of(source)),
            standing.words(),
            Map.of(),
            List.of(),
            List.of(),
            "none",
            List.of()));
  }

  /** The analysis of a steel that is reckoned with, and further columns of it. */
  void analysis(Steel steel, String... further) {
    Map<String, String> columns = new LinkedHashMap<>();
    for (Element e : Element.values()) {
      if (steel.analysis().percent(e) > 0) {
        columns.put(e.symbol() + TYPICAL, e.symbol());
      }
    }
    Arrays.stream(further)
        .filter(c -> steels.standing(steel.id(), c).isPresent())
        .forEach(c -> columns.put(c, c.replace("_pct", "")));
    figures(steel, "analysis", "wt%", columns);
  }

  /** Published temperatures of a steel; nothing where it has none of them. */
  void temperatures(Steel steel, List<String> wanted) {
    temperatures(steel, "published temperatures", wanted);
  }

  /** Some of them under a name of their own. */
  void temperatures(Steel steel, String what, List<String> wanted) {
    Map<String, String> columns = new LinkedHashMap<>();
    wanted.stream()
        .filter(c -> steels.standing(steel.id(), c).isPresent())
        .forEach(c -> columns.put(c, c.replaceFirst("_C$", "").replace('_', ' ')));
    if (!columns.isEmpty()) {
      figures(steel, what, "C", columns);
    }
  }

  private void figures(Steel steel, String what, String unit, Map<String, String> columns) {
    Set<String> keys = new LinkedHashSet<>();
    Map<String, List<String>> terms = new TreeMap<>();
    Set<Standing> all = new LinkedHashSet<>();
    columns.forEach(
        (column, word) -> {
          Provenance from = steels.standing(steel.id(), column).orElse(null);
          String known = UNKNOWN;
          if (from != null) {
            keys.add(from.source());
            all.add(from.standing());
            known = from.standing().words() + (from.lowConfidence() ? ", weakly" : "");
          }
          terms.computeIfAbsent(known, k -> new ArrayList<>()).add(word);
        });
    put(
        new Entry(
            steel.id() + " " + what,
            what + " of " + steel.id(),
            unit,
            String.join(Correlation.BETWEEN_SOURCES, keys),
            keys.isEmpty() ? OWN : citation(List.copyOf(keys)),
            all.isEmpty() ? UNKNOWN : Standing.together(all).words(),
            terms.size() > 1 || terms.keySet().stream().anyMatch(k -> k.contains("weakly"))
                ? terms
                : Map.of(),
            List.of(),
            List.of(),
            UNKNOWN,
            List.of()));
  }

  /** The same correlation asked twice is told once, with all that it left. */
  private void put(Entry e) {
    entries.merge(
        List.of(e.name(), e.gives()),
        e,
        (a, b) -> {
          Set<Outside> outside = new LinkedHashSet<>(a.exceeded());
          outside.addAll(b.exceeded());
          return with(b, List.copyOf(outside));
        });
  }

  private static Entry with(Entry e, List<Outside> exceeded) {
    return new Entry(
        e.name(),
        e.gives(),
        e.unit(),
        e.source(),
        e.citation(),
        e.standing(),
        e.terms(),
        e.notes(),
        e.ranges(),
        e.statedError(),
        exceeded);
  }

  private String citation(List<String> keys) {
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

  /** What varies among the histories behind a band, and by how much. */
  void possibleHistories() {
    setting(
        "possible-histories",
        "the band: "
            + String.format(
                Locale.ROOT,
                "one sigma of the speed of carbon %.0f %%, of temperature %.0f C, of times %.0f %%, of"
                    + " grinding %.2f mm; evenly spread: covered share %.1f to %.1f, visible dip %.1f to"
                    + " %.1f of its setting, carbon over the grade's limits, scaling from steel to iron,"
                    + " breadth that the eye compares %.1f to %.1f mm",
                100 * Histories.MOBILITY_SIGMA,
                Histories.KELVIN_SIGMA,
                100 * Histories.TIME_SIGMA,
                1e3 * Histories.GRINDING_SIGMA_METRES,
                Histories.LEAST_COVERED,
                Histories.MOST_COVERED,
                Histories.LEAST_DIP,
                Histories.MOST_DIP,
                1e3 * Histories.LEAST_BROAD_METRES,
                1e3 * Histories.MOST_BROAD_METRES));
  }

  /** Where a schedule's temperatures and times lie. */
  void margins() {
    setting(
        "schedule",
        String.format(
            Locale.ROOT,
            "the schedule: normalize %.0f C above the highest Ac3 or Accm, up to %d cycles down to"
                + " the hardening heat until the grain is ASTM %.0f, within the published ranges"
                + " that the steels share; grains: each pass through the critical range makes new"
                + " ones of %.2f times the size; a hold counts from when the core is within %.0f C;"
                + " a forge is %.0f C hotter than the work; a kiln that is off falls %.0f C per hour",
            Margins.NORMALIZE_ABOVE,
            Margins.MOST_CYCLES,
            Margins.FINE_ENOUGH,
            Margins.NEW_SHARE,
            Margins.CLOSE_KELVIN,
            Margins.FORGE_ABOVE,
            Margins.KILN_FALLS));
  }
}
