package seamsoak.safety;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
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

  /** The steps that cautions are asked for: those of a billet file and of a schedule. */
  public static final Set<String> STEPS =
      Set.of(
          "weld",
          "draw",
          "press",
          "roll",
          "grind",
          "restack",
          "tile",
          "unjacket",
          "soak",
          "normalize",
          "refine",
          "anneal",
          "harden",
          "temper",
          "cool",
          "etch");

  /** A caution with the steps at which it arises and the conditions that must all hold there. */
  private record Entry(Caution caution, Set<String> steps, Set<String> conditions) {}

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
   * @param step one of {@link #STEPS}
   * @param conditions words of all the conditions that hold, see {@link Condition#word}
   * @throws IllegalArgumentException for an unknown word, which would silently hide a danger
   */
  public List<Caution> at(String step, Set<String> conditions) {
    known(step, STEPS);
    conditions.forEach(condition -> known(condition, Condition.words()));
    return entries.stream()
        .filter(e -> e.steps().contains(step) && conditions.containsAll(e.conditions()))
        .map(Entry::caution)
        .toList();
  }

  /** The cautions that hold whatever is done, worst first, then in the order of the table. */
  public List<Caution> general() {
    return entries.stream().filter(e -> e.steps().contains(ALWAYS)).map(Entry::caution).toList();
  }

  private static void known(String word, Collection<String> words) {
    if (!words.contains(word)) {
      throw new IllegalArgumentException("'" + word + "' is none of " + new TreeSet<>(words));
    }
  }

  private static Entry entry(CsvTable.Row row) {
    Set<String> stepWords = new HashSet<>(STEPS);
    stepWords.add(ALWAYS);
    Set<String> steps = words(row, "steps", stepWords);
    Set<String> conditions = words(row, "conditions", Condition.words());
    if (steps.isEmpty()) {
      throw new Fault(row.place("steps"), "the steps are blank", "name one or 'always'");
    }
    if (steps.contains(ALWAYS) && (steps.size() > 1 || !conditions.isEmpty())) {
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
    return new Entry(caution, steps, conditions);
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
