package seamsoak.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.property.PropertyReferences;

/**
 * Mutation of the data: coefficients stand in a table, where a tool that mutates code does not see
 * them. Each is moved by a tenth; some reference row has to notice.
 */
@Tag("slow")
class PinnedCoefficientsTest {
  /**
   * Pinned by tests of their own: the band of Ae1, what stainless steel is, steps of depth, what to
   * quench in.
   */
  private static final List<String> ELSEWHERE =
      List.of(
          "ae1-mean band",
          "brady-stainless",
          "hardening-depth through",
          "hardening-depth air",
          "quench-rule");

  @TempDir Path folder;

  @Test
  void someReferenceNoticesEachCoefficient() throws IOException {
    List<ReferenceRow> rows = ReferenceTest.agreeing().toList();
    Map<String, ToDoubleFunction<Inputs>> now = PropertyReferences.all();
    List<ReferenceRow> known = cheapestFirst(rows, now);
    List<CsvTable.Row> coefficients = DataFolder.packed().csv("correlations.csv").rows();
    Set<String> loose = new TreeSet<>();
    for (int i = 0; i < coefficients.size(); i++) {
      String name = name(coefficients.get(i));
      if (ELSEWHERE.stream().noneMatch(name::startsWith)) {
        write(coefficients, i);
        if (!noticed(known, coefficients.get(i).text("correlation"))) {
          loose.add(name);
        }
      }
    }
    assertEquals(Set.of(), loose);
  }

  /** Most coefficients are noticed by a row that takes no time, and then the slow ones need not. */
  private static List<ReferenceRow> cheapestFirst(
      List<ReferenceRow> rows, Map<String, ToDoubleFunction<Inputs>> now) {
    Map<ReferenceRow, Long> nanos = new HashMap<>();
    for (ReferenceRow row : rows) {
      if (now.containsKey(row.property())) {
        long start = System.nanoTime();
        assertFalse(wrong(row, now), row::toString);
        nanos.put(row, System.nanoTime() - start);
      }
    }
    return nanos.keySet().stream().sorted(Comparator.comparing(nanos::get)).toList();
  }

  private static String name(CsvTable.Row row) {
    return row.text("correlation") + " " + row.text("term");
  }

  private void write(List<CsvTable.Row> rows, int moved) throws IOException {
    StringBuilder text =
        new StringBuilder("correlation,term,coefficient,unit,source,standing,note\n");
    for (int i = 0; i < rows.size(); i++) {
      CsvTable.Row r = rows.get(i);
      double value = r.required("coefficient") * (i == moved ? 1.1 : 1);
      text.append(
          String.format(
              Locale.ROOT,
              "%s,%s,%s,%s,%s,\"%s\",%n",
              r.text("correlation"),
              r.text("term"),
              value,
              r.text("unit"),
              r.text("source"),
              r.text("standing")));
    }
    Files.writeString(folder.resolve("correlations.csv"), text);
  }

  private boolean noticed(List<ReferenceRow> rows, String correlation) {
    Map<String, ToDoubleFunction<Inputs>> moved = PropertyReferences.all(DataFolder.over(folder));
    List<ReferenceRow> own = new ArrayList<>();
    List<ReferenceRow> others = new ArrayList<>();
    for (ReferenceRow row : rows) {
      (row.property().startsWith(correlation) ? own : others).add(row);
    }
    own.addAll(others);
    return own.stream().anyMatch(row -> wrong(row, moved));
  }

  private static boolean wrong(ReferenceRow row, Map<String, ToDoubleFunction<Inputs>> moved) {
    double value = moved.get(row.property()).applyAsDouble(new Inputs(row.inputs()));
    return !(Math.abs(value - row.expected()) <= row.tolerance() * (1 + 1e-9));
  }
}
