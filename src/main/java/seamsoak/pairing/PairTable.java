package seamsoak.pairing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.source.SourceTable;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;

/** The pairings that smiths use or ask about, as {@code steel-pairs.csv} has them. */
public final class PairTable {
  private static final String FILE = "steel-pairs.csv";
  private static final double MOST_MILLIMETRES = 100;

  private final List<Practice> pairs;

  private PairTable(List<Practice> pairs) {
    this.pairs = List.copyOf(pairs);
  }

  /** The packed pairs of steels that a table of the user's lacks are left out. */
  public static PairTable load(DataFolder data, SteelTable steels) {
    Set<String> ids = steels.steels().stream().map(Steel::id).collect(Collectors.toSet());
    List<Practice> pairs = new ArrayList<>();
    List<CsvTable.Row> rows = data.csv(FILE).rows();
    boolean packed = data.isPacked(FILE);
    for (CsvTable.Row row : rows) {
      if (packed && !(ids.contains(row.text("first")) && ids.contains(row.text("second")))) {
        continue;
      }
      Practice pair =
          new Practice(
              id(row, "first", ids),
              id(row, "second", ids),
              positive(row, "first_mm"),
              positive(row, "second_mm"),
              row.text("note"),
              SourceTable.standing(row),
              row.text("source"));
      if (pairs.stream().anyMatch(p -> isOf(p, pair.first(), pair.second()))) {
        throw new Fault(
            row.place("first"),
            pair.first() + " with " + pair.second() + " stands twice",
            "give each pair one line");
      }
      pairs.add(pair);
    }
    return new PairTable(pairs);
  }

  private static String id(CsvTable.Row row, String column, Set<String> ids) {
    String name = row.text(column);
    if (!ids.contains(name)) {
      throw new Fault(
          row.place(column),
          "there is no steel '" + name + "'",
          "write the id of a line of steels.csv");
    }
    return name;
  }

  private static double positive(CsvTable.Row row, String column) {
    double value = row.required(column);
    if (value <= 0 || value > MOST_MILLIMETRES) {
      throw new Fault(
          row.place(column),
          "'" + row.text(column) + "' is no thickness",
          "it is above 0 and at most 100 mm");
    }
    return value;
  }

  /** All of them in the order of the table. */
  public List<Practice> pairs() {
    return pairs;
  }

  /** What practice says of two steels, the first one first. */
  public Optional<Practice> of(String first, String second) {
    return pairs.stream()
        .filter(p -> isOf(p, first, second))
        .map(p -> p.first().equals(first) ? p : p.swapped())
        .findFirst();
  }

  private static boolean isOf(Practice p, String first, String second) {
    return p.first().equals(first) && p.second().equals(second)
        || p.first().equals(second) && p.second().equals(first);
  }
}
