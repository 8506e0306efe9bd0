package seamsoak.safety;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.data.Place;
import seamsoak.source.Caution;
import seamsoak.source.Gravity;
import seamsoak.source.SourceTable;

/** The cautions of the shop, found by the step and by what holds there. */
public final class CautionTable {
  private static final String ALWAYS = "always";

  /** A caution with the steps at which it arises and the conditions that must all hold there. */
  private record Entry(
      Caution caution, boolean always, Set<CautionStep> steps, Set<Condition> conditions) {}

  private final List<Entry> entries;

  private CautionTable(List<Entry> entries) {
    this.entries = entries;
  }

  /** Reads {@code cautions.csv}. */
  public static CautionTable load(DataFolder data) {
    List<Entry> entries = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (CsvTable.Row row : data.csv("cautions.csv").rows()) {
      Entry entry = entry(row);
      String id = entry.caution().id();
      if (!ids.add(id)) {
        throw new Fault(row.place("id"), "caution '" + id + "' stands twice", "give each id once");
      }
      entries.add(entry);
    }
    // The sort is stable: within a gravity the order stays that of the table.
    entries.sort(Comparator.comparing(entry -> entry.caution().gravity()));
    return new CautionTable(List.copyOf(entries));
  }

  /**
   * The cautions that arise at a step, worst first, then in the order of the table; those of {@link
   * #general} are not among them.
   *
   * @param conditions all that hold
   */
  public List<Caution> at(CautionStep step, Set<Condition> conditions) {
    return entries.stream()
        .filter(e -> e.steps().contains(step) && conditions.containsAll(e.conditions()))
        .map(Entry::caution)
        .toList();
  }

  /** The cautions that hold whatever is done, worst first, then in the order of the table. */
  public List<Caution> general() {
    return entries.stream().filter(Entry::always).map(Entry::caution).toList();
  }

  private static Entry entry(CsvTable.Row row) {
    Map<String, CautionStep> known = byWord(CautionStep.values(), CautionStep::word);
    Set<String> steps = words(row, "steps", with(known.keySet(), ALWAYS));
    Map<String, Condition> holding = byWord(Condition.values(), Condition::word);
    Set<String> conditions = words(row, "conditions", holding.keySet());
    if (steps.isEmpty()) {
      throw new Fault(row.place("steps"), "the steps are blank", "name one or 'always'");
    }
    boolean always = steps.remove(ALWAYS);
    if (always && (!steps.isEmpty() || !conditions.isEmpty())) {
      throw new Fault(
          row.place("steps"),
          "'always' stands beside other steps or conditions",
          "it takes neither");
    }
    Caution caution =
        new Caution(
            filled(row, "id"),
            gravity(row),
            filled(row, "statement"),
            filled(row, "source"),
            SourceTable.standing(row));
    return new Entry(
        caution,
        always,
        steps.stream().map(known::get).collect(Collectors.toUnmodifiableSet()),
        conditions.stream().map(holding::get).collect(Collectors.toUnmodifiableSet()));
  }

  private static <T> Map<String, T> byWord(T[] values, Function<T, String> word) {
    return Arrays.stream(values).collect(Collectors.toMap(word, Function.identity()));
  }

  private static Set<String> with(Set<String> some, String more) {
    Set<String> all = new HashSet<>(some);
    all.add(more);
    return all;
  }

  private static Set<String> words(CsvTable.Row row, String column, Set<String> known) {
    Set<String> words = new LinkedHashSet<>(row.list(column));
    for (String word : words) {
      if (!known.contains(word)) {
        throw new Fault(
            row.place(column),
            "unknown word '" + Fault.shown(word) + "' in column " + column,
            "the words are " + new TreeSet<>(known));
      }
    }
    return words;
  }

  private static Gravity gravity(CsvTable.Row row) {
    double number = row.required("gravity");
    for (Gravity gravity : Gravity.values()) {
      if (gravity.number() == number) {
        return gravity;
      }
    }
    Place place = row.place("gravity");
    throw new Fault(place, "no such gravity", "1 can kill at once, 2 injures, 3 spoils work");
  }

  private static String filled(CsvTable.Row row, String column) {
    String text = row.text(column);
    if (text.isEmpty()) {
      throw new Fault(row.place(column), "the " + column + " is blank", "each caution has one");
    }
    return text;
  }
}
