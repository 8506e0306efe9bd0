package seamsoak.steel;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.source.SourceTable;

/** Reads {@code disputes.csv}. */
final class DisputeTable {
  private DisputeTable() {}

  /** The disputes by id of the steel. */
  static Map<String, List<Dispute>> load(DataFolder data) {
    Map<String, List<Dispute>> all = new HashMap<>();
    for (CsvTable.Row row : data.csv("disputes.csv").rows()) {
      boolean never = row.text("verdict").equals("never");
      if (!never && !row.text("verdict").equals("disputed")) {
        throw new Fault(
            row.place("verdict"),
            "unknown verdict '" + Fault.shown(row.text("verdict")) + "'",
            "write disputed or never");
      }
      if (never != row.text("other").isEmpty()) {
        throw new Fault(
            row.place("other"),
            never ? "what is forbidden has two sides" : "a dispute has one side",
            "two sides disagree, one forbids");
      }
      all.computeIfAbsent(row.text("steel"), k -> new ArrayList<>())
          .add(
              new Dispute(
                  row.text("matter"),
                  never,
                  row.text("one"),
                  row.text("other"),
                  row.text("source"),
                  SourceTable.standing(row)));
    }
    return all;
  }
}
