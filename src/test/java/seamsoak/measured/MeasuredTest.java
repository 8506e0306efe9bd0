package seamsoak.measured;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.data.CsvTable;

/**
 * Every row of {@code src/test/resources/measured}, which others have measured, against the
 * program's number and its own band. What lies outside stands in {@code misses.csv} with the
 * reason; the table in the README of the data is written from here with {@code
 * -Dmeasured.write=true} and held against it otherwise.
 */
@TestInstance(Lifecycle.PER_CLASS)
final class MeasuredTest {
  private static final Path README = Path.of("alloy-data/README.md");
  private static final String HEADING = "## How it does against measurements";
  private static final String NEXT = "\n## ";

  private final Standings standings = new Standings(new Program());
  private final Map<String, String> misses = misses();

  private static Map<String, String> misses() {
    Map<String, String> reasons = new LinkedHashMap<>();
    for (CsvTable.Row row : Measurement.table("misses").rows()) {
      reasons.put(row.text("measurement"), row.text("reason"));
    }
    return reasons;
  }

  Stream<Standings.Compared> rows() {
    return standings.all().stream();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void liesInsideTheBandOrHasAReason(Standings.Compared row) {
    String key = row.measured().toString();
    String told =
        row.program().map(p -> Program.line(row.measured(), p)).orElse(key + ": not compared");
    assertEquals(row.inside(), !misses.containsKey(key), told);
    row.program().ifPresent(p -> assertTrue(Double.isFinite(p.value()), told));
  }

  @Test
  void everyMissNamesAMeasurementAndAReason() {
    Set<String> keys =
        standings.all().stream().map(c -> c.measured().toString()).collect(Collectors.toSet());
    misses.forEach(
        (key, reason) -> {
          assertTrue(keys.contains(key), () -> "no measurement " + key);
          assertFalse(reason.isEmpty(), () -> key + " needs a reason");
        });
  }

  @Test
  void everyMeasurementNamesItsSource() {
    Set<String> keys =
        Measurement.table("sources").rows().stream()
            .map(r -> r.text("key"))
            .collect(Collectors.toSet());
    for (Standings.Compared c : standings.all()) {
      Measurement m = c.measured();
      assertTrue(keys.contains(m.source()), () -> "unknown source of " + m);
      assertTrue(Set.of("seen", "second-hand", "memory").contains(m.read()), m::toString);
    }
  }

  @Test
  void theReadmeTellsIt() throws IOException {
    String readme = Files.readString(README);
    int from = readme.indexOf(HEADING);
    assertTrue(from >= 0, "the README of the data has no such chapter");
    int to = readme.indexOf(NEXT, from);
    String told = told();
    if (Boolean.getBoolean("measured.write")) {
      Files.writeString(README, readme.substring(0, from) + told + readme.substring(to + 1));
      return;
    }
    assertEquals(
        told, readme.substring(from, to + 1), "run this with -Dmeasured.write=true to renew it");
  }

  private static String kind(String measurement) {
    return measurement.substring(0, measurement.indexOf(':')).replace('-', ' ');
  }

  private String told() {
    List<String> lines = new ArrayList<>();
    lines.add(HEADING);
    lines.add("");
    lines.add(
        "Measured values that others have published, beside what the program says, band and all"
            + " (`src/test/resources/measured`, with the source of each; most were read"
            + " second-hand, some are from memory). Inside: measured within the program's own"
            + " band; where it tells none, within the error stated with the measurement. Before:"
            + " in November 2026, when they were first laid beside it. `MeasuredTest` writes this"
            + " chapter.");
    lines.add("");
    lines.addAll(standings.table());
    lines.add("");
    lines.add(
        "This is no blind test. Tempering of plain steels is the mean of five of the steels above"
            + " (39 of the 50 values); hardness as quenched above 0.6 % carbon, the carbide of"
            + " 52100 and the size of what holds grains, compact scale, carbon in nickel and what a section makes of hardness in air were set"
            + " with values above in view, and so was the band of retained austenite; the band of grain is the spread of the larger collection that its rows are from. Only"
            + " measurements that had no part in this can say how good it is.");
    lines.add("");
    lines.add("What lies outside, and why:");
    lines.add("");
    Map<String, Integer> byReason = new TreeMap<>();
    misses.forEach((k, r) -> byReason.merge(kind(k) + ": " + r, 1, Integer::sum));
    byReason.forEach((reason, count) -> lines.add("- " + count + " of " + reason + "."));
    lines.add("");
    return String.join("\n", lines) + "\n";
  }
}
