package seamsoak.reference;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.carbon.CarbonReferences;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.plan.TradeReferences;
import seamsoak.property.PropertyReferences;
import seamsoak.source.SourceTable;
import seamsoak.source.Standing;

/**
 * Every number of {@code reference/validation/<property>/<source>.csv}, which others have printed
 * or measured, and of {@code reference/regression}, which we computed, against the program. A new
 * property needs its files and one entry in a map such as {@link PropertyReferences#all()}.
 *
 * <p>Mutation testing takes the rows of a property together: each of its tests reads all tables
 * anew, and for 1,900 rows that would be all it does.
 */
@TestInstance(Lifecycle.PER_CLASS)
final class ReferenceTest {
  private static final Path FOLDER = Path.of("src/test/resources/reference");

  private static final boolean ONE_BY_ONE = System.getProperty("reference.rows") == null;

  /** Not static, so that mutation testing sees how tables are read too. */
  private final Map<String, ToDoubleFunction<Inputs>> properties = properties();

  private static final Map<String, String> DEVIATIONS = deviations();

  private static Map<String, ToDoubleFunction<Inputs>> properties() {
    Map<String, ToDoubleFunction<Inputs>> all = new HashMap<>(PropertyReferences.all());
    all.putAll(CarbonReferences.all());
    all.putAll(TradeReferences.all());
    return all;
  }

  private static CsvTable read(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      return CsvTable.read(file.toString(), in);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Map<String, String> deviations() {
    Map<String, String> reasons = new HashMap<>();
    for (CsvTable.Row row : read(FOLDER.resolve("known-deviations.csv")).rows()) {
      reasons.put(row.text("file") + " " + row.text("inputs"), row.text("reason"));
    }
    return reasons;
  }

  static List<ReferenceRow> rows() throws IOException {
    List<ReferenceRow> all = new ArrayList<>();
    for (String kind : List.of("validation", "regression")) {
      Path folder = FOLDER.resolve(kind);
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.filter(Files::isRegularFile).toList()) {
          String name = folder.relativize(file).toString().replace('\\', '/');
          for (CsvTable.Row row : read(file).rows()) {
            assertEquals(
                kind.equals("regression"),
                row.text("kind").equals("recomputed"),
                () -> file + ": our own numbers stand under regression, all others not");
            all.add(
                new ReferenceRow(
                    file.getParent().getFileName().toString(),
                    name,
                    row.text("inputs"),
                    row.required("expected"),
                    row.required("tolerance"),
                    row.text("source"),
                    row.text("standing")));
          }
        }
      }
    }
    return all;
  }

  static Stream<ReferenceRow> agreeing() throws IOException {
    return rows().stream().filter(r -> !DEVIATIONS.containsKey(r.key()));
  }

  record Rows(List<ReferenceRow> rows) {
    @Override
    public String toString() {
      return ONE_BY_ONE ? rows.get(0).toString() : rows.get(0).property();
    }
  }

  static Stream<Rows> agreeingRows() throws IOException {
    return agreeing()
        .collect(groupingBy(r -> ONE_BY_ONE ? r.key() : r.property(), LinkedHashMap::new, toList()))
        .values()
        .stream()
        .map(Rows::new);
  }

  @ParameterizedTest
  @MethodSource("agreeingRows")
  void agreesWithSource(Rows rows) {
    for (ReferenceRow row : rows.rows()) {
      double tie = 1e-12 * Math.abs(row.expected()); // 2291.25 printed as 2291.2 is within 0.05
      assertEquals(row.expected(), computed(row), row.tolerance() + tie, row::toString);
    }
  }

  @Test
  void knownDeviationsStillDeviate() throws IOException {
    rows().stream()
        .filter(r -> DEVIATIONS.containsKey(r.key()))
        .forEach(
            row ->
                assertTrue(
                    Math.abs(computed(row) - row.expected()) > row.tolerance(),
                    () -> row + " agrees now: take it off the list of known deviations"));
  }

  @Test
  void everyDeviationNamesARowAndAReason() throws IOException {
    Set<String> keys = new HashSet<>();
    rows().forEach(r -> keys.add(r.key()));
    DEVIATIONS.forEach(
        (key, reason) -> {
          assertTrue(keys.contains(key), () -> "no reference row " + key);
          assertFalse(reason.isEmpty(), () -> key + " needs a reason");
        });
  }

  @Test
  void everyRowNamesSourceAndStanding() throws IOException {
    SourceTable sources = SourceTable.load(DataFolder.packed());
    for (ReferenceRow row : rows()) {
      assertTrue(sources.find(row.source()).isPresent(), () -> "unknown source of " + row);
      assertTrue(row.tolerance() >= 0, row::toString);
      Standing.of(row.standing());
    }
  }

  private double computed(ReferenceRow row) {
    ToDoubleFunction<Inputs> property = properties.get(row.property());
    assertTrue(property != null, () -> "no property " + row.property() + " to check " + row);
    return property.applyAsDouble(new Inputs(row.inputs()));
  }
}
