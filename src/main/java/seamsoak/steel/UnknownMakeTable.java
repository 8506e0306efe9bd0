package seamsoak.steel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.source.SourceTable;

/** Reads {@code unknown-make.csv}: stock that is found rather than bought, and what it may be. */
final class UnknownMakeTable {
  private UnknownMakeTable() {}

  /** A line, and the steel that is made of it. */
  record Stock(CsvTable.Row row, Steel steel) {}

  /**
   * All of them. Where the user has steels of his own, grades that are not among them are left out.
   *
   * @param grades the steels by id
   */
  static List<Stock> load(DataFolder data, Map<String, Steel> grades) {
    List<Stock> all = new ArrayList<>();
    for (CsvTable.Row row : data.csv("unknown-make.csv").rows()) {
      List.of("id", "designation", "test").forEach(column -> filled(row, column));
      List<Steel> known = new ArrayList<>();
      for (String id : row.list("may_be")) {
        Optional<Steel> grade = Optional.ofNullable(grades.get(id));
        if (grade.isEmpty() && data.isPacked("steels.csv")) {
          throw new Fault(
              row.place("may_be"),
              "'" + Fault.shown(id) + "' is no steel of the table",
              "name the grades that it may be, the likeliest first");
        }
        grade.ifPresent(known::add);
      }
      if (!known.isEmpty()) {
        all.add(new Stock(row, steel(row, known)));
      }
    }
    return all;
  }

  private static void filled(CsvTable.Row row, String column) {
    if (row.text(column).isEmpty()) {
      throw new Fault(
          row.place(column),
          "column " + column + " is blank",
          "say what it is, and how to test it");
    }
  }

  private static Steel steel(CsvTable.Row row, List<Steel> known) {
    UnknownMake make =
        new UnknownMake(
            row.text("id"), known, row.text("test"), SourceTable.standing(row), row.text("source"));
    SheetQuench quench =
        SheetQuench.parse(row.text("quench"))
            .orElseThrow(
                () ->
                    new Fault(
                        row.place("quench"),
                        "'" + Fault.shown(row.text("quench")) + "' is no quench",
                        "write such as oil, or does not harden"));
    Map<Element, Limits> limits =
        Arrays.stream(Element.values())
            .collect(Collectors.toMap(Function.identity(), make::limits));
    return make.likeliest()
        .ofUnknownMake(
            make, row.text("designation"), row.list("aliases"), limits, quench, row.text("note"));
  }
}
