package seamsoak.steel;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.data.Nearest;
import seamsoak.source.SourceTable;

/** The steels, found by id, designation, alias or number, and where each figure comes from. */
public final class SteelTable {
  private static final Pattern SPACING = Pattern.compile("[\\s_\\-\\u2010-\\u2015]+");
  // People put the body before its grade, "AISI W1"; the grade alone tells the steel.
  private static final Pattern BODY =
      Pattern.compile("^(?:(?:SAE|AISI|ASTM|JIS|DIN|UNS|EN|W\\.?NR\\.?)[/:]?)+(?=.)");

  /** Columns of {@code steels.csv} that hold a published temperature. */
  public static final List<String> TEMPERATURES =
      List.of(
          "forge_start_C",
          "forge_stop_C",
          "normalize_min_C",
          "normalize_max_C",
          "anneal_min_C",
          "anneal_max_C",
          "harden_min_C",
          "harden_max_C",
          "temper_min_C",
          "temper_max_C",
          "Ac1_C",
          "Ac3_or_Accm_C",
          "Ms_C");

  /** Every element with three decimals and room to spare. */
  private static final int LONGEST_NAME = 200;

  private record Named(Steel steel, String spelled) {}

  private final Map<String, Named> byName = new HashMap<>();
  private final List<Steel> steels = new ArrayList<>();
  private final Set<String> names = new LinkedHashSet<>();
  private final Map<String, CsvTable.Row> rows = new LinkedHashMap<>();
  private final Set<String> columns;
  private final Supplier<CsvTable> standings;

  /** Read when first asked for: it is the longest table, and few answers need it. */
  private Map<String, Map<String, Provenance>> provenance;

  private SteelTable(
      CsvTable table,
      Map<String, List<Dispute>> disputes,
      Map<String, TemperatureRange> bladeTempers,
      Function<Map<String, Steel>, List<UnknownMakeTable.Stock>> unknown,
      Supplier<CsvTable> standings) {
    this.columns = Set.copyOf(table.columns());
    this.standings = standings;
    for (CsvTable.Row row : table.someRows()) {
      String id = row.text("id");
      Steel steel =
          SteelRow.read(
              row, disputes.getOrDefault(id, List.of()), Optional.ofNullable(bladeTempers.get(id)));
      steels.add(steel);
      rows.put(steel.id(), row);
      // Ids first: they are what a message suggests.
      name(steel, steel.id(), row, "id");
      name(steel, steel.designation(), row, "designation");
      for (String column : List.of("aliases", "uns", "w_nr")) {
        row.list(column).forEach(alias -> name(steel, alias, row, column));
      }
    }
    Map<String, Steel> grades =
        steels.stream().collect(Collectors.toMap(Steel::id, Function.identity()));
    for (UnknownMakeTable.Stock stock : unknown.apply(grades)) {
      Steel steel = stock.steel();
      steels.add(steel);
      name(steel, steel.id(), stock.row(), "id");
      name(steel, steel.designation(), stock.row(), "designation");
      steel.aliases().forEach(alias -> name(steel, alias, stock.row(), "aliases"));
    }
  }

  /**
   * Reads {@code steels.csv}, {@code disputes.csv}, {@code blade-tempers.csv} and {@code
   * unknown-make.csv}, and {@code steels-standing.csv} once a standing is asked for.
   */
  public static SteelTable load(DataFolder data) {
    return new SteelTable(
        data.csv("steels.csv"),
        DisputeTable.load(data),
        BladeTemperTable.load(data),
        grades -> UnknownMakeTable.load(data, grades),
        () -> data.csv("steels-standing.csv"));
  }

  /** The steels that are grades, which stock of unknown make is none of. */
  public List<Steel> grades() {
    return steels.stream().filter(s -> s.make().isEmpty()).toList();
  }

  /** All steels in the order of the table, stock of unknown make behind them. */
  public List<Steel> steels() {
    return List.copyOf(steels);
  }

  /**
   * The steel of that id, designation, alias or number, ignoring case, spaces, hyphens and the name
   * of the standards body; the steel of an analysis written out as {@code C0.84 Mn0.75}; or a grade
   * with the analysis of its melt, {@code 1084: C0.88 Mn0.70}. A near grade is not found. {@code
   * IllegalArgumentException} with one sentence when the text is an analysis that cannot be read.
   */
  public Optional<Steel> find(String name) {
    if (name.length() > LONGEST_NAME) {
      throw new IllegalArgumentException(
          "'" + Fault.shown(name) + "' is too long for a steel or an analysis");
    }
    Optional<Steel> known = called(name);
    if (known.isPresent()) {
      return known;
    }
    return AnalysisText.looksWritten(name) ? Optional.of(Steel.written(name)) : melt(name);
  }

  /** A grade with the analysis of a melt behind a colon, {@code 1084: C0.88 Mn0.70}. */
  private Optional<Steel> melt(String name) {
    int colon = name.indexOf(':');
    String analysis = name.substring(colon + 1);
    if (colon < 0 || !AnalysisText.looksWritten(analysis)) {
      return Optional.empty();
    }
    return called(name.substring(0, colon)).map(grade -> grade.melt(Composition.parse(analysis)));
  }

  /** The grades whose every limit an analysis keeps to. */
  public List<Steel> gradesOf(Composition melt) {
    return grades().stream().filter(s -> s.holds(melt)).toList();
  }

  /** The known name nearest to a misspelt one, if any is near. */
  public Optional<String> nearest(String name) {
    return Nearest.to(name.strip(), names);
  }

  /**
   * Where a figure of the table comes from; empty for text columns, for steels and figures that the
   * user's own table brings, and for blank cells.
   *
   * @param steelId id of the steel
   * @param column column of {@code steels.csv}
   */
  public synchronized Optional<Provenance> standing(String steelId, String column) {
    if (provenance == null) {
      provenance = readProvenance();
    }
    return Optional.ofNullable(provenance.getOrDefault(steelId, Map.of()).get(column));
  }

  private void name(Steel steel, String name, CsvTable.Row row, String column) {
    Named other = byName.putIfAbsent(key(name), new Named(steel, name));
    if (other != null && other.steel() != steel) {
      throw new Fault(
          row.place(column),
          "'" + Fault.shown(name) + "' already names " + other.steel().id(),
          "names are unique");
    }
    names.add(name);
  }

  /** The steel of a name, called by it as the table spells it. */
  private Optional<Steel> called(String name) {
    return Optional.ofNullable(byName.get(key(name))).map(n -> n.steel().called(n.spelled()));
  }

  private static String key(String name) {
    String bare = SPACING.matcher(name.strip()).replaceAll("").toUpperCase(Locale.ROOT);
    return BODY.matcher(bare).replaceFirst("");
  }

  // A line of standings speaks for one value: when a user's table has another value there, the
  // line is left out rather than vouch for it.
  private Map<String, Map<String, Provenance>> readProvenance() {
    Map<String, Map<String, Provenance>> all = new HashMap<>();
    Set<List<String>> seen = new HashSet<>();
    for (CsvTable.Row line : standings.get().rows()) {
      String id = line.text("id");
      String column = line.text("column");
      if (!seen.add(List.of(id, column))) {
        throw new Fault(
            line.place("column"), column + " of " + id + " stands twice", "give it one line");
      }
      if (!columns.contains(column)) {
        throw new Fault(
            line.place("column"), "steels.csv has no column '" + column + "'", "name one it has");
      }
      CsvTable.Row row = rows.get(id);
      boolean low = line.text("confidence").equals("low");
      if (!low && !line.text("confidence").isEmpty()) {
        throw new Fault(
            line.place("confidence"),
            "unknown confidence '" + line.text("confidence") + "'",
            "write 'low' or leave it blank");
      }
      Provenance found = new Provenance(SourceTable.standing(line), low, line.text("source"));
      if (row != null && row.text(column).equals(line.text("value"))) {
        all.computeIfAbsent(id, k -> new HashMap<>()).put(column, found);
      }
    }
    return all;
  }
}
